import type { PlanStroke, PlanSymbol } from '../../binder/figures/plan.ts'
import { element, line, rect, rounded } from '../svg.ts'
import type { Spot } from './plan-pattern.ts'

/** Half the size of a mark, mm. */
export const MARK_MM = 1.7

const INK = { class: 'plan-mark' } as const
const SOLID = { class: 'plan-solid' } as const
const path = (d: string, attributes: Readonly<Record<string, string>> = INK) =>
  element('path', { d: tidy(d), ...attributes })

/** Hundredths of a millimeter are enough. */
function tidy(d: string): string {
  return d.replace(/-?\d+(?:\.\d+)?(?:e-?\d+)?/gu, number => rounded(Number(number)))
}

/** The sign of a thing at a spot. Plain shapes of our own; the bow tie is the valve of ISO 10628. */
export function planSymbol(symbol: PlanSymbol | 'point', { x, y }: Spot): string {
  const r = MARK_MM
  const square = rect({ x: x - r, y: y - r, width: 2 * r, height: 2 * r }, INK)
  const disc = element('circle', { cx: x, cy: y, r, ...INK })
  const bow = (size: number, attributes = SOLID as Readonly<Record<string, string>>) =>
    path(
      `M${x - size} ${y - size * 0.7}L${x - size} ${y + size * 0.7}L${x + size} ${y - size * 0.7}L${x + size} ${y + size * 0.7}Z`,
      attributes
    )
  switch (symbol) {
    case 'box':
      return square
    case 'valve box':
      return square + bow(1.1)
    case 'controller':
      return rect({ x: x - r, y: y - r, width: 2 * r, height: 2 * r }, SOLID)
    case 'shut-off':
      return bow(r, INK) + line(x, y, x, y - r * 1.2, INK) + line(x - 0.9, y - r * 1.2, x + 0.9, y - r * 1.2, INK)
    case 'meter':
      return disc + line(x, y, x + r * 0.7, y - r * 0.7, INK)
    case 'backflow':
      return (
        rect({ x: x - r * 1.5, y: y - r, width: r * 3, height: 2 * r }, INK) +
        path(`M${x - 1.4} ${y - 1}l1.2 1 -1.2 1M${x + 0.3} ${y - 1}l1.2 1 -1.2 1`)
      )
    case 'sensor':
      return path(`M${x} ${y - r * 1.2}L${x + r * 1.15} ${y + r * 0.8}L${x - r * 1.15} ${y + r * 0.8}Z`)
    case 'splice':
      return path(`M${x} ${y - r}L${x + r} ${y}L${x} ${y + r}L${x - r} ${y}Z`, SOLID)
    case 'filter':
      return disc + line(x - r * 0.7, y - r * 0.7, x + r * 0.7, y + r * 0.7, INK)
    case 'pump':
      return disc + path(`M${x - 0.8} ${y - 1}L${x + 1.2} ${y}L${x - 0.8} ${y + 1}Z`, SOLID)
    case 'quick coupler':
      return disc + element('circle', { cx: x, cy: y, r: 0.7, ...SOLID })
    case 'drain':
      return disc + path(`M${x} ${y - 1}V${y + 0.9}M${x - 0.8} ${y + 0.1}L${x} ${y + 1}L${x + 0.8} ${y + 0.1}`)
    case 'ground rod':
      return path(
        `M${x} ${y - r}V${y}M${x - r} ${y}H${x + r}M${x - r * 0.6} ${y + 0.7}H${x + r * 0.6}M${x - r * 0.25} ${y + 1.4}H${x + r * 0.25}`
      )
    case 'point':
      return (
        element('circle', { cx: x, cy: y, r: 1.1, ...INK }) + path(`M${x - 2} ${y}H${x + 2}M${x} ${y - 2}V${y + 2}`)
      )
    case 'other':
      return disc
  }
}

/** From the edge of a symbol that is drawn beside its place back to that place. */
export function asideMark(drawn: Spot, { x, y }: Spot): string {
  const long = Math.hypot(x - drawn.x, y - drawn.y)
  const share = Math.min(1, MARK_MM / long)
  return (
    line(drawn.x + (x - drawn.x) * share, drawn.y + (y - drawn.y) * share, x, y, { class: 'plan-leader' }) +
    element('circle', { cx: x, cy: y, r: 0.45, class: 'plan-solid' })
  )
}

/** How a line is drawn, from the bottom stroke to the top one: class and dash. */
const STROKES: Readonly<Record<PlanStroke, readonly Readonly<Record<string, string | number>>[]>> = {
  curb: [
    { class: 'plan-line', 'stroke-width': 1 },
    { class: 'plan-core', 'stroke-width': 0.55 }
  ],
  'road edge': [{ class: 'plan-line', 'stroke-width': 0.3, 'stroke-dasharray': '6 2' }],
  wall: [{ class: 'plan-line', 'stroke-width': 1.1 }],
  building: [
    { class: 'plan-line', 'stroke-width': 1.5 },
    { class: 'plan-core', 'stroke-width': 0.8, 'stroke-dasharray': '1.2 1.2' }
  ],
  walk: [{ class: 'plan-line', 'stroke-width': 0.25 }],
  fence: [{ class: 'plan-line', 'stroke-width': 0.3, 'stroke-dasharray': '3 0.9 0.6 0.9' }],
  main: [{ class: 'plan-line', 'stroke-width': 0.8, 'stroke-dasharray': '7 1.2 1.2 1.2' }],
  lateral: [{ class: 'plan-line', 'stroke-width': 0.35, 'stroke-dasharray': '4 1 1 1' }],
  wire: [{ class: 'plan-line', 'stroke-width': 0.35, 'stroke-dasharray': '1.3 1' }],
  sleeve: [
    { class: 'plan-line', 'stroke-width': 1.6, 'stroke-dasharray': '3 1.4' },
    { class: 'plan-core', 'stroke-width': 0.9, 'stroke-dasharray': '3 1.4' }
  ],
  other: [{ class: 'plan-line', 'stroke-width': 0.5, 'stroke-dasharray': '0.5 1.1' }]
}

export function planStroke(kind: PlanStroke, d: string): string {
  return STROKES[kind].map(one => element('path', { d: tidy(d), ...one })).join('')
}
