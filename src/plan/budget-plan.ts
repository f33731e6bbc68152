import type { Maybe } from '../base/absent.ts'
import type { Recorded } from '../model/site.ts'
import type { IsoDate } from '../units/date.ts'

/** The water that a site may use, is estimated to use, is set to use and did use. Volumes in m³. */
export interface BudgetPlan {
  /** Reference evapotranspiration of the year. */
  readonly etoM: Maybe<number>
  /** The whole landscape, special areas included. */
  readonly areaM2: Maybe<number>
  readonly specialAreaM2: number
  /** Evapotranspiration adjustment, in the form of the ordinance. */
  readonly adjustment?: number
  /** Of a year. */
  readonly allowanceM3: Maybe<number>
  /** By the ordinance in its form; else what the plants lack over the days that are watered, with the losses. */
  readonly estimatedM3: Maybe<number>
  readonly zones: readonly BudgetZone[]
  /** In the year of the schedules, for stations with a stated flow. */
  readonly programmedM3: number
  /** Ids of stations that water and whose flow is not stated: what they draw is not in the figure. */
  readonly flowNotStated: readonly string[]
  /** Twelve, January first; each kind adds up to its year. */
  readonly months: readonly BudgetMonth[]
  /** Between one meter reading and the next, by supply and date. */
  readonly periods: readonly MeterPeriod[]
}

export interface BudgetZone {
  readonly station: string
  readonly areaM2: Maybe<number>
  readonly factor: Maybe<number>
  readonly efficiency: number
  /** As the site file has it, or the figure that the ordinance counts with. */
  readonly efficiencyBy: 'record' | 'ordinance'
  /** Counts in full: food plants, play, public assembly, recycled water. */
  readonly isSpecial: boolean
  readonly useM3: Maybe<number>
  /** Twelve, January first. */
  readonly months: readonly Maybe<number>[]
}

export interface BudgetMonth {
  readonly allowanceM3: Maybe<number>
  readonly estimatedM3: Maybe<number>
  readonly programmedM3: number
}

export interface MeterPeriod {
  readonly supply: string
  readonly from: IsoDate
  readonly to: IsoDate
  readonly days: number
  /** The later reading, where it was written. */
  readonly reading: Recorded
  /** Absent where the later reading is lower. */
  readonly meteredM3: Maybe<number>
  /** From noon of the first day to noon of the last, by the programs as they stand now. */
  readonly programmedM3: number
  /** Days of that time on which a valve opens, by the programs. */
  readonly wateringDays: number
  /** Of the allowance, the days of that time. */
  readonly allowanceM3: Maybe<number>
  /** The unit that the later reading was probably in, and what the meter then counted. */
  readonly slip?: MeterSlip
}

export interface MeterSlip {
  readonly value: number
  readonly written: string
  readonly unit: string
  readonly meteredM3: number
}
