import { absent, isAbsent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { sum } from '../base/collections.ts'
import { gallonsM3, specialUseGal, zoneUseGal } from '../domain/water/water-budget.ts'
import type { Site, Station } from '../model/site.ts'
import { ORDINANCE_EFFICIENCY } from '../reference/water-budget.ts'
import type { BudgetZone } from './budget-plan.ts'
import type { WaterPlan } from './plan.ts'
import { wetsAnArea } from './water-ground.ts'

export interface ZoneFacts {
  readonly site: Site
  readonly water: ReadonlyMap<string, WaterPlan>
  /** Twelve, January first. */
  readonly etM: Maybe<readonly number[]>
}

/** What each zone is estimated to use in a year. */
export function budgetZones(facts: ZoneFacts): BudgetZone[] {
  return facts.site.stations.map(station => budgetZone(facts, station))
}

function budgetZone(facts: ZoneFacts, station: Station): BudgetZone {
  const { site, water } = facts
  const stated = station.efficiency?.si
  const isSpecial = site.budget?.specialStations.includes(station.id) ?? false
  const zone = {
    station: station.id,
    areaM2: station.area?.si ?? absent('no area is stated'),
    factor: factorOf(water.get(station.id)),
    efficiency: stated ?? ORDINANCE_EFFICIENCY[wetsAnArea(station) ? 'overhead' : 'drip'],
    efficiencyBy: stated === undefined ? ('ordinance' as const) : ('record' as const),
    isSpecial
  }
  const months = site.budget?.form === 'ordinance 2015' ? byOrdinance(facts, zone) : byNeed(water.get(station.id), zone)
  return { ...zone, months, useM3: allOf(months) }
}

function factorOf(water: WaterPlan | undefined): Maybe<number> {
  const factor = water?.need.factor ?? absent('no plant factor is stated')
  return isAbsent(factor) ? factor : factor.value
}

type Zone = Pick<BudgetZone, 'areaM2' | 'factor' | 'efficiency' | 'isSpecial'>

/** Evapotranspiration × factor / efficiency × area, whatever rain falls and whether it is watered; special areas in full. */
function byOrdinance({ etM }: ZoneFacts, { areaM2, factor, efficiency, isSpecial }: Zone): readonly Maybe<number>[] {
  return Array.from({ length: 12 }, (_, index) => {
    if (isAbsent(etM)) return etM
    if (isAbsent(areaM2)) return areaM2
    const etoM = etM[index] ?? 0
    if (isSpecial) return gallonsM3(specialUseGal(etoM, areaM2))
    if (isAbsent(factor)) return factor
    return gallonsM3(zoneUseGal(etoM, { factor, efficiency, areaM2 }))
  })
}

/** What the plants lack over the days that are watered, with the losses of the zone. A month without watering uses none. */
function byNeed(water: WaterPlan | undefined, { areaM2 }: Zone): readonly Maybe<number>[] {
  return Array.from({ length: 12 }, (_, index) => {
    const month = water?.months[index]
    if (!water || !month || month.events === 0) return 0
    if (isAbsent(areaM2)) return areaM2
    if (isAbsent(month.needM)) return month.needM
    const { delivery } = water.need
    return isAbsent(delivery) ? delivery : month.needM * delivery.multiplier * areaM2
  })
}

/** The sum of parts that are all known. */
export function allOf(parts: readonly Maybe<number>[]): Maybe<number> {
  const missing = parts.find(isAbsent)
  return missing ?? sum(parts.map(part => (isAbsent(part) ? 0 : part)))
}
