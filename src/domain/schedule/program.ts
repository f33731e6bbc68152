import type { EpochDay, IsoDate } from '../../units/date.ts'

/** On which days a program runs, or on which days a rule lets it. */
export type DayRule =
  | { readonly kind: 'every-day' }
  /** ISO weekdays, 1 is Monday. */
  | { readonly kind: 'weekdays'; readonly days: readonly number[] }
  /** The 31st and 29 February are skipped by odd dates unless `withTurnover`. */
  | { readonly kind: 'odd-dates'; readonly withTurnover: boolean }
  | { readonly kind: 'even-dates' }
  | { readonly kind: 'every-n-days'; readonly every: number; readonly from: IsoDate }

/** Cycles of one station with the rest between them; one cycle has no soak. */
export interface RunTime {
  readonly cycles: number
  readonly cycleS: number
  readonly soakS: number
}

/** A stretch of open valve. `startS` counts from midnight of `day` and may pass 86,400. */
export interface Run {
  readonly day: EpochDay
  readonly program: string
  /** The start time that opened it, in seconds after midnight of `day`: one start is one pass through the program. */
  readonly programStartS: number
  readonly station: number
  readonly cycle: number
  readonly startS: number
  readonly durationS: number
}
