import type { PressureWayFigure } from '../../binder/figures/pressure-way.ts'
import { element, figure, label, line, monoWidth, rect, rounded } from '../svg.ts'

const WIDTH = 480
const SIDE = 30
const TOP = 22
const RISE = 92
const BASE = TOP + RISE
/** Size of the small letters in the style sheet. */
const TEXT = 7
/** Names stand in two rows, so that long ones do not meet. */
const NAMES = [BASE + 13, BASE + 24]

/** Points at equal distances: some parts are a hand long and others a hundred yards. Zero is the base line. */
export function pressureWayFigure({ title, points, needed }: PressureWayFigure): string {
  const most = Math.max(...points.map(one => one.value), needed?.value ?? 0, Number.MIN_VALUE)
  const step = points.length > 1 ? (WIDTH - 2 * SIDE) / (points.length - 1) : 0
  const yOf = (value: number): number => BASE - (Math.max(value, 0) / most) * RISE
  const placed = points.map((one, index) => ({ ...one, x: SIDE + index * step, y: yOf(one.value), index }))
  const way = placed.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${rounded(x)} ${rounded(y)}`).join('')
  const ticks = placed.map(({ x, y }) => line(x, y, x, BASE, { class: 'tick' }))
  const dots = placed.map(({ x, y }) => element('circle', { cx: x, cy: y, r: 2.6, class: 'solid' }))
  const names = placed.map(({ x, label: name, index }) =>
    label(x, NAMES[index % NAMES.length] ?? BASE, name, { class: 'small', 'text-anchor': 'middle' })
  )
  const figures = placed.map(({ x, y, text }) => onPaper(x, y - 7, text))
  const ground = line(SIDE - 14, BASE, WIDTH - SIDE + 14, BASE, { class: 'heavy' })
  const path = element('path', { d: way, class: 'wire', fill: 'none' })
  const parts = [...ticks, ground, neededLine(needed, yOf), path, ...dots, ...figures, ...names]
  return figure(WIDTH, BASE + 30, title, parts.join(''))
}

/** The dashed line is named in its middle, below it. */
function neededLine(needed: PressureWayFigure['needed'], yOf: (value: number) => number): string {
  if (!needed) return ''
  const y = yOf(needed.value)
  const name = onPaper(WIDTH / 2, y + 10, needed.label)
  return line(SIDE - 14, y, WIDTH - SIDE + 14, y, { class: 'wire dashed' }) + name
}

/** Text on a patch of paper, so that no line crosses it. */
function onPaper(x: number, baseline: number, text: string): string {
  const width = monoWidth(text, TEXT) + 4
  const patch = { x: x - width / 2, y: baseline - 6.5, width, height: 8 }
  return rect(patch, { class: 'halo' }) + label(x, baseline, text, { class: 'small', 'text-anchor': 'middle' })
}
