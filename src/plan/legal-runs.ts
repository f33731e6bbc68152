import { numberer } from '../domain/schedule/numberer.ts'
import { DAY_S } from '../domain/schedule/run-times.ts'
import type { DayPattern, PatternDay, PatternRun, YearRuns } from '../domain/schedule/year-runs.ts'
import type { Controller, Site } from '../model/site.ts'
import { fromEpochDay, monthOf } from '../units/date.ts'
import type { EpochDay } from '../units/date.ts'
import { daylightMinutes } from '../units/time-zone.ts'
import type { LegalDays } from './plan.ts'

/**
 * The year of a controller in legal local time, by which rules go and by which several controllers can be held beside each other. A clock
 * that does not follow daylight saving is behind in summer, so the water runs later by the legal clock and may fall on the next date.
 */
export function legalDaysOf(site: Site, controller: Controller, days: YearRuns): LegalDays {
  const timeZone = site.location?.timeZone
  if (controller.clock?.daylightSaving !== 'not followed' || timeZone === undefined) return { days }
  const months = new Set<number>()
  let most = 0
  const shifter = makeShifter()
  const pieces = new Map<EpochDay, DayPattern[]>()
  const add = (day: EpochDay, piece: DayPattern) => {
    if (piece.length > 0) pieces.set(day, [...(pieces.get(day) ?? []), piece])
  }
  for (const { day, pattern } of days) {
    const minutes = daylightMinutes(day, timeZone)
    if (minutes > 0) months.add(monthOf(fromEpochDay(day)))
    most = Math.max(most, minutes)
    const { sameDay, nextDay } = shifter(pattern, minutes)
    add(day, sameDay)
    add(day + 1, nextDay)
  }
  return months.size === 0 ? { days } : { days: joined(pieces), behind: { minutes: most, months: [...months] } }
}

interface Shifted {
  readonly sameDay: DayPattern
  /** What starts before midnight by its own clock and after it by the legal one. */
  readonly nextDay: DayPattern
}

function makeShifter(): (pattern: DayPattern, minutes: number) => Shifted {
  const known = new Map<number, Map<DayPattern, Shifted>>()
  return (pattern, minutes) => {
    if (minutes === 0) return { sameDay: pattern, nextDay: [] }
    const own = known.get(minutes) ?? new Map<DayPattern, Shifted>()
    known.set(minutes, own)
    const shifted = own.get(pattern) ?? shift(pattern, minutes * 60)
    own.set(pattern, shifted)
    return shifted
  }
}

function shift(pattern: DayPattern, shiftS: number): Shifted {
  const staysPut = ({ programStartS }: PatternRun) => programStartS + shiftS < DAY_S
  const later = (run: PatternRun, seconds: number) => ({
    ...run,
    programStartS: run.programStartS + seconds,
    startS: run.startS + seconds
  })
  return {
    sameDay: pattern.filter(staysPut).map(run => later(run, shiftS)),
    nextDay: pattern.filter(run => !staysPut(run)).map(run => later(run, shiftS - DAY_S))
  }
}

/** Days in order, those that get pieces of two days with the pieces in order of opening. */
function joined(pieces: ReadonlyMap<EpochDay, readonly DayPattern[]>): PatternDay[] {
  const idOf = numberer<DayPattern>()
  const known = new Map<string, DayPattern>()
  const patternOf = (parts: readonly DayPattern[]): DayPattern => {
    const [only] = parts
    if (only && parts.length === 1) return only
    const key = parts.map(idOf).join()
    const whole = known.get(key) ?? parts.flat().sort((a, b) => a.startS - b.startS)
    known.set(key, whole)
    return whole
  }
  return [...pieces].sort(([a], [b]) => a - b).map(([day, parts]) => ({ day, pattern: patternOf(parts) }))
}
