import { isAbsent, isPresent } from '../base/absent.ts'
import { groupBy, sum } from '../base/collections.ts'
import { hoursAllowed } from '../domain/schedule/rules.ts'
import { numberer } from '../domain/schedule/numberer.ts'
import { DAY_S } from '../domain/schedule/run-times.ts'
import type { DayPattern } from '../domain/schedule/year-runs.ts'
import type { Controller, Site } from '../model/site.ts'
import { fromEpochDay, monthOf } from '../units/date.ts'
import type { EpochDay } from '../units/date.ts'
import type { NightPlan, SchedulePlan, WaterPlan } from './plan.ts'
import { ruleFacts } from './rule-facts.ts'
import { controllersOn } from './supply-peaks.ts'
import { allowedHours } from './water-hours.ts'

type Group = Pick<NightPlan, 'of' | 'id' | 'zonesAtOnce'> & { readonly controllers: readonly Controller[] }

/** Stations, by id, that open on one night, and the hours that the rules leave it. */
interface Night {
  readonly month: number
  readonly allowedS: number
  readonly stations: readonly string[]
}

/** Seconds allowed on the night that begins on a day; undefined where nothing limits it. */
type AllowedOn = (day: EpochDay) => number | undefined

/**
 * For each supply that lets only so many zones run, and for each other controller, which runs one zone at a time: the night of each month
 * that asks for most, by the legal clock. A night belongs to the month in which it begins.
 */
export function planNights(
  site: Site,
  schedules: ReadonlyMap<string, SchedulePlan>,
  water: ReadonlyMap<string, WaterPlan>
): NightPlan[] {
  const nightFromS = nightFrom(site)
  if (nightFromS === undefined) return []
  const allowedOn = allowance(site)
  return groupsOf(site).flatMap(group => {
    const nights = nightsOf(group.controllers, schedules, nightFromS, allowedOn)
    return [...groupBy(nights, one => one.month)].map(([month, all]) => fullest(group, month, all, water))
  })
}

/** When a night begins, by all rules as if each held all year. Undefined where none limits the hours, or they leave none. */
function nightFrom({ wateringRules }: Site): number | undefined {
  const always = wateringRules.map(({ windows, barred }) => ({ windows, ...(barred ? { barred } : {}) }))
  const hours = allowedHours(hoursAllowed(always, {})(0))
  return isAbsent(hours) ? undefined : hours.nightFrom * 60
}

function allowance(site: Site): AllowedOn {
  const hoursOn = hoursAllowed(site.wateringRules, ruleFacts(site))
  const known = new Map<ReturnType<typeof hoursOn>, number | undefined>()
  return day => {
    const windows = hoursOn(day)
    if (!known.has(windows)) {
      const hours = allowedHours(windows)
      known.set(windows, isAbsent(hours) ? undefined : hours.allowedS)
    }
    return known.get(windows)
  }
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
  controllers: readonly Controller[],
  schedules: ReadonlyMap<string, SchedulePlan>,
  nightFromS: number,
  allowedOn: AllowedOn
): readonly Night[] {
  const nights = new Map<EpochDay, (readonly string[])[]>()
  for (const { id } of controllers) {
    const known = new Map<DayPattern, ReturnType<typeof openedByNight>>()
    for (const { day, pattern } of schedules.get(id)?.legal.days ?? []) {
      const opened = known.get(pattern) ?? openedByNight(id, pattern, nightFromS)
      known.set(pattern, opened)
      for (const [offset, stations] of opened) {
        const night = nights.get(day + offset)
        if (night) night.push(stations)
        else nights.set(day + offset, [stations])
      }
    }
  }
  const together = joiner()
  return [...nights]
    .sort(([a], [b]) => a - b)
    .flatMap(([day, lists]) => {
      const allowedS = allowedOn(day)
      if (allowedS === undefined) return []
      return [{ month: monthOf(fromEpochDay(day)), allowedS, stations: together(lists) }]
    })
}

/** Lists as one, without doubles; the same lists give the same one. */
function joiner(): (lists: readonly (readonly string[])[]) => readonly string[] {
  const idOf = numberer<readonly string[]>()
  const known = new Map<string, readonly string[]>()
  return lists => {
    const key = lists.map(idOf).join()
    const joined = known.get(key) ?? [...new Set(lists.flat())]
    known.set(key, joined)
    return joined
  }
}

/** Ids of the stations that a pattern opens, by the night in which they open: -1 is the one that began the day before. */
function openedByNight(id: string, pattern: DayPattern, nightFromS: number): ReadonlyMap<number, readonly string[]> {
  const opened = new Map<number, Set<string>>()
  for (const { station, startS } of pattern) {
    const offset = Math.floor((startS - nightFromS) / DAY_S)
    const stations = opened.get(offset) ?? new Set<string>()
    opened.set(offset, stations)
    stations.add(`${id}/${station}`)
  }
  return new Map([...opened].map(([offset, stations]) => [offset, [...stations]]))
}

function fullest(
  { controllers, ...group }: Group,
  month: number,
  nights: readonly Night[],
  water: ReadonlyMap<string, WaterPlan>
): NightPlan {
  const needOf = (id: string) => {
    const need = water.get(id)?.months[month - 1]?.needS
    return need !== undefined && isPresent(need) ? need : undefined
  }
  const idOf = numberer<readonly string[]>()
  const kinds = new Map(nights.map(night => [`${night.allowedS} ${idOf(night.stations)}`, night]))
  const asked = [...kinds.values()].map(({ stations, allowedS }) => {
    const own = controllers.map(({ id }) =>
      sum(stations.filter(one => one.startsWith(`${id}/`)).map(one => needOf(one) ?? 0))
    )
    // A controller runs one zone at a time, however many the supply allows.
    return { stations, allowedS, needS: Math.max(sum(own) / group.zonesAtOnce, ...own) }
  })
  const most = asked.reduce((best, one) => (one.needS - one.allowedS > best.needS - best.allowedS ? one : best))
  return {
    ...group,
    month,
    needS: most.needS,
    allowedS: most.allowedS,
    nights: nights.length,
    stations: most.stations.filter(id => needOf(id) !== undefined),
    notKnown: most.stations.filter(id => needOf(id) === undefined)
  }
}
