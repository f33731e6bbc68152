import { isPresent } from '../base/absent.ts'
import { DEFAULT_STEP_S } from '../domain/schedule/controller.ts'
import type { ScheduledController } from '../domain/schedule/controller.ts'
import { yearRuns } from '../domain/schedule/expand-year.ts'
import { stationMonths } from '../domain/schedule/months.ts'
import type { Controller, Site } from '../model/site.ts'
import { yearOf } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { legalDaysOf } from './legal-runs.ts'
import type { SchedulePlan, Working } from './plan.ts'
import { scheduleWorkings } from './schedule-workings.ts'
import { stationFlowM3s } from './station-flow.ts'

export interface SchedulesPlanned {
  /** By controller id; every controller of the site has one. */
  readonly schedules: ReadonlyMap<string, SchedulePlan>
  readonly workings: readonly Working[]
}

/**
 * The schedules of a site for the calendar year of `on`. A controller or a station out of service has no runs, and neither has
 * any of a site that is out of service or removed.
 */
export function planSchedules(site: Site, on: IsoDate): SchedulesPlanned {
  const schedules = new Map<string, SchedulePlan>()
  const workings: Working[] = []
  const year = yearOf(on)
  for (const controller of site.controllers) {
    const scheduled = scheduledController(site, controller)
    const flowM3s = flowsOf(site, controller)
    const months = stationMonths(scheduled, year, { season: site.season, flowM3s })
    const days = yearRuns(scheduled, year, site.season)
    const legal = legalDaysOf(site, controller, days)
    schedules.set(controller.id, { controller: controller.id, year, days, legal, months })
    workings.push(...scheduleWorkings({ site, controller: controller.id, scheduled, months, flowM3s, on }))
  }
  return { schedules, workings }
}

/** What of a controller decides when water runs on the ground: without what is out of service. */
export function scheduledController(site: Site, controller: Controller): ScheduledController {
  const delayS = Math.max(0, controller.delayBetweenStations?.si ?? 0)
  const step = controller.sheet?.runTimeStep?.si ?? DEFAULT_STEP_S
  const stepS = step > 0 ? step : DEFAULT_STEP_S
  if (isOff(site, controller)) return { programs: [], delayS, stepS }
  const off = new Set(
    stationsOf(site, controller).flatMap(({ number, outOfService }) => (outOfService === undefined ? [] : [number]))
  )
  const programs = controller.programs.map(program => ({
    ...program,
    suspensions: [...(controller.suspensions ?? []), ...(program.suspensions ?? [])],
    stations: program.stations.filter(({ number }) => !off.has(number))
  }))
  return { programs, delayS, stepS }
}

function isOff(site: Site, controller: Controller): boolean {
  return site.status === 'out-of-service' || site.status === 'removed' || controller.outOfService !== undefined
}

function stationsOf(site: Site, controller: Controller) {
  return site.stations.filter(station => station.controller === controller.id)
}

function flowsOf(site: Site, controller: Controller): (station: number) => number | undefined {
  const flows = new Map<number, number>()
  for (const station of stationsOf(site, controller)) {
    const flow = stationFlowM3s(station)
    if (isPresent(flow)) flows.set(station.number, flow)
  }
  return station => flows.get(station)
}
