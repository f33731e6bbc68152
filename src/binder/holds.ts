import type { Box, Site, Station } from '../model/site.ts'
import type { Words } from '../words/words.ts'

/** What a box holds, in words: "controller K1", "master valve of K1", "valve Z3". */
export function holdsOf(site: Site, box: Box, words: Words): string[] {
  const w = words.binder.boxes
  return [
    ...site.controllers.filter(one => one.box === box.id).map(one => w.controller(one.id)),
    ...site.controllers.filter(one => one.masterValve?.box === box.id).map(one => w.masterValve(one.id)),
    ...site.stations.filter(one => one.valves.some(valve => valve.box === box.id)).map(one => w.valve(one.zone))
  ]
}

/** The stations a technician can work on from this box: those whose controller or whose valve is in it. */
export function stationsAt(site: Site, box: Box): readonly Station[] {
  const controllers = new Set(site.controllers.filter(one => one.box === box.id).map(one => one.id))
  return site.stations.filter(one => controllers.has(one.controller) || one.valves.some(valve => valve.box === box.id))
}
