import { flowStretches } from '../domain/supply/peak-flow.ts'
import { atMost } from '../domain/within.ts'
import type { Site, Supply } from '../model/site.ts'
import type { SchedulePlan } from './plan.ts'
import { openingsByNight } from './supply-peaks.ts'

export interface FlowBeside {
  readonly flowM3s: number
  /** Ids of all that run then, the station itself among them. */
  readonly stations: readonly string[]
}

/** For each station that waters: the most that is drawn from the supply while it is open, in the year of the schedules. */
export function flowsBeside(
  site: Site,
  supply: Supply,
  schedules: ReadonlyMap<string, SchedulePlan>
): ReadonlyMap<string, FlowBeside> {
  const most = new Map<string, FlowBeside>()
  for (const openings of openingsByNight(site, supply, schedules))
    for (const { names, flowM3s } of flowStretches(openings))
      for (const name of names) {
        const known = most.get(name)
        if (!known || !atMost(flowM3s, known.flowM3s)) most.set(name, { flowM3s, stations: names })
      }
  return most
}
