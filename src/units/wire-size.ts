/**
 * A conductor size as written. A bare "mm" could be a diameter or a badly written area, so it stays ambiguous;
 * a pair ("12 AWG, 2.05 mm²") keeps both so that a check can compare them.
 */
export type WireSize =
  | { readonly kind: 'awg'; readonly gauge: number }
  | { readonly kind: 'area'; readonly mm2: number }
  | { readonly kind: 'diameter'; readonly mm: number }
  | { readonly kind: 'ambiguous'; readonly mm: number }
  | { readonly kind: 'pair'; readonly gauge: number; readonly mm2: number }

const AWG = String.raw`(?:(\d{1,2}|[1-4]/0|0{1,4})\s*(?:AWG|awg|gauge|ga))|(?:AWG\s*(\d{1,2}|[1-4]/0))`
const NUMBER = String.raw`(\d+(?:\.\d+)?)`

/** Undefined where the text is no size at all. Sizes: 4/0 to 40 AWG, "mm²" or "mm2", "mm diameter". */
export function parseWireSize(text: string): WireSize | undefined {
  const t = text.replace(/[\s\u00a0]+/gu, ' ').trim()
  const pair = new RegExp(`^(?:${AWG})\\s*[,(/]\\s*${NUMBER}\\s*mm(?:²|2)\\)?$`, 'u').exec(t)
  if (pair) return sized({ kind: 'pair', gauge: gaugeNumber(pair[1] ?? pair[2] ?? ''), mm2: Number(pair[3]) })
  const awg = new RegExp(`^(?:${AWG})$`, 'u').exec(t)
  if (awg) return sized({ kind: 'awg', gauge: gaugeNumber(awg[1] ?? awg[2] ?? '') })
  const area = new RegExp(`^${NUMBER}\\s*(?:mm²|mm2|sq mm)$`, 'u').exec(t)
  if (area) return sized({ kind: 'area', mm2: Number(area[1]) })
  const diameter = new RegExp(`^${NUMBER}\\s*mm (?:diameter|dia)$`, 'u').exec(t)
  if (diameter) return sized({ kind: 'diameter', mm: Number(diameter[1]) })
  const bare = new RegExp(`^${NUMBER}\\s*mm$`, 'u').exec(t)
  return bare ? sized({ kind: 'ambiguous', mm: Number(bare[1]) }) : undefined
}

/** "12 AWG", "2.5 mm²", "0.8 mm diameter". Inverse of `parseWireSize` for every size but the ambiguous one's meaning. */
export function showWireSize(size: WireSize): string {
  switch (size.kind) {
    case 'awg':
      return `${gaugeText(size.gauge)}\u00a0AWG`
    case 'area':
      return `${size.mm2}\u00a0mm²`
    case 'diameter':
      return `${size.mm}\u00a0mm diameter`
    case 'ambiguous':
      return `${size.mm}\u00a0mm`
    case 'pair':
      return `${gaugeText(size.gauge)}\u00a0AWG, ${size.mm2}\u00a0mm²`
  }
}

/** 1/0 counts as 0, 4/0 as -3 (ASTM B258). */
function gaugeNumber(text: string): number {
  const slash = /^([1-4])\/0$/u.exec(text)
  if (slash) return 1 - Number(slash[1])
  return /^0+$/u.test(text) ? 1 - text.length : Number(text)
}

function gaugeText(gauge: number): string {
  return gauge > 0 ? String(gauge) : `${1 - gauge}/0`
}

function sized(size: WireSize): WireSize | undefined {
  if ('gauge' in size && size.gauge > 40) return undefined
  const amount = 'mm2' in size ? size.mm2 : 'mm' in size ? size.mm : 1
  return amount > 0 ? size : undefined
}
