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
/** Below the bars: names of the months, years. */
const FOOT = 30
/** Half of the width of a year. */
const YEAR_HALF = monoWidth('2000', MONTH) / 2

/**
 * From fitted to due: bars of pulses on a heavy line, the season hatched behind them, and each day that matters as an upright with its words
 * above. Uprights are told apart by their stroke and their head, so that a photocopy keeps them; words and figures stand over all of them.
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
    return {
      line: upright(mark, at(mark.at), y, base),
      words: flag ? onPatch(flag, y - 2, mark.label) : ''
    }
  })
  const drawn = bars(months, base)
  const key =
    label(LEFT, 9, unit, { class: 'unit' }) +
    (seasonLabel === undefined ? '' : seasonKey(seasonLabel, LEFT + unit.length * 5 + 16))
  const inner =
    bands.join('') +
    drawn.map(one => one.bar).join('') +
    line(LEFT, base, WIDTH - RIGHT, base, { class: 'heavy' }) +
    uprights.map(one => one.line).join('') +
    uprights.map(one => one.words).join('') +
    drawn.map(one => one.words).join('') +
    key
  return figure(WIDTH, base + FOOT, title, inner)
}

function seasonKey(text: string, x: number): string {
  const box = { x, y: 2, width: 12, height: 8 }
  return (
    hatch(box, 4, { class: 'band' }) + rect(box, { class: 'band-edge' }) + label(x + 16, 9, text, { class: 'small' })
  )
}

/** Each month's bar, and its figure, name and year. */
function bars(months: BatteryYearFigure['months'], base: number): { readonly bar: string; readonly words: string }[] {
  const step = (WIDTH - LEFT - RIGHT) / Math.max(months.length, 1)
  const most = Math.max(...months.map(({ pulses }) => pulses), 0)
  // Room above the highest bar for its number.
  const scale = most > 0 ? (BARS - 14) / most : 0
  const below = (middle: number, y: number, text = '') =>
    text === '' ? '' : label(middle, y, text, { class: 'month', 'text-anchor': 'middle' })
  return months.map(({ label: name, year, pulses, text }, index) => {
    const middle = LEFT + (index + 0.5) * step
    const height = Math.max(0, pulses) * scale
    const width = Math.min(step * 0.6, WIDEST)
    const box = { x: middle - width / 2, y: base - height, width, height }
    const number = pulses > 0 ? centered(middle, box.y - 3, text) : ''
    const names = below(middle, base + 16, name) + below(Math.max(middle, LEFT + YEAR_HALF), base + 24, year)
    return { bar: height > 0 ? rect(box, { class: 'solid' }) : '', words: number + names }
  })
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
