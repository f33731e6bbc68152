import { flowStretches } from '../domain/supply/peak-flow.ts'
import type { FlowStretch, Opening } from '../domain/supply/peak-flow.ts'
import { closingS, DAY_S, openingS } from '../domain/schedule/run-times.ts'
import { runsOf } from '../domain/schedule/year-runs.ts'
import { atMost } from '../domain/within.ts'
import type { Controller, Site, Supply } from '../model/site.ts'
import { fromEpochDay } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { isPresent } from '../base/absent.ts'
import type { SchedulePlan } from './plan.ts'
import { stationFlowM3s } from './station-flow.ts'
import { controllersOn, oneAtATime } from './supply-peaks.ts'

/** What may run together on a supply once its clocks have drifted, although by the programs nothing does. */
export interface DriftPlan {
  readonly supply: string
  /** Farthest that each clock may be off before it is set right, by controller id, seconds. */
  readonly driftS: ReadonlyMap<string, number>
  /** What is passed then. */
  readonly over: 'limit' | 'zones'
  readonly stations: readonly string[]
  readonly flowM3s: number
  readonly on: IsoDate
}

/** Two settings a year, in spring and in autumn, where nothing else is written. Rule of the project. */
const MONTHS_BETWEEN = 6
const DAYS_IN_MONTH = 365 / 12

/** By supply id: only where several clocks feed on it, one of them drifts, and its programs fit by themselves. */
export function planDrifts(site: Site, schedules: ReadonlyMap<string, SchedulePlan>): ReadonlyMap<string, DriftPlan> {
  const drifts = new Map<string, DriftPlan>()
  for (const supply of site.supplies) {
    const controllers = controllersOn(site, supply)
    const driftS = new Map(controllers.map(one => [one.id, driftOf(one)]))
    if (controllers.length < 2 || Math.max(...driftS.values()) === 0) continue
    const plain = firstOver(
      supply,
      openings(site, controllers, schedules, () => 0)
    )
    const drifted = firstOver(
      supply,
      openings(site, controllers, schedules, id => driftS.get(id) ?? 0)
    )
    if (plain || !drifted) continue
    const { over, stretch } = drifted
    const { names, flowM3s, fromS } = stretch
    const on = fromEpochDay(Math.floor(fromS / DAY_S))
    drifts.set(supply.id, { supply: supply.id, driftS, over, stations: names, flowM3s, on })
  }
  return drifts
}

function driftOf({ clock }: Controller): number {
  const { drift, set } = clock ?? {}
  if (!drift) return 0
  return drift.si * (set ? set.months + set.days / DAYS_IN_MONTH : MONTHS_BETWEEN)
}

/** A clock moves all runs of its controller alike, so that at any moment at most the largest of those within its drift runs. */
function openings(
  site: Site,
  controllers: readonly Controller[],
  schedules: ReadonlyMap<string, SchedulePlan>,
  driftS: (controller: string) => number
): readonly Opening[] {
  const all: Opening[] = []
  for (const { id } of controllers) {
    const own: Opening[] = []
    const flows = new Map(
      site.stations.filter(one => one.controller === id).map(one => [one.number, stationFlowM3s(one)])
    )
    for (const run of runsOf(schedules.get(id)?.legal.days ?? [])) {
      const flow = flows.get(run.station)
      const flowM3s = flow !== undefined && isPresent(flow) ? flow : 0
      const name = `${id}/${run.station}`
      own.push({ name, fromS: openingS(run) - driftS(id), toS: closingS(run) + driftS(id), flowM3s })
    }
    for (const one of oneAtATime(own)) all.push(one)
  }
  return all
}

function firstOver(
  { limit, zonesAtOnce }: Supply,
  all: readonly Opening[]
): { readonly over: DriftPlan['over']; readonly stretch: FlowStretch } | undefined {
  for (const stretch of flowStretches(all)) {
    if (limit && !atMost(stretch.flowM3s, limit.si)) return { over: 'limit', stretch }
    if (zonesAtOnce !== undefined && stretch.names.length > zonesAtOnce) return { over: 'zones', stretch }
  }
  return undefined
}
