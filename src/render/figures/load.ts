import type { LoadStep } from '../../binder/figures/week-strip.ts'
import { element, hatch, line, rounded } from '../svg.ts'

export interface LoadBox {
  readonly at: (minute: number) => number
  /** Of the base line, and how high the top of the scale stands above it. */
  readonly base: number
  readonly height: number
  readonly top: number
}

/** A load as hatched steps on a base line: one path for the outline, so that steps that meet have one edge between them. */
export function loadSteps(steps: readonly LoadStep[], { at, base, height, top }: LoadBox): string {
  const scale = top > 0 ? height / top : 0
  const boxes = steps.map(({ from, to, value }) => ({
    x: at(from),
    y: base - value * scale,
    width: at(to) - at(from),
    height: value * scale
  }))
  const filled = boxes.map(box => hatch(box, 3.4, { class: 'load' })).join('')
  const edge = boxes
    .map(({ x, y, width }) => `M${rounded(x)} ${rounded(base)}V${rounded(y)}H${rounded(x + width)}V${rounded(base)}`)
    .join('')
  return filled + (edge === '' ? '' : element('path', { d: edge, class: 'load-edge' }))
}

/** A limit as a dashed line across the load. */
export function limitLine(value: number, left: number, right: number, { base, height, top }: LoadBox): string {
  const y = base - (top > 0 ? (value / top) * height : 0)
  return line(left, y, right, y, { class: 'limit' })
}
