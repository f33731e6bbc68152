import type { At } from '../diagnostics/finding.ts'
import type { Interval, IsoDate } from '../units/date.ts'
import type { Quantity } from '../units/quantity.ts'
import type { VisitPart } from './visit-facts.ts'

/** A task that comes again, or comes once on a day. What a visit records under its name counts as done. */
export interface MaintenanceTask {
  readonly at: At
  /** "monthly inspection", "winterizing", "remove the temporary line". */
  readonly task: string
  readonly every?: Interval
  /** When it was last done; a month alone counts from its first day. */
  readonly last?: IsoDate
  /** The one day it is due, or the first. */
  readonly due?: IsoDate
  readonly box?: string
  readonly minutes?: Quantity<'duration'>
  readonly tools?: readonly string[]
  readonly parts?: readonly VisitPart[]
}

/** Where a thing stands on the earth, WGS 84. */
export interface Position {
  readonly at: At
  readonly latitude: number
  readonly longitude: number
  /** How far it may be off. */
  readonly accuracy?: Quantity<'length'>
}
