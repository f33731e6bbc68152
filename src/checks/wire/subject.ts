import type { Site, Station } from '../../model/site.ts'

/** How a message names a station: by what the writer called the zone, with the output it hangs on. */
export function stationName(station: Station): string {
  return station.zone === station.id ? `Station ${station.id}` : `${station.zone} (station ${station.id})`
}

export function stationsInService(site: Site): readonly Station[] {
  const away = new Set(site.controllers.filter(one => one.outOfService !== undefined).map(one => one.id))
  return site.stations.filter(station => station.outOfService === undefined && !away.has(station.controller))
}
