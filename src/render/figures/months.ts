import type { FigureSpec } from '../../binder/blocks.ts'
import { figure, hatch, label, line, rect } from '../svg.ts'

type Months = Extract<FigureSpec, { figure: 'months' }>

const WIDTH = 480
const TOP = 28
const BARS = 96
const FOOT = 18

/** The year as bars on a heavy base line. Every number stands above its bar, so there is no scale to read against. */
export function monthsFigure({ title, unit, months }: Months): string {
  const most = Math.max(...months.map(({ value }) => value), 0)
  const step = WIDTH / Math.max(months.length, 1)
  const base = TOP + BARS
  const bars = months.map((month, index) => {
    const height = most > 0 ? (Math.max(month.value, 0) / most) * BARS : 0
    const box = { x: index * step + step * 0.16, y: base - height, width: step * 0.68, height }
    const middle = index * step + step / 2
    return (
      (height > 0 ? hatch(box, 5, { class: 'hatch' }) + rect(box, { class: 'outline' }) : '') +
      label(middle, box.y - 5, month.text, { class: 'number', 'text-anchor': 'middle' }) +
      label(middle, base + 13, month.label, { class: 'axis', 'text-anchor': 'middle' })
    )
  })
  const head = label(0, 9, unit, { class: 'unit' })
  const ground = line(0, base, WIDTH, base, { class: 'heavy' })
  return figure(WIDTH, base + FOOT, title, head + bars.join('') + ground)
}
