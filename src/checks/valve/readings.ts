import { READING_SPREAD, copperFactor } from '../../domain/wire/expected-reading.ts'
import { sortedBy } from '../../base/collections.ts'
import type { At } from '../../diagnostics/finding.ts'
import { atMost } from '../../domain/within.ts'
import type { OhmOf, Reading, Site, VisitReading } from '../../model/site.ts'
import { OHM_KEYS } from '../../plan/trends.ts'
import type { IsoDate } from '../../units/date.ts'
import type { Quantity } from '../../units/quantity.ts'
import { showStated } from '../../units/show.ts'
import { at } from '../at.ts'
import type { WiredRun } from '../wire/subject.ts'

/**
 * A reading this near to what is expected is as expected: meter leads, soil temperature (0.4 % per °C, where it was not noted) and the
 * spread of coils come to less, a bad splice to more. Rule of this project, for want of a published one.
 */
export const READS_THE_SAME_WITHIN = READING_SPREAD

export interface OhmReading {
  readonly on: IsoDate
  readonly ohm: Quantity<'resistance'>
  readonly at: At
  readonly temperature?: Quantity<'temperature'>
}

/** Readings of a coil or of a whole loop up to a day, oldest first: those of the station's own list and those of visits. */
export function readingsOf(
  site: Site,
  { id, readings }: Pick<WiredRun, 'id' | 'readings'>,
  what: OhmOf,
  on: IsoDate
): readonly OhmReading[] {
  const own = readings.flatMap(one => (one[what] ? [{ on: one.on, ...readingAt(one, what, one[what]) }] : []))
  const visited = site.visits.flatMap(visit =>
    visit.readings.flatMap(one =>
      one.station === id && one[what] ? [{ on: visit.on, ...readingAt(one, what, one[what]) }] : []
    )
  )
  return sortedBy([...own, ...visited], one => one.on).filter(one => one.on <= on)
}

function readingAt(record: Reading | VisitReading, what: OhmOf, ohm: Quantity<'resistance'>): Omit<OhmReading, 'on'> {
  const { temperature } = record
  return { ohm, at: at(record, OHM_KEYS[what]), ...(temperature ? { temperature } : {}) }
}

/** What copper of so many ohms at 20 °C reads at the temperature of a reading; the same where none was noted. */
export function onTheDay(ohm: number, { temperature }: Pick<OhmReading, 'temperature'>): number {
  return temperature ? ohm * copperFactor(temperature.si) : ohm
}

/** "at 5 °C", where it was noted. */
export const dayText = ({ temperature }: OhmReading): string => (temperature ? ` at ${showStated(temperature)}` : '')

/** How far a reading is off what was expected, as a fraction; undefined where it is near enough. */
export function offBy(ohm: number, expectedOhm: number): number | undefined {
  if (!(expectedOhm > 0)) return undefined
  const off = ohm / expectedOhm - 1
  return atMost(Math.abs(off), READS_THE_SAME_WITHIN) ? undefined : off
}

/** "35 % more". */
export const offText = (off: number): string => `${Math.round(Math.abs(off) * 100)}\u00a0% ${off > 0 ? 'more' : 'less'}`
