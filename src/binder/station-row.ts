import type { StationRow } from './pages.ts'
import type { Value } from './blocks.ts'
import type { PageContext } from './context.ts'
import { figure, measured, notSupplied, orNotSupplied, plate, computed } from './values.ts'
import { wireText } from './sections/wires.ts'
import { isPresent } from '../base/absent.ts'
import { sortedBy } from '../base/collections.ts'
import { flowValue } from './flow-value.ts'
import { show, showStated } from '../units/show.ts'
import type { Station } from '../model/site.ts'

/** What is wired to one station, and what a meter should read on it. */
export function stationRow(station: Station, { site, plan, words }: PageContext): StationRow {
  const wire = plan.wires.get(station.id)
  const [valve] = station.valves
  const colours = [...new Set(station.wire.map(segment => segment.colour).filter(Boolean))].join('; ')
  return {
    station: station.id,
    zone: station.zone,
    waters: station.waters ?? words.binder.notSupplied,
    wire: [wireText(station), wire && show(wire.lengthM, 'run', site.units)].filter(Boolean).join(', '),
    wireColour: orNotSupplied(colours, words),
    valveSize: orNotSupplied(valve?.size, words),
    valveBox: [...new Set(station.valves.map(one => one.box).filter(Boolean))].join(', '),
    normalFlow: flowValue(station, site.units, words),
    coil: orNotSupplied(
      [valve?.coil, station.valves.length > 1 ? `× ${station.valves.length}` : ''].filter(Boolean).join(' '),
      words
    ),
    loopReading: wire ? figure(wire.expectedOhm, 'resistance', site.units, words, 'wire-loop') : notSupplied(words),
    coilReading:
      wire && isPresent(wire.coilOhm)
        ? station.valves.length > 1
          ? computed(show(wire.coilOhm, 'resistance', site.units), 'coil-voltage')
          : plate(show(wire.coilOhm, 'resistance', site.units))
        : notSupplied(words),
    baseline: baseline(station, words)
  }
}

/** The first reading on file: what the meter said when the system was new. */
function baseline(station: Station, words: PageContext['words']): Value {
  const first = sortedBy(
    station.readings.filter(one => one.loop ?? one.coil),
    one => one.on
  )[0]
  if (!first) return notSupplied(words)
  const amount = first.loop ?? first.coil
  return amount ? measured(words.boxPage.baseline(showStated(amount), first.on)) : notSupplied(words)
}
