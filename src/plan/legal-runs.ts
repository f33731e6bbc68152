import { DAY_S } from '../domain/schedule/run-times.ts'
import type { Run } from '../domain/schedule/program.ts'
import type { Controller, Site } from '../model/site.ts'
import { fromEpochDay, monthOf } from '../units/date.ts'
import { daylightMinutes } from '../units/time-zone.ts'

export interface LegalRuns {
  readonly runs: readonly Run[]
  /** How far the controller's clock is behind the legal one, and in which months of those with runs, 1 to 12; absent where it is right. */
  readonly behind?: { readonly minutes: number; readonly months: readonly number[] }
}

/**
 * The runs of a controller in legal local time, by which rules go and by which several controllers can be held beside each other. A clock
 * that does not follow daylight saving is behind in summer, so the water runs later by the legal clock and may fall on the next date.
 */
export function legalRunsOf(site: Site, controller: Controller, runs: readonly Run[]): LegalRuns {
  const timeZone = site.location?.timeZone
  if (controller.clock?.daylightSaving !== 'not followed' || timeZone === undefined) return { runs }
  const months = new Set<number>()
  let most = 0
  const shifted = runs.map(run => {
    const minutes = daylightMinutes(run.day, timeZone)
    if (minutes === 0) return run
    months.add(monthOf(fromEpochDay(run.day)))
    most = Math.max(most, minutes)
    return later(run, minutes * 60)
  })
  return months.size === 0 ? { runs } : { runs: shifted, behind: { minutes: most, months: [...months] } }
}

function later(run: Run, shiftS: number): Run {
  const days = Math.floor((run.programStartS + shiftS) / DAY_S)
  const back = shiftS - days * DAY_S
  return { ...run, day: run.day + days, programStartS: run.programStartS + back, startS: run.startS + back }
}
