import { nextOpenings } from '../domain/schedule/next-openings.ts'
import { DAY_S, openingS } from '../domain/schedule/run-times.ts'
import type { Site } from '../model/site.ts'
import { epochDay, fromEpochDay } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { scheduledController } from './schedules.ts'
import type { NextRun } from './totals-plan.ts'

const COUNT = 3

/** The next three openings of each station from the morning of `on`, by station id; none for one that does not water within a year. */
export function planNextRuns(site: Site, on: IsoDate): ReadonlyMap<string, readonly NextRun[]> {
  const next = new Map<string, readonly NextRun[]>()
  for (const controller of site.controllers) {
    const scheduled = scheduledController(site, controller)
    const openings = nextOpenings(scheduled, site.season, epochDay(on), COUNT)
    for (const [station, runs] of openings)
      next.set(
        `${controller.id}/${station}`,
        runs.map(run => {
          const day = Math.floor(openingS(run) / DAY_S)
          const minute = (openingS(run) - day * DAY_S) / 60
          return { program: run.program, on: fromEpochDay(day), minute, minutes: run.durationS / 60 }
        })
      )
  }
  return next
}
