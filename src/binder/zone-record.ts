import { isAbsent } from '../base/absent.ts'
import { uniformity as distribution } from '../domain/water/uniformity.ts'
import { roundedText, showStated } from '../units/show.ts'
import type { Station } from '../model/site.ts'
import type { Block, Value } from './blocks.ts'
import type { PageContext } from './context.ts'
import { measured, notSupplied, orNotSupplied, stated, statedQuantity } from './values.ts'

/** What stands in each zone: plants, exposure, slope, uniformity, devices with nozzle and spacing, readings at the valve. */
export function zoneRecord(context: PageContext): Block {
  const { site, words } = context
  const w = words.handover.zones
  return {
    kind: 'table',
    wide: true,
    caption: w.title,
    columns: w.columns.map(label => ({ label })),
    rows: site.stations.map(station => row(station, context))
  }
}

function row(station: Station, { site, words }: PageContext): Value[] {
  const w = words.handover.zones
  const { plants, devices, valves } = station
  const [valve] = valves
  const flow = [...site.visits]
    .sort((a, b) => (a.on < b.on ? 1 : -1))
    .flatMap(visit => visit.readings.filter(one => one.station === station.id && one.flow))
    .at(0)?.flow
  return [
    stated(station.id, true),
    orNotSupplied(plants?.kind, words),
    stated(plants?.microclimate === undefined ? w.average : w.exposure(roundedText(plants.microclimate, 2))),
    orNotSupplied(station.slope, words),
    uniformity(station, words),
    orNotSupplied([devices?.kind, devices?.model].filter(Boolean).join(', '), words),
    orNotSupplied(devices?.nozzle, words),
    statedQuantity(devices?.spacing, words),
    statedQuantity(valve?.normalPressure, words),
    flow ? measured(showStated(flow)) : notSupplied(words),
    orNotSupplied(valve?.model, words)
  ]
}

function uniformity({ uniformity: stating, efficiency, catchCans }: Station, words: PageContext['words']): Value {
  if (stating) return stated(showStated(stating))
  if (efficiency) return stated(showStated(efficiency))
  if (!catchCans) return notSupplied(words)
  const name = words.closeout.tests.kinds['catch cans']
  const found = distribution(catchCans.catches.map(one => one.si))
  if (isAbsent(found)) return measured(name)
  return { ...measured(`${roundedText(100 * found.lowQuarter, 0)}\u00a0%`), note: name }
}
