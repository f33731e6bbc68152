import type { BatteryYearFigure, BatteryYearMark } from '../../binder/figures/battery-year.ts'
import { element, figure, hatch, label, line, monoWidth, rect, rounded, stack } from '../svg.ts'

const WIDTH = 480
const LEFT = 4
const RIGHT = 4
const HEAD = 14
const ROW = 10
const TEXT = 7
/** Size of the names of the months in the style sheet. */
const MONTH = 6.6
const BARS = 70
const WIDEST = 22

/**
 * From fitted to due: bars of pulses on a heavy line, the season hatched behind them, and each day that matters as an upright with its words
 * above. Uprights are told apart by their stroke and their head, so that a photocopy keeps them.
 */
export function batteryYearFigure(year: BatteryYearFigure): string {
  const { title, unit, months, seasons, seasonLabel, marks } = year
  const at = (share: number) => LEFT + Math.min(1, Math.max(0, share)) * (WIDTH - LEFT - RIGHT)
  const flags = marks.map(mark => flagSpan(at(mark.at), mark.label))
  const rows = stack(flags, 5)
  const top = HEAD + Math.max(1, ...rows.map(row => row + 1)) * ROW + 4
  const base = top + BARS
  const bands = seasons.map(({ from, to }) => {
    const box = { x: at(from), y: top, width: at(to) - at(from), height: BARS }
    return hatch(box, 6, { class: 'band' }) + rect(box, { class: 'band-edge' })
  })
  const uprights = marks.map((mark, index) => {
    const flag = flags[index]
    const y = HEAD + ROW * ((rows[index] ?? 0) + 1)
    const words = flag ? onPatch(flag, y - 2, mark.label) : ''
    return upright(mark, at(mark.at), y, base) + words
  })
  const key =
    label(LEFT, 9, unit, { class: 'unit' }) +
    (seasonLabel === undefined ? '' : seasonKey(seasonLabel, LEFT + unit.length * 5 + 16))
  const inner =
    bands.join('') +
    bars(months, base) +
    line(LEFT, base, WIDTH - RIGHT, base, { class: 'heavy' }) +
    uprights.join('') +
    key
  return figure(WIDTH, base + 23, title, inner)
}

function seasonKey(text: string, x: number): string {
  const box = { x, y: 2, width: 12, height: 8 }
  return (
    hatch(box, 4, { class: 'band' }) + rect(box, { class: 'band-edge' }) + label(x + 16, 9, text, { class: 'small' })
  )
}

function bars(months: BatteryYearFigure['months'], base: number): string {
  const step = (WIDTH - LEFT - RIGHT) / Math.max(months.length, 1)
  const most = Math.max(...months.map(({ pulses }) => pulses), 0)
  // Room above the highest bar for its number.
  const scale = most > 0 ? (BARS - 14) / most : 0
  const named = namesWithRoom(months, step)
  return months
    .map(({ label: name, pulses, text }, index) => {
      const middle = LEFT + (index + 0.5) * step
      const height = Math.max(0, pulses) * scale
      const width = Math.min(step * 0.6, WIDEST)
      const box = { x: middle - width / 2, y: base - height, width, height }
      const number = pulses > 0 ? centered(middle, box.y - 3, text) : ''
      const bar = height > 0 ? rect(box, { class: 'solid' }) : ''
      const month = named.has(index) ? label(middle, base + 16, name, { class: 'month', 'text-anchor': 'middle' }) : ''
      return bar + number + month
    })
    .join('')
}

/** Of months too close for all their names, those that carry a year go first, and then every one that keeps clear of them. */
function namesWithRoom(months: BatteryYearFigure['months'], step: number): ReadonlySet<number> {
  const clear = (one: number, other: number): boolean => {
    const halves = [one, other].map(index => monoWidth(months[index]?.label ?? '', MONTH) / 2)
    return Math.abs(one - other) * step >= (halves[0] ?? 0) + (halves[1] ?? 0) + 2
  }
  const all = months.map((_, index) => index)
  const isFirst = (index: number): boolean => months[index]?.label.includes(' ') === true
  const kept = new Set<number>()
  for (const index of [...all.filter(isFirst), ...all.filter(one => !isFirst(one))])
    if ([...kept].every(one => clear(one, index))) kept.add(index)
  return kept
}

function upright({ kind }: BatteryYearMark, x: number, top: number, base: number): string {
  switch (kind) {
    case 'due':
      return line(x, top, x, base + 2, { class: 'heavy' }) + head(x, base + 1)
    case 'visit':
      return line(x, top, x, base, { class: 'outline dashed' }) + head(x, base + 1)
    case 'today':
      return line(x, top, x, base, { class: 'outline dotted' })
    case 'fitted':
    case 'date-code':
      return line(x, top, x, base, { class: 'outline' })
  }
}

/** A small triangle that stands on the line. */
function head(x: number, y: number): string {
  const d = `M${rounded(x)} ${rounded(y)}L${rounded(x - 4)} ${rounded(y + 6)}L${rounded(x + 4)} ${rounded(y + 6)}Z`
  return element('path', { d, class: 'solid' })
}

interface Flag {
  readonly from: number
  readonly to: number
  /** Set against the right edge, whatever the width of the letters turns out to be. */
  readonly atEnd: boolean
}

function flagSpan(x: number, text: string): Flag {
  const width = monoWidth(text, TEXT)
  const most = WIDTH - RIGHT - width
  const from = Math.max(LEFT, Math.min(x + 2, most))
  return { from, to: from + width, atEnd: x + 2 > most }
}

function onPatch({ from, to, atEnd }: Flag, baseline: number, text: string): string {
  const patch = rect({ x: from - 1, y: baseline - 6.5, width: to - from + 2, height: 8 }, { class: 'halo' })
  return atEnd
    ? patch + label(to, baseline, text, { class: 'small', 'text-anchor': 'end' })
    : patch + label(from, baseline, text, { class: 'small' })
}

function centered(middle: number, baseline: number, text: string): string {
  const width = monoWidth(text, TEXT)
  const patch = { x: middle - width / 2 - 1, y: baseline - 6.5, width: width + 2, height: 8 }
  return rect(patch, { class: 'halo' }) + label(middle, baseline, text, { class: 'small', 'text-anchor': 'middle' })
}
