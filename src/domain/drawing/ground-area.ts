import type { LatLon } from '../distance.ts'
import { localPosition } from './local-position.ts'
import type { EastNorth } from './spot.ts'

/**
 * Ground inside a ring of corners, without that of the rings in it, m²: the trapezoids under each side, on a plane that touches the ground at the
 * first corner. True to a ten-thousandth over a kilometer; a ring may run either way round, and close or not. 0 where there is no ring.
 */
export function groundAreaM2([outer = [], ...holes]: readonly (readonly LatLon[])[]): number {
  const [origin] = outer
  if (!origin) return 0
  const inside = (ring: readonly LatLon[]): number => ringAreaM2(ring.map(corner => localPosition(corner, origin)))
  return inside(outer) - holes.reduce((sum, hole) => sum + inside(hole), 0)
}

function ringAreaM2(ring: readonly EastNorth[]): number {
  const twice = ring.reduce((sum, { eastM, northM }, index) => {
    const next = ring[(index + 1) % ring.length] ?? { eastM, northM }
    return sum + eastM * next.northM - next.eastM * northM
  }, 0)
  return Math.abs(twice) / 2
}
