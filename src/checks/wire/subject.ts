import type { Controller, Reading, Recorded, Site, Station, Valve, WireSegment } from '../../model/site.ts'
import { masterValveId } from '../../plan/wires.ts'

/** A pair of wires in service with what hangs on it: a station's, or that of a master valve. */
export interface WiredRun {
  /** Its key among the wires of the plan. */
  readonly id: string
  readonly subject: string
  /** As a message names it. */
  readonly name: string
  readonly record: Recorded
  readonly controller: string
  readonly valves: readonly Valve[]
  readonly wire: readonly WireSegment[]
  /** None for a master valve. */
  readonly readings: readonly Reading[]
}

/** How a message names a station: by what the writer called the zone, with the output it hangs on. */
export function stationName(station: Station): string {
  return station.zone === station.id ? `Station ${station.id}` : `${station.zone} (station ${station.id})`
}

/** Controllers that work, or will: none of a site that is out of service or removed. */
export function controllersInService(site: Site): readonly Controller[] {
  if (site.status === 'out-of-service' || site.status === 'removed') return []
  return site.controllers.filter(one => one.outOfService === undefined)
}

export function stationsInService(site: Site): readonly Station[] {
  const working = new Set(controllersInService(site).map(one => one.id))
  return site.stations.filter(station => station.outOfService === undefined && working.has(station.controller))
}

/** In the order of the site file: the stations, then the master valves. */
export function runsInService(site: Site): readonly WiredRun[] {
  const stations = stationsInService(site).map<WiredRun>(station => ({
    id: station.id,
    subject: station.zone,
    name: stationName(station),
    record: station,
    controller: station.controller,
    valves: station.valves,
    wire: station.wire,
    readings: station.readings
  }))
  return [...stations, ...controllersInService(site).flatMap(masterRun)]
}

function masterRun(controller: Controller): WiredRun[] {
  const { masterValve, id } = controller
  if (!masterValve) return []
  const planId = masterValveId(controller)
  return [
    {
      id: planId,
      subject: planId,
      name: `Master valve of ${id}`,
      record: masterValve,
      controller: id,
      valves: [masterValve],
      wire: masterValve.wire,
      readings: []
    }
  ]
}
