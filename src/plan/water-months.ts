import { absent, isAbsent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { sum } from '../base/collections.ts'
import { isInDates, isInSeason } from '../domain/schedule/active.ts'
import { daysOfYear } from '../domain/schedule/calendar-days.ts'
import { deliveryOf } from '../domain/water/delivery.ts'
import { effectiveRainM, rainMethodOf } from '../domain/water/effective-rain.ts'
import { netNeedM, runTime } from '../domain/water/run-time.ts'
import type { Controller, Program, Site, Station } from '../model/site.ts'
import { MONTHS, daysInMonth } from '../units/date.ts'
import type { StationMonths, WaterMonth } from './plan.ts'

export interface WaterMonthsOf {
  readonly site: Site
  readonly station: Station
  readonly controller: Controller | undefined
  /** What its programs give it, as planned. */
  readonly rows: readonly StationMonths[]
  readonly rateMPerS: Maybe<number>
  readonly year: number
  /** Step of the controller's run times. */
  readonly stepS: number
}

/** A program's row that waters in a month. */
export interface ActiveRow {
  readonly row: StationMonths
  readonly program: Program
  /** Starts times cycles on a watering day. */
  readonly cycles: number
}

/** Twelve months, January first. */
export function waterMonths(of: WaterMonthsOf): WaterMonth[] {
  return MONTHS.map((_, index) => waterMonth(of, index))
}

function waterMonth(of: WaterMonthsOf, index: number): WaterMonth {
  const active = activeRows(of, index)
  const events = sum(active.map(({ row }) => row.days[index] ?? 0))
  const set = sum(active.map(({ row }) => row.minutes[index] ?? 0)) * 60
  const needM = needOf(of, index, active)
  return { needM, events, setS: events > 0 ? set / events : 0, needS: neededS(of, needM, events, active) }
}

/** Rows that open the valve in a month. */
export function activeRows({ rows, controller, station }: WaterMonthsOf, index: number): ActiveRow[] {
  return rows.flatMap(row => {
    const program = controller?.programs.find(one => one.id === row.program)
    const entry = program?.stations.find(one => one.number === station.number)
    if (!program || !entry || !((row.minutes[index] ?? 0) > 0)) return []
    return [{ row, program, cycles: entry.runTime.cycles * program.starts.length }]
  })
}

/** Reference ET × factor − the rain that counts, for the part of the month that is watered. */
function needOf(of: WaterMonthsOf, index: number, active: readonly ActiveRow[]): Maybe<number> {
  const { site, station } = of
  const eto = site.climate?.referenceEt?.[MONTHS[index] ?? 'Jan']?.si
  const factor = station.plants?.factor
  if (active.length === 0) return absent('it does not water in this month')
  if (eto === undefined) return absent('no reference evapotranspiration is stated for the month')
  if (factor === undefined) return absent('no plant factor is stated')
  const rain = rainOf(site)
  if (isAbsent(rain)) return rain
  return netNeedM(eto, factor, rain) * shareWatered(of, index, active)
}

/** A site file holds no rain, so any way of counting it but none lacks its figures. */
function rainOf({ climate }: Site): Maybe<number> {
  const method = rainMethodOf(climate?.effectiveRain ?? 'none')
  if (isAbsent(method)) return method
  return method === 'none' ? effectiveRainM(method, { rainM: 0 }) : absent('the rain of the month is not stated')
}

/** Part of the days of a month on which one of the programs is in season and within its dates. */
export function shareWatered({ site, year }: WaterMonthsOf, index: number, active: readonly ActiveRow[]): number {
  const month = index + 1
  const days = daysOfYear(year).filter(
    day => day.month === month && isInSeason(day, site.season) && active.some(({ program }) => isWithin(day, program))
  )
  return days.length / daysInMonth(year, month)
}

function isWithin(day: ReturnType<typeof daysOfYear>[number], program: Program): boolean {
  const { days } = program
  return isInDates(day, program) && (days.kind !== 'every-n-days' || day.iso >= days.from)
}

function neededS(of: WaterMonthsOf, needM: Maybe<number>, events: number, active: readonly ActiveRow[]): Maybe<number> {
  const { station, rateMPerS, stepS, site } = of
  if (isAbsent(needM)) return needM
  if (isAbsent(rateMPerS)) return rateMPerS
  const delivery = deliveryOf(station.efficiency?.si, undefined)
  if (isAbsent(delivery)) return delivery
  const cyclesPerEvent = Math.max(...active.map(({ cycles }) => cycles))
  const worked = runTime({ needM, delivery, rateMPerS, events, cyclesPerEvent, stepS }, site.units)
  return isAbsent(worked) ? worked : worked.value.cycleS * cyclesPerEvent
}
