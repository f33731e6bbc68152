import type { EpochDay } from '../../units/date.ts'
import type { Run } from './program.ts'
import { DAY_S, openingS } from './run-times.ts'
import { runsOf } from './year-runs.ts'
import type { YearRuns } from './year-runs.ts'

/**
 * The runs that open on a day or on the days after it, so many days in all, by the calendar day of the opening: a run of 1 May that opens
 * at 00:10 on 2 May is one of 2 May.
 */
export function nextRuns(calendar: YearRuns, onDay: EpochDay, days: number): Run[] {
  const near = calendar.filter(
    ({ day, pattern }) => day < onDay + days && lastOpeningS(pattern) >= (onDay - day) * DAY_S
  )
  return [...runsOf(near)].filter(run => openingS(run) >= onDay * DAY_S && openingS(run) < (onDay + days) * DAY_S)
}

const lastOpeningS = (pattern: YearRuns[number]['pattern']): number => pattern.at(-1)?.startS ?? 0
