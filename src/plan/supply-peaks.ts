import { isPresent } from '../base/absent.ts'
import { flowStretches } from '../domain/supply/peak-flow.ts'
import type { FlowStretch, Opening } from '../domain/supply/peak-flow.ts'
import { stretchStep } from '../domain/supply/supply-peak.ts'
import { DAY_S, closingS, openingS } from '../domain/schedule/run-times.ts'
import { atMost } from '../domain/within.ts'
import type { Controller, Site, Station, Supply } from '../model/site.ts'
import { fromEpochDay } from '../units/date.ts'
import { legalRunsOf } from './legal-runs.ts'
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
    const { openings, unknown } = openingsOf(site, supply, schedules)
    const swept = sweep(openings, supply.limit?.si)
    if (!swept) continue
    const { peak, daysOver, firstOver } = swept
    peaks.set(supply.id, planOf(supply, peak, daysOver, firstOver, unknown))
    const flowOf = (id: string) => openings.find(one => one.name === id)?.flowM3s ?? 0
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

function openingsOf(
  site: Site,
  supply: Supply,
  schedules: ReadonlyMap<string, SchedulePlan>
): { readonly openings: readonly Opening[]; readonly unknown: readonly string[] } {
  const openings: Opening[] = []
  const unknown = new Set<string>()
  for (const controller of controllersOn(site, supply)) {
    const own: Opening[] = []
    const stations = new Map<number, Station>(
      site.stations.filter(one => one.controller === controller.id).map(one => [one.number, one])
    )
    for (const run of legalRunsOf(site, controller, schedules.get(controller.id)?.runs ?? []).runs) {
      const station = stations.get(run.station)
      const flow = station && stationFlowM3s(station)
      const name = `${controller.id}/${run.station}`
      if (flow === undefined || !isPresent(flow)) unknown.add(name)
      else own.push({ name, fromS: openingS(run), toS: closingS(run), flowM3s: flow })
    }
    for (const opening of oneAtATime(own)) openings.push(opening)
  }
  return { openings, unknown: [...unknown] }
}

/**
 * A controller opens one valve at a time. Where its start times overlap nobody knows what it does, and that has a finding of its own; here
 * the larger of the two flows counts.
 */
function* oneAtATime(openings: readonly Opening[]): Generator<Opening> {
  const flows = new Map(openings.map(one => [one.name, one.flowM3s]))
  for (const { fromS, toS, names } of flowStretches(openings)) {
    const name = names.reduce((most, one) => ((flows.get(one) ?? 0) > (flows.get(most) ?? 0) ? one : most))
    yield { name, fromS, toS, flowM3s: flows.get(name) ?? 0 }
  }
}

interface Swept {
  readonly peak: FlowStretch
  readonly daysOver: number
  readonly firstOver?: number
}

/** One pass over the year: the greatest stretch, and the days on which the limit is passed. */
function sweep(openings: readonly Opening[], limitM3s: number | undefined): Swept | undefined {
  let peak: FlowStretch | undefined
  const over = new Set<number>()
  for (const stretch of flowStretches(openings)) {
    if (!peak || !atMost(stretch.flowM3s, peak.flowM3s)) peak = stretch
    if (limitM3s !== undefined && !atMost(stretch.flowM3s, limitM3s)) over.add(Math.floor(stretch.fromS / DAY_S))
  }
  const [firstOver] = over
  return peak && { peak, daysOver: over.size, ...(firstOver === undefined ? {} : { firstOver }) }
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
