import type { PlanFigure } from '../../binder/figures/plan.ts'
import { element, label, rect, rounded } from '../svg.ts'
import type { Box } from '../svg.ts'
import { shared } from './plan-geometry.ts'

/** The arrow or the scale on its white ground. */
export interface Piece {
  readonly box: Box
  readonly svg: string
}

type Corner = readonly [east: boolean, south: boolean]

/** Where they are looked for first. */
const ARROW_CORNERS: readonly Corner[] = [
  [true, false],
  [false, false],
  [true, true],
  [false, true]
]
const SCALE_CORNERS: readonly Corner[] = [
  [false, true],
  [true, true],
  [false, false],
  [true, false]
]
const EDGE_MM = 1.2

/** North arrow and scale bars, each in the corner where it hides least of what is drawn. */
export function furniture(plan: PlanFigure, frame: Box, drawn: readonly Box[]): Piece[] {
  const scale = scaleSize(plan)
  const scaleBox = freest(SCALE_CORNERS, scale, frame, drawn)
  const arrowBox = freest(ARROW_CORNERS, arrowSize(plan), frame, [...drawn, scaleBox, scaleBox, scaleBox])
  return [
    { box: arrowBox, svg: arrow(plan, arrowBox) },
    { box: scaleBox, svg: scaleBars(plan, scaleBox) }
  ]
}

function freest(
  corners: readonly Corner[],
  { width, height }: Pick<Box, 'width' | 'height'>,
  frame: Box,
  drawn: readonly Box[]
): Box {
  const boxes = corners.map(([east, south]) => ({
    x: east ? frame.x + frame.width - width - EDGE_MM : frame.x + EDGE_MM,
    y: south ? frame.y + frame.height - height - EDGE_MM : frame.y + EDGE_MM,
    width,
    height
  }))
  const hidden = boxes.map(box => drawn.reduce((sum, one) => sum + shared(box, one), 0))
  return boxes[hidden.indexOf(Math.min(...hidden))] ?? { x: frame.x, y: frame.y, width, height }
}

const sizeOf = ({ titleBlock }: PlanFigure): number => (titleBlock ? 1 : 0.7)

function arrowSize(plan: PlanFigure): { width: number; height: number } {
  const big = sizeOf(plan)
  return { width: 8 * big, height: 15 * big }
}

function arrow(plan: PlanFigure, box: Box): string {
  const big = sizeOf(plan)
  const [x, y] = [box.x + box.width / 2, box.y + 1]
  const half = (side: number) =>
    `M${rounded(x)} ${rounded(y)}L${rounded(x + side * 3 * big)} ${rounded(y + 10 * big)}L${rounded(x)} ${rounded(y + 7.6 * big)}Z`
  return (
    rect(box, { class: 'plan-clear' }) +
    element('path', { d: half(1), class: 'plan-solid' }) +
    element('path', { d: half(-1), class: 'plan-mark' }) +
    label(x, y + 13.4 * big, plan.north, { class: 'plan-name', 'text-anchor': 'middle' })
  )
}

/** Half of "50 ft" hangs over the end of its bar. */
const OVERHANG_MM = 6

function scaleSize({ scale, ratio }: PlanFigure): { width: number; height: number } {
  const perM = 1000 / ratio
  return {
    width: Math.max(...scale.bars.map(one => one.lengthM * perM + 2 + OVERHANG_MM), scale.text.length * 1.5 + 4),
    height: 6 * scale.bars.length + (scale.text ? 4.4 : 0.6)
  }
}

/** Bars of black and white parts, each in its own unit; the scale in figures above them. */
function scaleBars({ scale, ratio }: PlanFigure, box: Box): string {
  const perM = 1000 / ratio
  const top = box.y + (scale.text ? 4.2 : 0.4)
  const bars = scale.bars.map(({ lengthM, parts, from, to }, row) => {
    const y = top + row * 6
    const x = box.x + 2
    const part = (lengthM * perM) / parts
    const blocks = Array.from({ length: parts }, (_, index) =>
      rect(
        { x: x + index * part, y: y + 3, width: part, height: 1.2 },
        { class: index % 2 === 0 ? 'plan-solid' : 'plan-mark' }
      )
    )
    return (
      blocks.join('') +
      label(x, y + 2.4, from, { class: 'plan-small' }) +
      label(x + lengthM * perM, y + 2.4, to, { class: 'plan-small', 'text-anchor': 'middle' })
    )
  })
  const text = scale.text ? label(box.x + 2, box.y + 3.2, scale.text, { class: 'plan-name' }) : ''
  return rect(box, { class: 'plan-clear' }) + text + bars.join('')
}
