import { absent, isAbsent } from '../base/absent.ts'
import { DEFAULT_STEP_S } from '../domain/schedule/controller.ts'
import { appliedDepthM } from '../domain/water/application-rate.ts'
import type { Site, Station } from '../model/site.ts'
import { yearOf } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import type { NightPlan, SchedulePlan, WaterPlan, Working } from './plan.ts'
import { scheduledController } from './schedules.ts'
import { intakeOf, reservoirOf, stationRateMPerS } from './water-ground.ts'
import { longestSet } from './water-longest.ts'
import { waterMonths } from './water-months.ts'
import type { WaterMonthsOf } from './water-months.ts'
import { planNights } from './water-nights.ts'
import { waterWorkings } from './water-workings.ts'

export interface WaterPlanned {
  readonly water: ReadonlyMap<string, WaterPlan>
  readonly nights: readonly NightPlan[]
  readonly workings: readonly Working[]
}

/** What the water of each station does on its ground and what its plants need, as programmed in the year of `on`. */
export function planWater(site: Site, on: IsoDate, schedules: ReadonlyMap<string, SchedulePlan>): WaterPlanned {
  const water = new Map<string, WaterPlan>()
  const workings: Working[] = []
  for (const station of site.stations) {
    const facts = factsOf(site, station, on, schedules)
    const plan = stationWater(facts)
    water.set(station.id, plan)
    workings.push(...waterWorkings(facts, plan))
  }
  return { water, nights: planNights(site, schedules, water), workings }
}

function factsOf(
  site: Site,
  station: Station,
  on: IsoDate,
  schedules: ReadonlyMap<string, SchedulePlan>
): WaterMonthsOf {
  const controller = site.controllers.find(one => one.id === station.controller)
  const months = schedules.get(station.controller)?.months ?? []
  return {
    site,
    station,
    controller,
    rows: months.filter(row => row.station === station.number),
    rateMPerS: stationRateMPerS(station),
    year: yearOf(on),
    stepS: controller ? scheduledController(site, controller).stepS : DEFAULT_STEP_S
  }
}

function stationWater(facts: WaterMonthsOf): WaterPlan {
  const { station, controller, rows, rateMPerS } = facts
  const set = controller && longestSet(controller, rows)
  return {
    station: station.id,
    rateMPerS,
    intake: intakeOf(station, rateMPerS),
    reservoir: reservoirOf(station, rateMPerS),
    ...(set ? { longestSet: set } : {}),
    appliedM: appliedM(rateMPerS, set),
    months: waterMonths(facts)
  }
}

function appliedM(rateMPerS: WaterPlan['rateMPerS'], set: WaterPlan['longestSet']): WaterPlan['appliedM'] {
  if (isAbsent(rateMPerS)) return rateMPerS
  return set ? appliedDepthM(rateMPerS, set.watering.seconds) : absent('it does not water')
}
