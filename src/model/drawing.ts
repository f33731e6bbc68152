import type { EastNorth } from '../domain/drawing/spot.ts'
import type { IsoDate } from '../units/date.ts'
import type { Quantity } from '../units/quantity.ts'
import type { Position } from './maintenance.ts'
import type { Recorded } from './site.ts'

export interface Circle extends EastNorth {
  readonly radiusM: number
}

/** What the record drawing is drawn from. Boxes bring their own ties and positions. */
export interface Drawing extends Recorded {
  readonly dated?: IsoDate
  readonly tolerance?: Quantity<'length'>
  /** Where 0 m east and 0 m north lie on the earth; only needed beside positions in degrees. */
  readonly origin?: Position
  readonly points: readonly DrawingPoint[]
  readonly places: readonly DrawingPlace[]
  readonly areas: readonly DrawingArea[]
  readonly lines: readonly DrawingLine[]
}

/** A thing that stays, and that ties are measured from. */
export interface DrawingPoint extends Recorded {
  readonly name: string
  readonly spot?: EastNorth
  readonly position?: Position
}

export const PLACE_KINDS = [
  'box',
  'controller',
  'shut-off',
  'meter',
  'backflow',
  'sensor',
  'splice',
  'filter',
  'pump',
  'quick coupler',
  'drain',
  'ground rod',
  'other'
] as const
export type PlaceKind = (typeof PLACE_KINDS)[number]

export const SIDES = ['north', 'east', 'south', 'west'] as const
export type Side = (typeof SIDES)[number]

/** Where a thing is; of a box only what its own record does not say. */
export interface DrawingPlace extends Recorded {
  readonly what: PlaceKind
  /** Id of the box, controller, supply, sensor or station that it belongs to. */
  readonly of?: string
  /** As the drawing labels it, where its kind and id do not say it. */
  readonly name?: string
  readonly spot?: EastNorth
  readonly position?: Position
  readonly ties: readonly string[]
  /** On which side of the line between the two points of its ties it lies. */
  readonly side?: Side
}

/** Ground of a zone. */
export interface DrawingArea extends Recorded {
  /** Zone name or station id. */
  readonly zone: string
  readonly points: readonly EastNorth[]
  readonly circle?: Circle
}

export const LINE_KINDS = [
  'curb',
  'road edge',
  'wall',
  'building',
  'walk',
  'fence',
  'main',
  'lateral',
  'wire',
  'sleeve',
  'other'
] as const
export type LineKind = (typeof LINE_KINDS)[number]

export interface DrawingLine extends Recorded {
  readonly kind: LineKind
  readonly name?: string
  readonly points: readonly EastNorth[]
  readonly circle?: Circle
}
