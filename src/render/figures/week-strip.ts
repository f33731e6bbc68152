import type { WeekStripFigure } from '../../binder/figures/week-strip.ts'
import { figure, label, line, monoWidth, rect } from '../svg.ts'
import { limitLine, loadSteps } from './load.ts'

const WIDTH = 480
const NAMES = 64
const RIGHT = 52
const HEAD = 22
const ROW = 28
const LOAD = 22

/** Seven rows from noon to noon, so that a night stays whole: hours allowed as an open band, what is drawn as hatched steps on each row's line. */
export function weekStripFigure(strip: WeekStripFigure): string {
  const span = strip.toMinute - strip.fromMinute
  const at = (minute: number) => NAMES + ((minute - strip.fromMinute) / span) * (WIDTH - NAMES - RIGHT)
  const bottom = HEAD + strip.rows.length * ROW
  const hours = strip.hours.map(
    ({ minute, label: text }) =>
      line(at(minute), HEAD - 8, at(minute), bottom, { class: 'tick' }) +
      label(at(minute), HEAD - 11, text, { class: 'axis', 'text-anchor': 'middle' })
  )
  const rows = strip.rows.map((row, index) => {
    const base = HEAD + (index + 1) * ROW
    const box = { at, base, height: LOAD, top: strip.top }
    const bands = row.windows.map(({ from, to }) =>
      rect({ x: at(from), y: base - LOAD - 4, width: at(to) - at(from), height: LOAD + 4 }, { class: 'band-open' })
    )
    const limit = strip.limit && row.steps.length > 0 ? limitLine(strip.limit.value, NAMES, WIDTH - RIGHT, box) : ''
    return (
      bands.join('') +
      loadSteps(row.steps, box) +
      limit +
      line(0, base, WIDTH, base, { class: index === strip.rows.length - 1 ? 'heavy' : 'rule' }) +
      label(0, base - 4, row.label, { class: 'lane' }) +
      label(WIDTH, base - 4, row.sum, { class: 'small', 'text-anchor': 'end' })
    )
  })
  const foot = strip.limit ? limitKey(strip.limit.label, bottom + 12) : ''
  return figure(WIDTH, bottom + (strip.limit ? 16 : 4), strip.title, hours.join('') + rows.join('') + foot)
}

/** What the dashed line means, in the free strip below: no row has room for words beside it. */
function limitKey(text: string, y: number): string {
  const from = WIDTH - RIGHT - monoWidth(text, 7) - 26
  return line(from, y - 2.5, from + 20, y - 2.5, { class: 'limit' }) + label(from + 24, y, text, { class: 'small' })
}
