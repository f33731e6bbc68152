import type { EpochDay } from '../../units/date.ts'
import { DAY_S } from './run-times.ts'
import { patternEndS } from './year-runs.ts'
import type { DayPattern, YearRuns } from './year-runs.ts'

/** Seconds of open valve by station. */
export type OpenByStation = ReadonlyMap<number, number>

/** How long each station is open on each calendar day, all programs together. Water that flows past midnight counts on the day it flows. */
export function dailyOpenS(days: YearRuns): ReadonlyMap<EpochDay, OpenByStation> {
  const known = new Map<DayPattern, readonly OpenByStation[]>()
  const open = new Map<EpochDay, Map<number, number>>()
  for (const { day, pattern } of days) {
    const parts = known.get(pattern) ?? byCalendarDay(pattern)
    known.set(pattern, parts)
    for (const [offset, part] of parts.entries()) {
      const own = open.get(day + offset) ?? new Map<number, number>()
      open.set(day + offset, own)
      for (const [station, seconds] of part) own.set(station, (own.get(station) ?? 0) + seconds)
    }
  }
  return open
}

/** Of a pattern, its own day first. */
function byCalendarDay(pattern: DayPattern): OpenByStation[] {
  return Array.from({ length: Math.ceil(patternEndS(pattern) / DAY_S) }, (_, offset) => {
    const open = new Map<number, number>()
    for (const { station, startS, durationS } of pattern) {
      const from = Math.max(startS, offset * DAY_S)
      const to = Math.min(startS + durationS, (offset + 1) * DAY_S)
      if (to > from) open.set(station, (open.get(station) ?? 0) + to - from)
    }
    return open
  })
}
