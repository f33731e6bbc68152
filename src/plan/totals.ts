import { absent, isPresent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { sum } from '../base/collections.ts'
import { yearTotalWorked } from '../domain/schedule/year-total.ts'
import type { DayPattern } from '../domain/schedule/year-runs.ts'
import type { Site, Station } from '../model/site.ts'
import { MONTHS } from '../units/date.ts'
import type { SchedulePlan, StationMonths, Working } from './plan.ts'
import { stationFlowM3s } from './station-flow.ts'
import { controllersOn } from './supply-peaks.ts'
import type { TotalRow } from './totals-plan.ts'

export interface TotalsPlanned {
  readonly totals: readonly TotalRow[]
  readonly workings: readonly Working[]
}

/** What one program gives one station in the year: every total is a sum of these. */
interface Part {
  readonly controller: string
  readonly program: string
  readonly station: string
  readonly minutes: readonly number[]
  readonly openings: number
  readonly flowM3s: number | undefined
  readonly areaM2: number | undefined
}

type Row = Pick<TotalRow, 'of' | 'id'>

/** Totals by station, program, controller, supply and site, in this order; only of what waters at all. */
export function planTotals(site: Site, schedules: ReadonlyMap<string, SchedulePlan>): TotalsPlanned {
  const parts = [...schedules.values()].flatMap(schedule => partsOf(site, schedule))
  const group = (of: TotalRow['of'], idOf: (part: Part) => string | undefined): TotalRow[] => {
    const groups = new Map<string, Part[]>()
    for (const part of parts) {
      const id = idOf(part)
      if (id !== undefined) groups.set(id, [...(groups.get(id) ?? []), part])
    }
    return [...groups].map(([id, own]) => total({ of, id }, own))
  }
  const supplies = site.supplies.flatMap(supply =>
    controllersOn(site, supply).map(({ id }) => [id, supply.id] as const)
  )
  const supplyOf = new Map(supplies)
  const stations = group('station', part => part.station)
  return {
    totals: [
      ...stations,
      ...group('program', part => `${part.controller} ${part.program}`),
      ...group('controller', part => part.controller),
      ...group('supply', part => supplyOf.get(part.controller)),
      ...group('site', () => site.id)
    ],
    workings: stations.map(row => workingOf(row, site))
  }
}

function partsOf(site: Site, schedule: SchedulePlan): Part[] {
  const openings = openingsOf(schedule)
  return schedule.months.map(row => {
    const id = `${schedule.controller}/${row.station}`
    const station = site.stations.find(one => one.id === id)
    return {
      controller: schedule.controller,
      program: row.program,
      station: id,
      minutes: row.minutes,
      openings: openings.get(key(row)) ?? 0,
      flowM3s: station && flowOf(station),
      areaM2: station?.area?.si
    }
  })
}

const key = ({ program, station }: Pick<StationMonths, 'program' | 'station'>): string => `${program} ${station}`

function flowOf(station: Station): number | undefined {
  const flow = stationFlowM3s(station)
  return isPresent(flow) ? flow : undefined
}

/** Openings in the year by program and station: each kind of day once, times its days. */
function openingsOf({ days }: SchedulePlan): ReadonlyMap<string, number> {
  const times = new Map<DayPattern, number>()
  for (const { pattern } of days) times.set(pattern, (times.get(pattern) ?? 0) + 1)
  const openings = new Map<string, number>()
  for (const [pattern, count] of times)
    for (const run of pattern) openings.set(key(run), (openings.get(key(run)) ?? 0) + count)
  return openings
}

function total(row: Row, parts: readonly Part[]): TotalRow {
  const minutes = MONTHS.map((_, month) => sum(parts.map(part => part.minutes[month] ?? 0)))
  const watering = parts.filter(part => sum(part.minutes) > 0)
  const known = watering.filter(part => part.flowM3s !== undefined)
  const volume = MONTHS.map((_, month) => sum(known.map(part => (part.minutes[month] ?? 0) * 60 * (part.flowM3s ?? 0))))
  const none = watering.length > 0 && known.length === 0
  return {
    ...row,
    minutes,
    minutesInYear: sum(minutes),
    volumeM3: none ? absent('no flow is stated') : volume,
    volumeInYearM3: none ? absent('no flow is stated') : sum(volume),
    flowNotStated: [...new Set(watering.filter(one => one.flowM3s === undefined).map(one => one.station))],
    depthM: depthOf(watering, sum(volume)),
    openings: sum(parts.map(part => part.openings))
  }
}

/** All water over all areas; a station that two programs water counts its area once. */
function depthOf(watering: readonly Part[], volumeM3: number): Maybe<number> {
  const areas = new Map(watering.map(one => [one.station, one.areaM2]))
  if (areas.size === 0) return absent('it does not water')
  if (watering.some(one => one.flowM3s === undefined)) return absent('the flow of a station is not stated')
  const areaM2 = sum([...areas.values()].map(area => area ?? Number.NEGATIVE_INFINITY))
  return areaM2 > 0 ? volumeM3 / areaM2 : absent('the area of a station is not stated')
}

function workingOf(row: TotalRow, site: Site): Working {
  const station = site.stations.find(one => one.id === row.id)
  const of = { minutes: row.minutes, flowM3s: station && flowOf(station), areaM2: station?.area?.si }
  return { calculation: 'year-total', subject: row.id, steps: yearTotalWorked(of, site.units).steps }
}
