import { isAbsent } from '../base/absent.ts'
import { sortedBy } from '../base/collections.ts'
import { readingChange } from '../domain/wire/reading-trend.ts'
import type { At } from '../diagnostics/finding.ts'
import type { OhmOf, Site, Station } from '../model/site.ts'
import type { IsoDate } from '../units/date.ts'
import type { Quantity } from '../units/quantity.ts'
import type { Working } from './plan.ts'

/** What the meter showed at one end of a station's pair, visit by visit. */
export interface TrendPoint {
  readonly on: IsoDate
  readonly ohm: Quantity<'resistance'>
  readonly temperature?: Quantity<'temperature'>
  readonly by?: string
  /** Only where the temperature is on file. */
  readonly at20Ohm?: number
  /** Fraction against the first reading; left out for the first itself. Both at 20 °C where both temperatures are on file. */
  readonly change?: number
  readonly at: At
}

export interface Trends {
  readonly loop: readonly TrendPoint[]
  readonly coil: readonly TrendPoint[]
  /** The closing half of a coil of three leads; empty where it was never measured. */
  readonly closingLoop: readonly TrendPoint[]
  readonly closingCoil: readonly TrendPoint[]
}

export interface TrendsPlanned {
  /** By station id; only stations that were ever measured. */
  readonly trends: Map<string, Trends>
  readonly workings: readonly Working[]
}

/** Readings of every station up to a day, oldest first, each held against the first. */
export function planTrends(site: Site, on: IsoDate): TrendsPlanned {
  const trends = new Map<string, Trends>()
  const workings: Working[] = []
  for (const station of site.stations) {
    const of = (what: OhmOf) => trendOf(site, station, what, on)
    const [loop, coil, closingLoop, closingCoil] = [of('loop'), of('coil'), of('closingLoop'), of('closingCoil')]
    const all = [loop, coil, closingLoop, closingCoil]
    if (all.every(one => one.points.length === 0)) continue
    trends.set(station.id, {
      loop: loop.points,
      coil: coil.points,
      closingLoop: closingLoop.points,
      closingCoil: closingCoil.points
    })
    workings.push(...all.flatMap(one => one.workings))
  }
  return { trends, workings }
}

/** As the site file writes them. */
export const OHM_KEYS: Readonly<Record<OhmOf, string>> = {
  loop: 'loop',
  coil: 'coil',
  closingLoop: 'closing-loop',
  closingCoil: 'closing-coil'
}

/** As a message names them. */
export const OHM_WORDS: Readonly<Record<OhmOf, string>> = {
  loop: 'loop',
  coil: 'coil',
  closingLoop: 'closing loop',
  closingCoil: 'closing coil'
}

type Bare = Omit<TrendPoint, 'at20Ohm' | 'change'>

function trendOf(
  site: Site,
  station: Station,
  what: OhmOf,
  on: IsoDate
): { readonly points: readonly TrendPoint[]; readonly workings: readonly Working[] } {
  const [first, ...later] = bareReadings(site, station, what).filter(one => one.on <= on)
  if (!first) return { points: [], workings: [] }
  const worked = [first, ...later].map(one => ({ one, change: readingChange(takenOf(one), takenOf(first)) }))
  const points = worked.map(({ one, change }, index): TrendPoint => {
    if (isAbsent(change)) return one
    const { at20Ohm } = change.value
    return {
      ...one,
      ...(at20Ohm === undefined ? {} : { at20Ohm }),
      ...(index === 0 ? {} : { change: change.value.change })
    }
  })
  const last = worked.at(-1)
  const steps = last && worked.length > 1 && !isAbsent(last.change) ? last.change.steps : []
  const subject = `${station.id}, ${OHM_WORDS[what]}, ${last?.one.on}`
  return { points, workings: steps.length > 0 ? [{ calculation: 'reading-trend', subject, steps }] : [] }
}

/** Of the station's own list and of visits, oldest first. */
function bareReadings(site: Site, station: Station, what: OhmOf): readonly Bare[] {
  const own = station.readings.map(one => ({ ...one, place: one.at }))
  const visited = site.visits.flatMap(visit =>
    visit.readings
      .filter(one => one.station === station.id)
      .map(one => ({ ...one, on: visit.on, place: one.at, ...(visit.by === undefined ? {} : { by: visit.by }) }))
  )
  return sortedBy([...own, ...visited], one => one.on).flatMap(one => {
    const ohm = one[what]
    if (ohm === undefined || !(ohm.si > 0)) return []
    return [
      {
        on: one.on,
        ohm,
        at: { file: one.place.file, path: [...one.place.path, OHM_KEYS[what]] },
        ...(one.temperature === undefined ? {} : { temperature: one.temperature }),
        ...(one.by === undefined ? {} : { by: one.by })
      }
    ]
  })
}

const takenOf = ({ ohm, temperature }: Bare) => ({
  ohm: ohm.si,
  ...(temperature === undefined ? {} : { temperatureC: temperature.si })
})
