import type { EpochDay } from '../../units/date.ts'
import { numberer } from './numberer.ts'
import { DAY_S } from './run-times.ts'
import { NONE } from './stretches.ts'
import type { Stretch, Stretches } from './stretches.ts'
import { patternEndS } from './year-runs.ts'
import type { DayPattern, PatternRun, YearRuns } from './year-runs.ts'

/** A run with the part of it that a rule does not allow. Seconds count from midnight of the run's own day. */
export interface OutsideRun {
  readonly run: PatternRun
  readonly outsideMinutes: number
  /** Start of the first stretch that is not allowed, and end of the last one. */
  readonly fromS: number
  readonly toS: number
}

/** One list serves every day on which the same is outside. */
export interface OutsideDay {
  readonly day: EpochDay
  readonly runs: readonly OutsideRun[]
}

/** What of each calendar day a rule bars. Days that are barred alike should share one list: what is shared is worked out once. */
export type BarredOn = (day: EpochDay) => Stretches

/**
 * Runs that water when a rule bars it, by the calendar day on which the water flows: a run that opens at 23:30 on an even date and closes
 * at 00:05 is 5 minutes outside even dates. Closing at the very second a barred stretch begins is inside the rule. `binds` leaves out the
 * stations that the rule does not concern.
 */
export function outside(days: YearRuns, barredOn: BarredOn, binds: (station: number) => boolean): OutsideDay[] {
  const idOf = numberer<Stretches>()
  const known = new Map<DayPattern, Map<string, readonly OutsideRun[]>>()
  const found: OutsideDay[] = []
  for (const { day, pattern } of days) {
    const barred = barredOver(day, pattern, barredOn)
    if (barred.every(one => one.length === 0)) continue
    const key = barred.length === 1 ? String(idOf(barred[0] ?? NONE)) : barred.map(idOf).join()
    const own = known.get(pattern) ?? new Map<string, readonly OutsideRun[]>()
    known.set(pattern, own)
    const runs = own.get(key) ?? pattern.flatMap(run => (binds(run.station) ? outsideRun(run, barred) : []))
    own.set(key, runs)
    if (runs.length > 0) found.push({ day, runs })
  }
  return found
}

/** What is barred of each day that the water of a pattern reaches, its own first: one more where it flows past midnight. */
function barredOver(day: EpochDay, pattern: DayPattern, barredOn: BarredOn): readonly Stretches[] {
  const barred = [barredOn(day)]
  const endS = patternEndS(pattern)
  for (let offset = 1; offset * DAY_S < endS; offset += 1) barred.push(barredOn(day + offset))
  return barred
}

function outsideRun(run: PatternRun, barred: readonly Stretches[]): OutsideRun[] {
  const [opensS, closesS] = [run.startS, run.startS + run.durationS]
  const parts: Stretch[] = []
  for (const [offset, stretches] of barred.entries())
    for (const stretch of stretches) {
      const [fromS, toS] = [stretch[0] + offset * DAY_S, stretch[1] + offset * DAY_S]
      if (fromS < closesS && toS > opensS) parts.push([Math.max(fromS, opensS), Math.min(toS, closesS)])
    }
  const [first, last] = [parts[0], parts.at(-1)]
  if (!first || !last) return []
  const seconds = parts.reduce((total, [fromS, toS]) => total + toS - fromS, 0)
  return [{ run, outsideMinutes: seconds / 60, fromS: first[0], toS: last[1] }]
}
