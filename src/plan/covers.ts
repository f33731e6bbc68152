import { absent } from '../base/absent.ts'
import { groupBy } from '../base/collections.ts'
import { IRRIGATION_COLUMN, coverWords, leastCover } from '../domain/burial/cover-depth.ts'
import { coverLocationOf } from '../domain/burial/cover-location.ts'
import { COVER_COLUMN_5_MAX_V } from '../reference/nec-300-5.ts'
import type { CoverColumn } from '../reference/nec-300-5.ts'
import type { Site, Station, WireSegment } from '../model/site.ts'
import { quantity } from '../units/quantity.ts'
import type { CoverPlan, Working } from './plan.ts'
import { lengthUnit } from './wire-facts.ts'

export interface CoversPlanned {
  /** One for each stretch of wire, in the order of the site file. */
  readonly covers: readonly CoverPlan[]
  readonly workings: readonly Working[]
}

interface CoverPlanned {
  readonly plan: CoverPlan
  /** The row and column of the table, in words. */
  readonly step: string
}

/** Least cover for every stretch, by what lies above it; a stretch of which nothing is said counts as open ground. */
export function planCovers(site: Site): CoversPlanned {
  const planned = site.stations.flatMap(station =>
    station.wire.map((segment, index) => planCover(site, station, segment, index))
  )
  // A working for each station: those that are worked alike are printed as one.
  const workings = [...groupBy(planned, one => one.step)].flatMap(([step, same]) =>
    [...new Set(same.map(({ plan }) => plan.station))].map(subject => ({
      calculation: 'cover-depth',
      subject,
      steps: [step]
    }))
  )
  return { covers: planned.map(({ plan }) => plan), workings }
}

function planCover(site: Site, station: Station, segment: WireSegment, index: number): CoverPlanned {
  const location = coverLocationOf(segment.under)
  const column = columnOf(site, station)
  const least = leastCover(location, column, false)
  // The table prints inches and millimeters of its own; a cover is held against the figure in its own system.
  const inches = segment.cover ? lengthUnit(segment.cover) === 'ft' : site.units === 'us'
  const plan = {
    station: station.id,
    segment: index,
    coverM: segment.cover?.si ?? absent('no cover is stated'),
    leastM: inches ? quantity(least.inches, 'in', 'length').si : quantity(least.mm, 'mm', 'length').si,
    location
  }
  return { plan, step: coverWords(location, column, least) }
}

function columnOf(site: Site, station: Station): CoverColumn {
  const pulseVolt = site.controllers.find(one => one.id === station.controller)?.sheet?.pulseVolts?.si ?? 0
  return pulseVolt > COVER_COLUMN_5_MAX_V ? 'direct burial' : IRRIGATION_COLUMN
}
