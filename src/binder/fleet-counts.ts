import { sum } from '../base/collections.ts'
import type { Site } from '../model/site.ts'

export interface FleetCounts {
  readonly sites: number
  readonly boxes: number
  readonly controllers: number
  readonly stations: number
}

/** How much was looked at. */
export function fleetCounts(sites: readonly Site[]): FleetCounts {
  return {
    sites: sites.length,
    boxes: sum(sites.map(one => one.boxes.length)),
    controllers: sum(sites.map(one => one.controllers.length)),
    stations: sum(sites.map(one => one.stations.length))
  }
}

/** The counts of single sites added up. */
export function totalCounts(counts: readonly Omit<FleetCounts, 'sites'>[]): FleetCounts {
  return {
    sites: counts.length,
    boxes: sum(counts.map(one => one.boxes)),
    controllers: sum(counts.map(one => one.controllers)),
    stations: sum(counts.map(one => one.stations))
  }
}
