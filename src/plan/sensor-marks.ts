import { sum } from '../base/collections.ts'
import type { Sensor, Site } from '../model/site.ts'
import type { SensorMark, TotalRow } from './totals-plan.ts'

/** Kinds that hold watering back where nobody says otherwise; the others measure. Common practice, no source. */
const HOLDS_BACK = /rain|freeze|frost|soil|moist|wind/iu

/** What each sensor of the site could keep from running, as it is wired. */
export function planSensorMarks(site: Site, totals: readonly TotalRow[]): readonly SensorMark[] {
  return site.sensors.map(sensor => {
    const stations = stationsOf(site, sensor)
    const stops = sensor.acts === undefined ? HOLDS_BACK.test(sensor.kind) : sensor.acts !== 'only reports'
    const own = stops ? totals.filter(row => row.of === 'station' && stations.includes(row.id)) : []
    return {
      sensor: sensor.id,
      kind: sensor.kind,
      stops: stops && stations.length > 0,
      byItsKind: sensor.acts === undefined,
      stations,
      openings: sum(own.map(row => row.openings)),
      minutes: sum(own.map(row => row.minutesInYear))
    }
  })
}

/** Ids of the stations that it is wired to: those named, or all of its controller. */
function stationsOf(site: Site, { controller, stations, acts }: Sensor): readonly string[] {
  if (stations && stations.length > 0 && acts !== 'stops all') return stations
  const controllers = new Set([
    ...(controller === undefined ? [] : [controller]),
    ...(stations ?? []).flatMap(id => site.stations.filter(one => one.id === id).map(one => one.controller))
  ])
  return site.stations.filter(one => controllers.has(one.controller)).map(one => one.id)
}
