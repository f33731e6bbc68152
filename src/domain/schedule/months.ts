import { groupBy } from '../../base/collections.ts'
import { isInDates, isInSeason } from './active.ts'
import { daysOfYear } from './calendar-days.ts'
import { percentIn } from './controller.ts'
import { daysByRule } from './days-in-month.ts'
import { monthlyMinutes } from './monthly-minutes.ts'
import { isSuspended } from './suspended.ts'
import type { CalendarDay } from './calendar-days.ts'
import type { ScheduledController, ScheduledProgram, StationEntry, WateringSeason } from './controller.ts'

/** What one station gets from one program, twelve entries each, January first. */
export interface StationYear {
  readonly station: number
  readonly program: string
  /** Fraction. */
  readonly percent: readonly number[]
  readonly days: readonly number[]
  /** Minutes of open valve on a watering day, all starts and cycles together. */
  readonly minutesPerDay: readonly number[]
  readonly minutes: readonly number[]
  readonly volumeM3?: readonly number[]
}

export interface StationYearSettings {
  readonly season?: WateringSeason
  /** Flow of a station in m³/s; undefined where none is known, and then there is no volume. */
  readonly flowM3s?: (station: number) => number | undefined
}

const MONTH_NUMBERS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const

/** Month by month for every station of every program, in the order written. */
export function stationMonths(
  controller: ScheduledController,
  year: number,
  { season, flowM3s }: StationYearSettings
): StationYear[] {
  return controller.programs.flatMap(program => {
    const active = activeByMonth(program, year, season)
    const days = MONTH_NUMBERS.map(month => daysByRule(program.days, active.get(month) ?? []))
    return program.stations.map(entry => stationYear(controller, program, entry, days, flowM3s?.(entry.number)))
  })
}

/** The days on which a program may start, by month. */
function activeByMonth(
  program: ScheduledProgram,
  year: number,
  season: WateringSeason | undefined
): ReadonlyMap<number, readonly CalendarDay[]> {
  const active = daysOfYear(year).filter(
    day => isInSeason(day, season) && isInDates(day, program) && !isSuspended(day, program.suspensions)
  )
  return groupBy(active, ({ month }) => month)
}

function stationYear(
  { stepS }: ScheduledController,
  program: ScheduledProgram,
  { number, runTime }: StationEntry,
  days: readonly number[],
  flowM3s: number | undefined
): StationYear {
  const starts = program.starts.length
  const percent = MONTH_NUMBERS.map(month => percentIn(program, month))
  const months = percent.map((fraction, index) =>
    monthlyMinutes({ runTime, percent: fraction, stepS, starts, days: days[index] ?? 0, flowM3s })
  )
  const row = {
    station: number,
    program: program.id,
    percent,
    days,
    minutesPerDay: months.map(({ minutesPerDay }) => minutesPerDay),
    minutes: months.map(({ minutes }) => minutes)
  }
  return flowM3s === undefined ? row : { ...row, volumeM3: months.map(({ volumeM3 }) => volumeM3 ?? 0) }
}
