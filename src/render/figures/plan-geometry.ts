import type { Box } from '../svg.ts'
import type { Spot } from './plan-pattern.ts'

export interface Stroke {
  readonly from: Spot
  readonly to: Spot
}

/** Area that two boxes share. */
export function shared(a: Box, b: Box): number {
  const wide = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)
  const high = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y)
  return wide > 0 && high > 0 ? wide * high : 0
}

export function grown({ x, y, width, height }: Box, by: number): Box {
  return { x: x - by, y: y - by, width: width + 2 * by, height: height + 2 * by }
}

/** Whether a box lies wholly in another. */
export function holds(outer: Box, { x, y, width, height }: Box): boolean {
  return x >= outer.x && y >= outer.y && x + width <= outer.x + outer.width && y + height <= outer.y + outer.height
}

/** Length of a stroke that lies inside a box. Liang and Barsky, A New Concept and Method for Line Clipping, 1984 (from memory). */
export function lengthInside({ from, to }: Stroke, { x, y, width, height }: Box): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  if (Math.max(from.x, to.x) < x || Math.min(from.x, to.x) > x + width) return 0
  if (Math.max(from.y, to.y) < y || Math.min(from.y, to.y) > y + height) return 0
  const across = within(from.x, dx, x, x + width)
  const down = within(from.y, dy, y, y + height)
  const share = Math.min(1, across[1], down[1]) - Math.max(0, across[0], down[0])
  return share > 0 ? share * Math.hypot(dx, dy) : 0
}

/** Shares of a stroke at which it enters and leaves a strip; all of it where it runs along inside. */
function within(from: number, step: number, least: number, most: number): readonly [enters: number, leaves: number] {
  if (step === 0) return [0, 1]
  const [a, b] = [(least - from) / step, (most - from) / step]
  return a < b ? [a, b] : [b, a]
}

/** Whether two strokes cross; those that only touch do not. */
export function cross(a: Stroke, b: Stroke): boolean {
  const side = (of: Stroke, { x, y }: Spot) =>
    Math.sign((of.to.x - of.from.x) * (y - of.from.y) - (of.to.y - of.from.y) * (x - of.from.x))
  return side(a, b.from) * side(a, b.to) < 0 && side(b, a.from) * side(b, a.to) < 0
}

/** Whether a spot lies in a shape of any form, even-odd. */
export function isIn({ x, y }: Spot, shape: readonly Spot[]): boolean {
  let inside = false
  for (const [index, a] of shape.entries()) {
    const b = shape[(index + 1) % shape.length] ?? a
    if (a.y > y !== b.y > y && x < ((b.x - a.x) * (y - a.y)) / (b.y - a.y) + a.x) inside = !inside
  }
  return inside
}

/** The place in a box that is nearest to a spot. */
export function nearestIn({ x, y, width, height }: Box, spot: Spot): Spot {
  return { x: Math.min(Math.max(spot.x, x), x + width), y: Math.min(Math.max(spot.y, y), y + height) }
}

export function boxAround(shape: readonly Spot[]): Box {
  const [xs, ys] = [shape.map(one => one.x), shape.map(one => one.y)]
  const [x, y] = [Math.min(...xs), Math.min(...ys)]
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y }
}

/** The strokes between spots, in their order. */
export function strokesOf(spots: readonly Spot[], closed = false): Stroke[] {
  const strokes = spots.slice(1).map((to, index) => ({ from: spots[index] ?? to, to }))
  const [first, last] = [spots[0], spots.at(-1)]
  return closed && first && last ? [...strokes, { from: last, to: first }] : strokes
}
