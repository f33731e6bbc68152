import type { EastNorth } from '../domain/drawing/spot.ts'
import type { Circle, LineKind, PlaceKind } from '../model/drawing.ts'

/** Where everything on the record drawing lies, meters east and north of its origin. */
export interface DrawingPlan {
  /** Ratio of the scale and whether the sheet is turned, for the paper of the site; left out where nothing has a place. */
  readonly sheet?: { readonly ratio: number; readonly turned: boolean; readonly legend: 'beside' | 'below' }
  readonly bounds?: Bounds
  readonly marks: readonly DrawnMark[]
  readonly points: readonly (EastNorth & { readonly name: string })[]
  readonly areas: readonly DrawnArea[]
  readonly lines: readonly DrawnLine[]
  readonly ties: readonly DrawnTie[]
  readonly unplaced: readonly Unplaced[]
}

export interface Bounds {
  readonly west: number
  readonly south: number
  readonly east: number
  readonly north: number
}

export interface DrawnMark extends EastNorth {
  readonly what: PlaceKind
  /** Id of what it is of; empty where none is written. */
  readonly of: string
  /** Name of its own, where one is written. */
  readonly name?: string
  readonly by: 'measured' | 'degrees' | 'ties'
}

/** A tie to a point that has a place, from the point to the mark. */
export interface DrawnTie {
  readonly mark: DrawnMark
  readonly point: EastNorth & { readonly name: string }
  /** "9 ft 4 in", as it was written. */
  readonly amount: string
  readonly lengthM: number
}

export interface DrawnArea {
  /** Ids of the stations that water it; more than one where zones share a name. */
  readonly stations: readonly string[]
  readonly zone: string
  readonly points: readonly EastNorth[]
}

export interface DrawnLine {
  readonly kind: LineKind
  readonly name?: string
  readonly points: readonly EastNorth[]
  readonly circle?: Circle
}

/** A thing that no place is known of, so that the drawing says it rather than leave it out. */
export interface Unplaced {
  readonly what: PlaceKind | 'valve'
  readonly of: string
  readonly because: UnplacedWhy
  /** What the calculation said, where it could not place it. */
  readonly reason?: string
}

/**
 * Nothing is written; fewer than two ties lead to a point of the drawing; they do not meet; two spots fit; it is written in degrees, other places
 * in meters, and no origin joins them.
 */
export type UnplacedWhy = 'nothing' | 'few-ties' | 'no-meeting' | 'two-spots' | 'no-origin'
