import { isPresent } from '../base/absent.ts'
import { flowStretches } from '../domain/supply/peak-flow.ts'
import type { FlowStretch, Opening } from '../domain/supply/peak-flow.ts'
import { stretchStep } from '../domain/supply/supply-peak.ts'
import { dayGroups } from '../domain/schedule/day-groups.ts'
import type { DayGroup } from '../domain/schedule/day-groups.ts'
import { DAY_S } from '../domain/schedule/run-times.ts'
import type { YearRuns } from '../domain/schedule/year-runs.ts'
import { atMost } from '../domain/within.ts'
import type { Controller, Site, Supply } from '../model/site.ts'
import { fromEpochDay } from '../units/date.ts'
import type { PeakPlan, SchedulePlan, Working } from './plan.ts'
import { stationFlowM3s } from './station-flow.ts'

export interface PeaksPlanned {
  /** By supply id; none for a supply from which nothing is drawn as programmed. */
  readonly peaks: Map<string, PeakPlan>
  readonly workings: readonly Working[]
}

/** The most that is drawn from each supply at once in the year of the schedules, by the legal clock. */
export function planPeaks(site: Site, schedules: ReadonlyMap<string, SchedulePlan>): PeaksPlanned {
  const peaks = new Map<string, PeakPlan>()
  const workings: Working[] = []
  for (const supply of site.supplies) {
    const drawers = drawersOn(site, supply, schedules)
    const swept = sweep(drawers, supply.limit?.si)
    if (!swept) continue
    const { peak, daysOver, firstOver } = swept
    peaks.set(supply.id, planOf(supply, peak, daysOver, firstOver, withoutFlow(drawers)))
    const flows = new Map(drawers.flatMap(one => [...one.flows.values()].map(({ name, flowM3s }) => [name, flowM3s])))
    const flowOf = (id: string) => flows.get(id) ?? 0
    workings.push({ calculation: 'supply-peak', subject: supply.id, steps: [stretchStep(peak, flowOf, site.units)] })
  }
  return { peaks, workings }
}

/** A controller draws from the supply that it names; one that names none draws from the site's only supply. */
export function controllersOn(site: Site, supply: Supply): readonly Controller[] {
  return site.controllers.filter(
    one => (one.supply ?? (site.supplies.length === 1 ? supply.id : undefined)) === supply.id
  )
}

/** A controller with what it draws from a supply. */
interface Drawer {
  readonly id: string
  readonly days: YearRuns
  /** Of its stations whose flow is stated, by number. */
  readonly flows: ReadonlyMap<number, { readonly name: string; readonly flowM3s: number }>
}

function drawersOn(site: Site, supply: Supply, schedules: ReadonlyMap<string, SchedulePlan>): Drawer[] {
  return controllersOn(site, supply).map(({ id }) => {
    const flows = new Map<number, { name: string; flowM3s: number }>()
    for (const station of site.stations.filter(one => one.controller === id)) {
      const flow = stationFlowM3s(station)
      if (isPresent(flow)) flows.set(station.number, { name: `${id}/${station.number}`, flowM3s: flow })
    }
    return { id, days: schedules.get(id)?.legal.days ?? [], flows }
  })
}

/** Ids of stations that water and whose flow is not stated. */
function withoutFlow(drawers: readonly Drawer[]): readonly string[] {
  return drawers.flatMap(({ id, days, flows }) => {
    const patterns = [...new Set(days.map(({ pattern }) => pattern))]
    const watering = new Set(patterns.flatMap(pattern => pattern.map(({ station }) => station)))
    return [...watering].filter(station => !flows.has(station)).map(station => `${id}/${station}`)
  })
}

/** Seconds count from midnight of the group's first day. */
function openingsIn({ patterns }: DayGroup, drawers: readonly Drawer[]): Opening[] {
  return drawers.flatMap(({ flows }, index) => {
    const own: Opening[] = []
    for (const [offset, row] of patterns.entries())
      for (const { station, startS, durationS } of row[index] ?? []) {
        const fromS = offset * DAY_S + startS
        const flow = flows.get(station)
        if (flow) own.push({ ...flow, fromS, toS: fromS + durationS })
      }
    return [...oneAtATime(own)]
  })
}

/**
 * A controller opens one valve at a time. Where its start times overlap nobody knows what it does, and that has a finding of its own; here
 * the larger of the two flows counts.
 */
export function* oneAtATime(openings: readonly Opening[]): Generator<Opening> {
  const flows = new Map(openings.map(one => [one.name, one.flowM3s]))
  for (const { fromS, toS, names } of flowStretches(openings)) {
    const name = names.reduce((most, one) => ((flows.get(one) ?? 0) > (flows.get(most) ?? 0) ? one : most))
    yield { name, fromS, toS, flowM3s: flows.get(name) ?? 0 }
  }
}

/** The openings of each kind of night, once; seconds count from midnight of its first day. */
export function openingsByNight(
  site: Site,
  supply: Supply,
  schedules: ReadonlyMap<string, SchedulePlan>
): readonly (readonly Opening[])[] {
  const drawers = drawersOn(site, supply, schedules)
  const nights = new Map<string, readonly Opening[]>()
  for (const group of dayGroups(drawers.map(({ days }) => days)))
    if (!nights.has(group.key)) nights.set(group.key, openingsIn(group, drawers))
  return [...nights.values()]
}

interface Swept {
  readonly peak: FlowStretch
  readonly daysOver: number
  readonly firstOver?: number
}

interface SweptGroup {
  readonly peak: FlowStretch
  /** Days from the first of the group. */
  readonly over: readonly number[]
}

/** One pass over each kind of night: the greatest stretch, and the days on which the limit is passed. */
function sweep(drawers: readonly Drawer[], limitM3s: number | undefined): Swept | undefined {
  const known = new Map<string, SweptGroup | undefined>()
  let peak: FlowStretch | undefined
  const over = new Set<number>()
  for (const group of dayGroups(drawers.map(({ days }) => days))) {
    const { key, firstDay } = group
    if (!known.has(key)) known.set(key, sweepGroup(openingsIn(group, drawers), limitM3s))
    const swept = known.get(key)
    if (!swept) continue
    if (!peak || !atMost(swept.peak.flowM3s, peak.flowM3s)) peak = onDay(swept.peak, firstDay)
    for (const day of swept.over) over.add(firstDay + day)
  }
  const [firstOver] = over
  return peak && { peak, daysOver: over.size, ...(firstOver === undefined ? {} : { firstOver }) }
}

function sweepGroup(openings: readonly Opening[], limitM3s: number | undefined): SweptGroup | undefined {
  let peak: FlowStretch | undefined
  const over = new Set<number>()
  for (const stretch of flowStretches(openings)) {
    if (!peak || !atMost(stretch.flowM3s, peak.flowM3s)) peak = stretch
    if (limitM3s !== undefined && !atMost(stretch.flowM3s, limitM3s)) over.add(Math.floor(stretch.fromS / DAY_S))
  }
  return peak && { peak, over: [...over] }
}

function onDay(stretch: FlowStretch, day: number): FlowStretch {
  return { ...stretch, fromS: day * DAY_S + stretch.fromS, toS: day * DAY_S + stretch.toS }
}

function planOf(
  supply: Supply,
  { fromS, toS, flowM3s, names }: FlowStretch,
  daysOver: number,
  firstOver: number | undefined,
  unknown: readonly string[]
): PeakPlan {
  const day = Math.floor(fromS / DAY_S)
  return {
    supply: supply.id,
    flowM3s,
    on: fromEpochDay(day),
    fromMinute: (fromS - day * DAY_S) / 60,
    toMinute: (toS - day * DAY_S) / 60,
    stations: names,
    daysOver,
    ...(firstOver === undefined ? {} : { firstOver: fromEpochDay(firstOver) }),
    flowNotStated: unknown
  }
}
