import { isAbsent } from '../base/absent.ts'
import { localPosition, localPositionWorked } from '../domain/drawing/local-position.ts'
import type { EastNorth } from '../domain/drawing/spot.ts'
import { apartM, reachM } from '../domain/drawing/spot.ts'
import { TIE_GAP_M, tiePositionWorked, tieSpots } from '../domain/drawing/tie-position.ts'
import { pointKey, readTie } from '../domain/drawing/tie-text.ts'
import type { TieText } from '../domain/drawing/tie-text.ts'
import type { LatLon } from '../domain/distance.ts'
import type { Side } from '../model/drawing.ts'
import type { Position } from '../model/maintenance.ts'
import type { Site } from '../model/site.ts'
import type { UnitSystem } from '../units/show.ts'
import type { DrawnMark, Unplaced } from './drawing-plan.ts'
import type { Working } from './plan.ts'

/** What a place is worked out with. */
export interface Ground {
  readonly units: UnitSystem
  /** Undefined where degrees cannot be joined to the meters of the drawing. */
  readonly origin?: LatLon
  readonly points: ReadonlyMap<string, EastNorth & { readonly name: string }>
}

/** What is written of a place, whichever record says it. */
export interface WrittenPlace {
  readonly subject: string
  readonly spot?: EastNorth
  readonly position?: Position
  readonly ties: readonly string[]
  readonly side?: Side
  /** Ground of its zones: of two spots the nearer to it is taken. */
  readonly near: readonly (readonly EastNorth[])[]
}

export type FoundPlace =
  | { readonly spot: EastNorth; readonly by: DrawnMark['by']; readonly working?: Working }
  | { readonly spot?: undefined; readonly because: Unplaced['because']; readonly reason?: string }

/** A tie whose point has a place. */
export interface KnownTie extends TieText {
  readonly point: EastNorth & { readonly name: string }
}

export function groundOf({ drawing, location, units, boxes }: Site): Ground {
  const positions = [
    ...(drawing?.points ?? []).flatMap(one => one.position ?? []),
    ...(drawing?.places ?? []).flatMap(one => one.position ?? []),
    ...boxes.flatMap(one => one.position ?? [])
  ]
  const origin = drawing?.origin ?? (hasMeters(drawing) ? undefined : (positions[0] ?? degreesOf(location)))
  const points = (drawing?.points ?? []).flatMap(({ name, spot, position }) => {
    const placed = spot ?? (position && origin ? localPosition(position, origin) : undefined)
    return placed ? [[pointKey(name), { ...placed, name }] as const] : []
  })
  return { units, points: new Map(points), ...(origin ? { origin } : {}) }
}

function hasMeters(drawing: Site['drawing']): boolean {
  if (!drawing) return false
  const { points, places, areas, lines } = drawing
  return areas.length > 0 || lines.length > 0 || [...points, ...places].some(one => one.spot)
}

function degreesOf(location: Site['location']): LatLon | undefined {
  const { latitude, longitude } = location ?? {}
  return latitude === undefined || longitude === undefined ? undefined : { latitude, longitude }
}

/** Ties that lead to a point of the drawing, in the order they are written. */
export function knownTies(ties: readonly string[], { points }: Ground): KnownTie[] {
  return ties.flatMap(written => {
    const tie = readTie(written)
    const point = tie && points.get(tie.from)
    return tie && point ? [{ ...tie, point }] : []
  })
}

/** Meters before degrees, degrees before ties: what was measured on the drawing goes before what a phone says. */
export function placeOf(written: WrittenPlace, ground: Ground): FoundPlace {
  if (written.spot) return { spot: written.spot, by: 'measured' }
  if (written.position && ground.origin) return byDegrees(written.subject, written.position, ground.origin)
  const ties = knownTies(written.ties, ground)
  if (ties.length >= 2) return byTies(written, ties, ground.units)
  if (written.position) return { because: 'no-origin' }
  return { because: written.ties.length > 0 ? 'few-ties' : 'nothing' }
}

function byDegrees(subject: string, position: Position, origin: LatLon): FoundPlace {
  const { steps } = localPositionWorked(position, origin)
  return {
    spot: localPosition(position, origin),
    by: 'degrees',
    working: { calculation: 'local-position', subject, steps }
  }
}

/** By the first two ties. Of the two spots: the side that is written, then a third tie, then the nearer ground of its zones. */
function byTies(written: WrittenPlace, ties: readonly KnownTie[], units: UnitSystem): FoundPlace {
  const [first, second, third] = ties
  if (!first || !second) return { because: 'few-ties' }
  const spots = tieSpots({ from: first.point, lengthM: first.lengthM }, { from: second.point, lengthM: second.lengthM })
  if (isAbsent(spots)) return { because: 'no-meeting', reason: spots.reason }
  const spot = chosen(spots, third, written)
  if (!spot) return { because: 'two-spots' }
  const worked = tiePositionWorked(apartM(first.point, second.point), first.lengthM, second.lengthM, units)
  const steps = isAbsent(worked) ? [] : worked.steps
  return { spot, by: 'ties', working: { calculation: 'tie-position', subject: written.subject, steps } }
}

function chosen(
  [left, right]: readonly [EastNorth, EastNorth],
  third: KnownTie | undefined,
  { side, near }: WrittenPlace
): EastNorth | undefined {
  if (apartM(left, right) <= TIE_GAP_M) return left
  if (side) return onSide(left, right, side)
  if (third) {
    const miss = (spot: EastNorth) => Math.abs(apartM(spot, third.point) - third.lengthM)
    return smaller(left, right, miss)
  }
  if (near.length === 0) return undefined
  return smaller(left, right, spot => Math.min(...near.map(shape => reachM(shape, spot))))
}

/** The one for which it is less; neither where it hardly tells them apart. */
function smaller(a: EastNorth, b: EastNorth, of: (spot: EastNorth) => number): EastNorth | undefined {
  const [left, right] = [of(a), of(b)]
  if (Math.abs(left - right) <= TIE_GAP_M) return undefined
  return left < right ? a : b
}

/** The one farther to that side; neither where the points lie in line with it. */
function onSide(a: EastNorth, b: EastNorth, side: Side): EastNorth | undefined {
  const along = { north: [0, 1], south: [0, -1], east: [1, 0], west: [-1, 0] }[side] as [number, number]
  const reach = (spot: EastNorth) => -(spot.eastM * along[0] + spot.northM * along[1])
  return smaller(a, b, reach)
}
