import { DAY_S } from '../../domain/schedule/run-times.ts'
import type { Run } from '../../domain/schedule/program.ts'
import type { Controller, Site } from '../../model/site.ts'
import type { SchedulePlan } from '../../plan/plan.ts'
import { MONTHS, fromEpochDay, monthOf } from '../../units/date.ts'
import { daylightMinutes } from '../../units/time-zone.ts'

/** What a rule is held against: when the water runs by the legal clock, and what to say where the controller's clock is another. */
export interface LegalRuns {
  readonly runs: readonly Run[]
  /** A sentence with a space before it; empty where the clock is right. */
  readonly note: string
}

/**
 * The runs of a controller in legal local time. A clock that does not follow daylight saving is behind in summer, so the water runs
 * later by the legal clock and may fall on the next date.
 */
export function legalRuns(site: Site, controller: Controller, schedule: SchedulePlan | undefined): LegalRuns {
  const runs = schedule?.runs ?? []
  const timeZone = site.location?.timeZone
  if (controller.clock?.daylightSaving !== 'not followed' || timeZone === undefined) return { runs, note: '' }
  const months = new Set<number>()
  let most = 0
  const shifted = runs.map(run => {
    const minutes = daylightMinutes(run.day, timeZone)
    if (minutes === 0) return run
    months.add(monthOf(fromEpochDay(run.day)))
    most = Math.max(most, minutes)
    return later(run, minutes * 60)
  })
  return months.size === 0 ? { runs, note: '' } : { runs: shifted, note: noteOf([...months], most) }
}

function later(run: Run, shiftS: number): Run {
  const days = Math.floor((run.programStartS + shiftS) / DAY_S)
  const back = shiftS - days * DAY_S
  return {
    ...run,
    day: run.day + days,
    programStartS: run.programStartS + back,
    startS: run.startS + back
  }
}

/** Months in the order of the year; a summer across the year's end starts where a month is missing before it. */
function noteOf(months: readonly number[], minutes: number): string {
  const sorted = [...months].sort((a, b) => a - b)
  const first = sorted.find(month => !months.includes(month === 1 ? 12 : month - 1)) ?? 1
  const last = sorted.find(month => !months.includes((month % 12) + 1)) ?? 12
  const span = first === last ? MONTHS[first - 1] : `${MONTHS[first - 1]} to ${MONTHS[last - 1]}`
  return ` Its clock does not follow daylight saving and is ${minutes} min behind in ${span}.`
}
