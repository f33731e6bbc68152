import { DAY_S, openingS } from './run-times.ts'
import type { EpochDay } from '../../units/date.ts'
import type { Run } from './program.ts'

/**
 * The runs that open on a day or on the days after it, so many days in all, by the calendar day of the opening: a run of 1 May that opens
 * at 00:10 on 2 May is one of 2 May. `runs` are in order of opening, as `expandYear` gives them.
 */
export function nextRuns(runs: readonly Run[], onDay: EpochDay, days: number): Run[] {
  return runs.slice(firstFrom(runs, onDay * DAY_S), firstFrom(runs, (onDay + days) * DAY_S))
}

/** Index of the first run that opens at a time or after it. */
function firstFrom(runs: readonly Run[], timeS: number): number {
  let [low, high] = [0, runs.length]
  while (low < high) {
    const middle = (low + high) >>> 1
    const run = runs[middle]
    if (run && openingS(run) < timeS) low = middle + 1
    else high = middle
  }
  return low
}
