import type { PressureWayFigure } from '../../binder/figures/pressure-way.ts'
import { element, figure, label, line, rounded } from '../svg.ts'

const WIDTH = 480
const SIDE = 30
const TOP = 22
const RISE = 92
const BASE = TOP + RISE
/** Names stand in two rows, so that long ones do not meet. */
const NAMES = [BASE + 13, BASE + 24]

/** Points at equal distances: some parts are a hand long and others a hundred yards. Zero is the base line. */
export function pressureWayFigure({ title, points, needed }: PressureWayFigure): string {
  const most = Math.max(...points.map(one => one.value), needed?.value ?? 0, Number.MIN_VALUE)
  const step = points.length > 1 ? (WIDTH - 2 * SIDE) / (points.length - 1) : 0
  const yOf = (value: number): number => BASE - (Math.max(value, 0) / most) * RISE
  const placed = points.map((one, index) => ({ ...one, x: SIDE + index * step, y: yOf(one.value), index }))
  const way = placed.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${rounded(x)} ${rounded(y)}`).join('')
  const drawn = placed.map(({ x, y, text, label: name, index }) => {
    const nameY = NAMES[index % NAMES.length] ?? BASE
    return (
      line(x, y, x, BASE, { class: 'tick' }) +
      element('circle', { cx: x, cy: y, r: 2.6, class: 'solid' }) +
      label(x, y - 6, text, { class: 'number halo', 'text-anchor': 'middle' }) +
      label(x, nameY, name, { class: 'small', 'text-anchor': 'middle' })
    )
  })
  const line0 = line(SIDE - 14, BASE, WIDTH - SIDE + 14, BASE, { class: 'heavy' })
  return figure(
    WIDTH,
    BASE + 30,
    title,
    line0 + drawn.join('') + element('path', { d: way, class: 'wire', fill: 'none' }) + neededLine(needed, yOf)
  )
}

function neededLine(needed: PressureWayFigure['needed'], yOf: (value: number) => number): string {
  if (!needed) return ''
  const y = yOf(needed.value)
  return (
    line(SIDE - 14, y, WIDTH - SIDE + 14, y, { class: 'wire dashed' }) +
    label(SIDE - 14, y + 10, needed.label, { class: 'small halo' })
  )
}
