import type { Controller, Station } from '../model/site.ts'
import { masterValveId } from '../plan/wires.ts'
import type { Words } from '../words/words.ts'

/** The master valves of these controllers in the shape of stations, "H1/MV", for the lists that name all valves. */
export function masterValvesOf(controllers: readonly Controller[], { binder }: Words): Station[] {
  return controllers.flatMap(controller => {
    const { masterValve, id, at } = controller
    if (!masterValve) return []
    const { wire, ...valve } = masterValve
    return [
      {
        at,
        id: masterValveId(controller),
        controller: id,
        number: 0,
        zone: binder.controllers.master,
        waters: binder.boxes.allOf(id),
        valves: [valve],
        wire,
        splices: [],
        readings: []
      }
    ]
  })
}

/** Those that a technician can work on from this box. */
export function masterValvesAt(box: string, controllers: readonly Controller[], words: Words): Station[] {
  return masterValvesOf(
    controllers.filter(one => one.box === box || one.masterValve?.box === box),
    words
  )
}
