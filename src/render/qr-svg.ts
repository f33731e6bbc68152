import QRCode from 'qrcode'
import type { QrSpec } from '../binder/blocks.ts'
import { QR } from '../reference/qr.ts'
import { element, rounded } from './svg.ts'

export interface QrMatrix {
  readonly size: number
  readonly dark: (row: number, column: number) => boolean
}

/** Throws where the text does not fit the version: that is a fault of ours, the version is computed from the same text. */
export function qrMatrix({ text, level, version }: QrSpec): QrMatrix {
  const { modules } = QRCode.create(text, { errorCorrectionLevel: level, version })
  return { size: modules.size, dark: (row, column) => Boolean(modules.get(row, column)) }
}

const drawn = new Map<string, string>()
/** A label carries its code twice at each of two sizes; more are not worth keeping. */
const MOST_DRAWN = 16

/** A code with its quiet zone, sized in mm so that a module prints as wide as the plan says. */
export function qrSvg(spec: QrSpec): string {
  const key = JSON.stringify(spec)
  const known = drawn.get(key)
  if (known !== undefined) return known
  if (drawn.size >= MOST_DRAWN) drawn.clear()
  const svg = codeSvg(spec)
  drawn.set(key, svg)
  return svg
}

function codeSvg(spec: QrSpec): string {
  const { size, dark } = qrMatrix(spec)
  const quiet = spec.quietModules ?? QR.quietModules
  const side = size + 2 * quiet
  const mm = `${rounded(side * spec.moduleMm)}mm`
  const paper = element('path', { d: `M0 0h${side}v${side}H0z`, fill: '#fff' })
  const ink = element('path', { d: darkPath(size, dark, quiet), fill: '#000' })
  return element(
    'svg',
    {
      class: 'qr',
      viewBox: `0 0 ${side} ${side}`,
      width: mm,
      height: mm,
      'shape-rendering': 'crispEdges',
      role: 'img',
      'aria-label': spec.text,
      xmlns: 'http://www.w3.org/2000/svg'
    },
    paper + ink
  )
}

/** One closed bar for each run of dark modules in a row. */
function darkPath(size: number, dark: QrMatrix['dark'], quiet: number): string {
  const bars: string[] = []
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column < size; column += 1) {
      if (!dark(row, column)) continue
      const from = column
      while (column < size && dark(row, column)) column += 1
      bars.push(`M${from + quiet} ${row + quiet}h${column - from}v1h${from - column}z`)
    }
  }
  return bars.join('')
}
