import { distanceM } from './distance.ts'
import type { LatLon } from './distance.ts'

/** Above so many stops the order is made from one start only; it is hardly longer. */
const MOST_STARTS = 60
/** Less than a centimeter is rounding. */
const LEAST_GAIN_M = 0.01
/** Exchanges end after so many rounds over the whole route, so that a large fleet does not wait. */
const MOST_ROUNDS = 30

/**
 * A short open way through all points, as their indices: to the nearest not yet visited, from the best start, then two-opt exchanges until
 * none makes it shorter (G. A. Croes, A Method for Solving Traveling-Salesman Problems, Operations Research 6, 1958). Not always the shortest.
 * Ties go to the point that is named first.
 */
export function shortOrder(points: readonly LatLon[]): number[] {
  if (points.length < 3) return points.map((_, index) => index)
  const starts = points.length > MOST_STARTS ? [0] : points.map((_, index) => index)
  const orders = starts.map(start => nearestNext(points, start))
  const first = orders.reduce((best, one) => (lengthM(points, one) < lengthM(points, best) ? one : best))
  return untangled(points, first)
}

/** Straight length of a way, m. */
export function lengthM(points: readonly LatLon[], order: readonly number[]): number {
  return order.slice(1).reduce((total, to, index) => total + between(points, order[index] ?? 0, to), 0)
}

/** Groups of points of which each has another within `linkM`, as indices in the order of their first. */
export function areasOf(points: readonly LatLon[], linkM: number): number[][] {
  const left = new Set(points.map((_, index) => index))
  const areas: number[][] = []
  for (const start of left) {
    left.delete(start)
    const area = [start]
    for (const from of area)
      for (const to of left)
        if (between(points, from, to) <= linkM) {
          left.delete(to)
          area.push(to)
        }
    areas.push(area.sort((a, b) => a - b))
  }
  return areas
}

function between(points: readonly LatLon[], from: number, to: number): number {
  const [a, b] = [points[from], points[to]]
  return a && b ? distanceM(a, b) : 0
}

function nearestNext(points: readonly LatLon[], start: number): number[] {
  const left = new Set(points.map((_, index) => index))
  const order: number[] = []
  for (let at = start; left.size > 0;) {
    left.delete(at)
    order.push(at)
    let best = Infinity
    let next = at
    for (const to of left) {
      const m = between(points, at, to)
      if (m < best) [best, next] = [m, to]
    }
    at = next
  }
  return order
}

/** Turns a stretch round wherever that makes the way shorter, until nothing does. */
function untangled(points: readonly LatLon[], order: readonly number[]): number[] {
  const way = [...order]
  const leg = (from: number | undefined, to: number | undefined) =>
    from === undefined || to === undefined ? 0 : between(points, from, to)
  const gain = (i: number, j: number) =>
    leg(way[i - 1], way[i]) + leg(way[j], way[j + 1]) - leg(way[i - 1], way[j]) - leg(way[i], way[j + 1])
  let changed = true
  for (let round = 0; changed && round < MOST_ROUNDS; round += 1) {
    changed = false
    for (let i = 0; i < way.length - 1; i += 1)
      for (let j = i + 1; j < way.length; j += 1) {
        if (gain(i, j) < LEAST_GAIN_M) continue
        way.splice(i, j - i + 1, ...way.slice(i, j + 1).reverse())
        changed = true
      }
  }
  return way
}
