import { absent, isAbsent } from '../base/absent.ts'
import { DEFAULT_STEP_S } from '../domain/schedule/controller.ts'
import { appliedDepthM } from '../domain/water/application-rate.ts'
import type { Site, Station } from '../model/site.ts'
import type { ClimatePlan } from './climate-plan.ts'
import { yearOf } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import type { NightPlan, SchedulePlan, WaterPlan, Working } from './plan.ts'
import { scheduledController } from './schedules.ts'
import { measuredRateMPerS } from './water-delivery.ts'
import { intakeOf, reservoirOf, stationRateMPerS } from './water-ground.ts'
import { longestSet } from './water-longest.ts'
import { activePrograms, waterMonths } from './water-months.ts'
import type { WaterMonthsOf } from './water-months.ts'
import { planNights } from './water-nights.ts'
import { planNeed } from './water-need.ts'
import { waterWorkings } from './water-workings.ts'

export interface WaterPlanned {
  readonly water: ReadonlyMap<string, WaterPlan>
  readonly nights: readonly NightPlan[]
  readonly workings: readonly Working[]
}

/** What the water of each station does on its ground and what its plants need, as programmed in the year of `on`. */
export function planWater(
  site: Site,
  on: IsoDate,
  schedules: ReadonlyMap<string, SchedulePlan>,
  climate: ClimatePlan
): WaterPlanned {
  const water = new Map<string, WaterPlan>()
  const workings: Working[] = []
  for (const station of site.stations) {
    const facts = factsOf({ site, climate, on, schedules }, station)
    const plan = stationWater(facts)
    water.set(station.id, plan)
    workings.push(...waterWorkings(facts, plan))
  }
  return { water, nights: planNights(site, schedules, water), workings }
}

interface Given {
  readonly site: Site
  readonly climate: ClimatePlan
  readonly on: IsoDate
  readonly schedules: ReadonlyMap<string, SchedulePlan>
}

function factsOf({ site, climate, on, schedules }: Given, station: Station): WaterMonthsOf {
  const controller = site.controllers.find(one => one.id === station.controller)
  const months = schedules.get(station.controller)?.months ?? []
  return {
    site,
    station,
    climate,
    controller,
    rows: months.filter(row => row.station === station.number),
    rateMPerS: stationRateMPerS(station),
    year: yearOf(on),
    stepS: controller ? scheduledController(site, controller).stepS : DEFAULT_STEP_S
  }
}

function stationWater(facts: WaterMonthsOf): WaterPlan {
  const { site, station, climate, controller, rows, rateMPerS, year } = facts
  const set = controller && longestSet(controller, rows)
  const reservoir = reservoirOf(station, rateMPerS)
  const holdsM = isAbsent(reservoir) ? reservoir : reservoir.holdsM
  const need = planNeed({ site, station, climate, year, programs: activePrograms(facts), holdsM })
  return {
    station: station.id,
    rateMPerS,
    rateBy: measuredRateMPerS(station) === undefined ? 'flow' : 'catch-cans',
    intake: intakeOf(station, rateMPerS),
    reservoir,
    need,
    ...(set ? { longestSet: set } : {}),
    appliedM: appliedM(rateMPerS, set),
    months: waterMonths(facts, need)
  }
}

function appliedM(rateMPerS: WaterPlan['rateMPerS'], set: WaterPlan['longestSet']): WaterPlan['appliedM'] {
  if (isAbsent(rateMPerS)) return rateMPerS
  return set ? appliedDepthM(rateMPerS, set.watering.seconds) : absent('it does not water')
}
