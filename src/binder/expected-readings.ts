import type { PageContext } from './context.ts'
import { sortedBy } from '../base/collections.ts'
import { isAbsent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import type { Worked } from '../domain/calculation.ts'
import { expectedReading } from '../domain/wire/expected-reading.ts'
import type { ExpectedReading } from '../domain/wire/expected-reading.ts'
import type { OhmOf, Station } from '../model/site.ts'
import type { IsoDate } from '../units/date.ts'
import type { Working } from '../plan/plan.ts'

export interface StationReadings {
  readonly station: Station
  readonly loop: ReadingHere
  readonly coil: ReadingHere
  /** Common to close, of a coil with three leads; `loop` and `coil` are then common to open. */
  readonly closing?: { readonly loop: ReadingHere; readonly coil: ReadingHere }
}

export interface ReadingHere {
  readonly expected: Maybe<Worked<ExpectedReading>>
  /** Day of the closeout reading that the band is around. */
  readonly closeout?: IsoDate
}

/** What a meter should show at both ends of each station's pair, with the band. */
export function stationReadings({ plan }: PageContext, stations: readonly Station[]): StationReadings[] {
  return stations.flatMap(station => {
    const wire = plan.wires.get(station.id)
    if (!wire) return []
    const { coilOhm, loopOhm, closing } = wire
    return [
      {
        station,
        loop: readingHere(station, 'loop', { coilOhm, wireOhm: loopOhm }, plan.on),
        coil: readingHere(station, 'coil', { coilOhm, wireOhm: 0 }, plan.on),
        ...(closing ? { closing: closingHere(station, closing.coilOhm, loopOhm, plan.on) } : {})
      }
    ]
  })
}

function closingHere(
  station: Station,
  coilOhm: Maybe<number>,
  wireOhm: Maybe<number>,
  on: IsoDate
): { readonly loop: ReadingHere; readonly coil: ReadingHere } {
  return {
    loop: readingHere(station, 'closingLoop', { coilOhm, wireOhm }, on),
    coil: readingHere(station, 'closingCoil', { coilOhm, wireOhm: 0 }, on)
  }
}

function readingHere(
  station: Station,
  what: OhmOf,
  facts: { readonly coilOhm: Maybe<number>; readonly wireOhm: Maybe<number> },
  on: IsoDate
): ReadingHere {
  const dated = station.readings.filter(one => one[what] !== undefined && one.on <= on)
  const first = sortedBy(dated, one => one.on)[0]
  const baselineOhm = first?.[what]?.si
  const expected = expectedReading({ ...facts, ...(baselineOhm === undefined ? {} : { baselineOhm }) })
  const around = !isAbsent(expected) && expected.value.heldAgainst === 'closeout reading'
  return { expected, ...(around && first ? { closeout: first.on } : {}) }
}

/** The arithmetic of the bands, for the appendix: that of the controller's end, which holds the coil too. */
export function readingWorkings(context: PageContext): Working[] {
  return stationReadings(context, context.site.stations).flatMap(({ station, loop, closing }) => [
    ...workingOf(station.id, loop),
    ...(closing ? workingOf(`${station.id}, ${context.words.units.toClose}`, closing.loop) : [])
  ])
}

function workingOf(subject: string, { expected }: ReadingHere): Working[] {
  return isAbsent(expected) ? [] : [{ calculation: 'expected-reading', subject, steps: expected.steps }]
}
