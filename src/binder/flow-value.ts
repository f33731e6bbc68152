import type { Value } from './blocks.ts'
import { computed, notSupplied, stated, statedQuantity } from './values.ts'
import { isAbsent } from '../base/absent.ts'
import { stationFlowM3s } from '../plan/station-flow.ts'
import { show } from '../units/show.ts'
import type { UnitSystem } from '../units/show.ts'
import type { Station } from '../model/site.ts'
import type { Words } from '../words/words.ts'

/** Flow of a station: as it was written where one figure states it, computed where it was added up or multiplied. */
export function flowValue(station: Station, units: UnitSystem, words: Words): Value {
  const [valve] = station.valves
  if (station.valves.length === 1 && valve?.normalFlow) return statedQuantity(valve.normalFlow, words)
  const flow = stationFlowM3s(station)
  if (isAbsent(flow)) return notSupplied(words)
  return station.devices?.flow ? stated(show(flow, 'flow', units)) : computed(show(flow, 'flow', units), 'supply-peak')
}
