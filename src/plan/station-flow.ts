import { absent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { sum } from '../base/collections.ts'
import type { Station } from '../model/site.ts'

/**
 * Flow of a station when it is open, m³/s: the normal flow of its valves together, else the flow of its devices, else the flow of
 * one device times their number.
 */
export function stationFlowM3s({ valves, devices }: Station): Maybe<number> {
  const normal = valves.map(valve => valve.normalFlow?.si)
  if (normal.length > 0 && !normal.includes(undefined)) return sum(normal.map(flow => flow ?? 0))
  if (devices?.flow) return devices.flow.si
  if (devices?.each && devices.count !== undefined) return devices.each.si * devices.count
  return absent('no flow is stated')
}
