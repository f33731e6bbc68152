import type { ClockMinutes } from '../../units/clock.ts'
import type { IsoDate, MonthDay } from '../../units/date.ts'
import type { DayRule, RunTime } from './program.ts'
import type { SuspendedDays } from './suspended.ts'

/** One line of a program: a station and how long it is open. */
export interface StationEntry {
  readonly number: number
  readonly runTime: RunTime
}

/** What of a program decides when water runs. The site model's programs have this shape. */
export interface ScheduledProgram {
  readonly id: string
  readonly days: DayRule
  readonly starts: readonly ClockMinutes[]
  /** In the order the controller runs them. */
  readonly stations: readonly StationEntry[]
  /** Twelve fractions, January first; absent means 100 % all year. */
  readonly monthlyPercent?: readonly number[]
  /** First and last day, both inclusive. */
  readonly from?: IsoDate
  readonly to?: IsoDate
  /** Days within them on which it is held back. */
  readonly suspensions?: readonly SuspendedDays[]
}

export interface ScheduledController {
  readonly programs: readonly ScheduledProgram[]
  readonly delayS: number
  readonly stepS: number
}

/** The watering season, both days inclusive; `from` after `to` crosses the year's end. */
export interface WateringSeason {
  readonly from: MonthDay
  readonly to: MonthDay
}

/** Step of run times where the product sheet states none: 1 min. Common practice, no source. */
export const DEFAULT_STEP_S = 60

/** Fraction of the run times in a month, 1 to 12. */
export function percentIn(program: Pick<ScheduledProgram, 'monthlyPercent'>, month: number): number {
  return program.monthlyPercent?.[month - 1] ?? 1
}
