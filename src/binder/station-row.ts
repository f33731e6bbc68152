import type { StationRow } from './pages.ts'
import type { Value } from './blocks.ts'
import type { PageContext } from './context.ts'
import { figure, measured, notSupplied, orNotSupplied, plate, computed } from './values.ts'
import { wireText } from './sections/wires.ts'
import { isAbsent } from '../base/absent.ts'
import { sortedBy } from '../base/collections.ts'
import { flowValue } from './flow-value.ts'
import { show, showNumber, showStated } from '../units/show.ts'
import type { UnitSystem } from '../units/show.ts'
import type { Station } from '../model/site.ts'
import type { WirePlan } from '../plan/plan.ts'
import type { Words } from '../words/words.ts'

/** What is wired to one station, and what a meter should read on it. */
export function stationRow(station: Station, context: PageContext): StationRow {
  const { site, plan, words } = context
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
      [
        valve?.coil && words.boxPage.coilKinds[valve.coil],
        station.valves.length > 1 ? `× ${station.valves.length}` : ''
      ]
        .filter(Boolean)
        .join(' '),
      words
    ),
    loopReading: wire ? loopReading(wire, context) : notSupplied(words),
    coilReading: coilReading(station, wire, context),
    baseline: baseline(station, words)
  }
}

function loopReading({ expectedOhm, closing }: WirePlan, { site, words }: PageContext): Value {
  if (!closing || isAbsent(expectedOhm) || isAbsent(closing.expectedOhm))
    return figure(expectedOhm, 'resistance', site.units, words, 'wire-loop')
  return computed(halves(expectedOhm, closing.expectedOhm, site.units, words), 'wire-loop')
}

function coilReading(station: Station, wire: WirePlan | undefined, { site, words }: PageContext): Value {
  if (!wire || isAbsent(wire.coilOhm)) return notSupplied(words)
  const { coilOhm, closing } = wire
  if (closing && !isAbsent(closing.coilOhm)) return plate(halves(coilOhm, closing.coilOhm, site.units, words))
  const text = show(coilOhm, 'resistance', site.units)
  return station.valves.length > 1 ? computed(text, 'coil-voltage') : plate(text)
}

/** Of three leads: common to open, and common to close. */
function halves(open: number, close: number, units: UnitSystem, { wiring }: Words): string {
  return wiring.halves(showNumber(open, 'resistance', units), show(close, 'resistance', units))
}

/** The first reading on file: what the meter said when the system was new. */
function baseline(station: Station, words: PageContext['words']): Value {
  const first = sortedBy(
    station.readings.filter(one => one.loop ?? one.coil),
    one => one.on
  )[0]
  if (!first) return notSupplied(words)
  const amount = first.loop ?? first.coil
  if (!amount) return notSupplied(words)
  const closing = first.loop ? first.closingLoop : first.closingCoil
  const text = closing ? words.wiring.halves(showStated(amount), showStated(closing)) : showStated(amount)
  return measured(words.boxPage.baseline(text, first.on))
}
