import type { NeedGivenFigure } from '../../binder/figures/need-given.ts'
import { figure, hatch, label, line, monoWidth, rect } from '../svg.ts'
import type { Box } from '../svg.ts'

const WIDTH = 180
const LEFT = 4
const TOP = 28
const BARS = 46
const KEY = 11
/** Size of the small letters in the style sheet. */
const TEXT = 7

/** Twelve pairs of bars on a heavy line, a third of a column wide: the need hatched, what is given solid. The top of the scale is named once. */
export function needGivenFigure({ title, unit, needLabel, givenLabel, months, top }: NeedGivenFigure): string {
  const step = (WIDTH - LEFT) / Math.max(months.length, 1)
  const base = TOP + BARS
  const barOf = (index: number, side: number, value: number): Box => {
    const height = top.value > 0 ? (Math.max(value, 0) / top.value) * BARS : 0
    const width = step * 0.4
    return { x: LEFT + index * step + step * 0.1 + side * width, y: base - height, width, height }
  }
  const bars = months.map(({ label: text, need, given }, index) => {
    const needed = need === undefined || need === 0 ? '' : hatched(barOf(index, 0, need))
    const solid = given === 0 ? '' : rect(barOf(index, 1, given), { class: 'solid' })
    const middle = LEFT + index * step + step / 2
    return needed + solid + label(middle, base + 10, text, { class: 'month', 'text-anchor': 'middle' })
  })
  const scale =
    line(0, TOP, WIDTH, TOP, { class: 'tick' }) +
    label(WIDTH, TOP - 3, top.label, { class: 'small', 'text-anchor': 'end' })
  const half = Math.max(WIDTH / 3, monoWidth(`${needLabel}, ${unit}`, TEXT) + 22)
  const key =
    hatched({ x: 0, y: KEY - 7, width: 9, height: 8 }) +
    label(12, KEY, `${needLabel}, ${unit}`, { class: 'small' }) +
    rect({ x: half, y: KEY - 7, width: 9, height: 8 }, { class: 'solid' }) +
    label(half + 12, KEY, givenLabel, { class: 'small' })
  return figure(WIDTH, base + 14, title, key + scale + bars.join('') + line(0, base, WIDTH, base, { class: 'heavy' }))
}

const hatched = (box: Box): string => hatch(box, 3, { class: 'hatch' }) + rect(box, { class: 'outline' })
