import { isAbsent, isPresent } from '../base/absent.ts'
import { groupBy, sum } from '../base/collections.ts'
import { DAY_S, openingS } from '../domain/schedule/run-times.ts'
import type { Controller, Site } from '../model/site.ts'
import { fromEpochDay, monthOf } from '../units/date.ts'
import { legalRunsOf } from './legal-runs.ts'
import type { NightPlan, SchedulePlan, WaterPlan } from './plan.ts'
import { controllersOn } from './supply-peaks.ts'
import { allowedHours } from './water-hours.ts'
import type { AllowedHours } from './water-hours.ts'

type Group = Pick<NightPlan, 'of' | 'id' | 'zonesAtOnce'> & { readonly controllers: readonly Controller[] }

/** Stations, by id, that open on one night. */
interface Night {
  readonly month: number
  readonly stations: Set<string>
}

/**
 * For each supply that lets only so many zones run, and for each other controller, which runs one zone at a time: the night of each month
 * that asks for most, by the legal clock. A night belongs to the month in which it begins.
 */
export function planNights(
  site: Site,
  schedules: ReadonlyMap<string, SchedulePlan>,
  water: ReadonlyMap<string, WaterPlan>
): NightPlan[] {
  const hours = allowedHours(site.wateringRules)
  if (isAbsent(hours)) return []
  return groupsOf(site).flatMap(group => {
    const nights = nightsOf(site, group.controllers, schedules, hours)
    return [...groupBy(nights, one => one.month)].map(([month, all]) => fullest(group, month, all, water, hours))
  })
}

function groupsOf(site: Site): Group[] {
  const supplies = site.supplies.flatMap<Group>(supply => {
    const { id, zonesAtOnce } = supply
    return zonesAtOnce === undefined || zonesAtOnce < 1
      ? []
      : [{ of: 'supply', id, zonesAtOnce, controllers: controllersOn(site, supply) }]
  })
  const held = new Set(supplies.flatMap(group => group.controllers))
  const others = site.controllers.filter(one => !held.has(one))
  return [
    ...supplies,
    ...others.map<Group>(one => ({ of: 'controller', id: one.id, zonesAtOnce: 1, controllers: [one] }))
  ]
}

function nightsOf(
  site: Site,
  controllers: readonly Controller[],
  schedules: ReadonlyMap<string, SchedulePlan>,
  { nightFrom }: AllowedHours
): readonly Night[] {
  const nights = new Map<number, Night>()
  for (const controller of controllers) {
    for (const run of legalRunsOf(site, controller, schedules.get(controller.id)?.runs ?? []).runs) {
      const day = Math.floor((openingS(run) - nightFrom * 60) / DAY_S)
      const night = nights.get(day) ?? { month: monthOf(fromEpochDay(day)), stations: new Set<string>() }
      nights.set(day, night)
      night.stations.add(`${controller.id}/${run.station}`)
    }
  }
  return [...nights.entries()].sort(([a], [b]) => a - b).map(([, night]) => night)
}

function fullest(
  { controllers, ...group }: Group,
  month: number,
  nights: readonly Night[],
  water: ReadonlyMap<string, WaterPlan>,
  { allowedS }: AllowedHours
): NightPlan {
  const needOf = (id: string) => {
    const need = water.get(id)?.months[month - 1]?.needS
    return need !== undefined && isPresent(need) ? need : undefined
  }
  const asked = nights.map(({ stations }) => {
    const ids = [...stations]
    const own = controllers.map(({ id }) =>
      sum(ids.filter(one => one.startsWith(`${id}/`)).map(one => needOf(one) ?? 0))
    )
    // A controller runs one zone at a time, however many the supply allows.
    return { ids, needS: Math.max(sum(own) / group.zonesAtOnce, ...own) }
  })
  const most = asked.reduce((best, one) => (one.needS > best.needS ? one : best))
  return {
    ...group,
    month,
    needS: most.needS,
    allowedS,
    nights: nights.length,
    stations: most.ids.filter(id => needOf(id) !== undefined),
    notKnown: most.ids.filter(id => needOf(id) === undefined)
  }
}
