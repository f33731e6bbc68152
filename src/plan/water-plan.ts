import type { Maybe } from '../base/absent.ts'
import type { Delivery } from '../domain/water/delivery.ts'
import type { PhaseDays, PhaseSpan } from '../domain/water/phase-need.ts'

/** How a station's losses are told, and what its need is multiplied by for them. */
export interface DeliveryPlan {
  readonly delivery: Delivery
  readonly multiplier: number
  /** "dulq" is stated, "catch-cans" measured. */
  readonly by: Delivery['by'] | 'catch-cans'
}

/** Share of reference evapotranspiration that a planting wants, apart from its phases. */
export interface FactorPlan {
  readonly value: number
  /** What it is made of; left out for one plant factor. */
  readonly parts?: { readonly species: number; readonly density: number; readonly microclimate: number }
}

/** What the plants of a station want, in the year of the schedules. */
export interface NeedPlan {
  readonly factor: Maybe<FactorPlan>
  readonly delivery: Maybe<DeliveryPlan>
  /** As the site file has them; none where nothing is said. */
  readonly phases: readonly PhaseSpan[]
  /** Twelve, January first. */
  readonly months: readonly NeedMonth[]
  /** The months together; absent where one that waters is not known. */
  readonly yearM: Maybe<number>
}

export interface NeedMonth {
  /** The days that are watered, by phase; their sum is 0 to the days of the month. */
  readonly parts: readonly PhaseDays[]
  /** What the plants use over those days. */
  readonly useM: Maybe<number>
  /** Rain that counts in the whole month. */
  readonly rainM: Maybe<number>
  /** What the plants lack over those days, before losses. */
  readonly needM: Maybe<number>
  /** Need of a day of the month as a share of that of the month that needs most. */
  readonly percent: Maybe<number>
  /** Whole days that the root zone lasts at the use of a day; 0 where it does not last one. */
  readonly intervalDays: Maybe<number>
}
