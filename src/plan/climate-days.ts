import { isAbsent, isPresent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { groupBy, sum } from '../base/collections.ts'
import type { CalculationInputs } from '../domain/calculation.ts'
import { dayOfYear } from '../domain/climate/day-of-year.ts'
import { hargreavesMm } from '../domain/climate/eto-hargreaves.ts'
import { LEAST_DAYS, monthFromDays } from '../domain/climate/month-from-days.ts'
import { weatherEto } from '../domain/climate/penman-monteith.ts'
import { solarDay } from '../domain/climate/solar-geometry.ts'
import { weatherOf } from '../domain/climate/weather-inputs.ts'
import { effectiveRainM } from '../domain/water/effective-rain.ts'
import type { DailyWeather, WeatherDay } from '../model/site.ts'
import { monthOf } from '../units/date.ts'

/** Where the record was made. */
export interface RecordPlace {
  readonly latitudeDeg: number
  readonly elevationM: number | undefined
  readonly windHeightM: number | undefined
}

/** A month of a daily record: what its days come to, each kind with the days that have it. Depths in m. */
export interface RecordMonth {
  /** From full weather. */
  readonly weather: DaySum
  /** From temperatures. */
  readonly temperatures: DaySum
  readonly rain: DaySum
  /** Rain that counts by single rains, each day taken as one. */
  readonly rainByEvent: DaySum
}

export interface DaySum {
  readonly totalM: number
  readonly days: number
}

/** Twelve months of a record, January first, all its years together. */
export function recordMonths({ days }: DailyWeather, place: RecordPlace | undefined): RecordMonth[] {
  const byMonth = groupBy(days, day => monthOf(day.on))
  return Array.from({ length: 12 }, (_, index) => {
    const own = byMonth.get(index + 1) ?? []
    return {
      weather: sumOf(own.map(day => (place ? dayFromWeatherM(day, place) : undefined))),
      temperatures: sumOf(own.map(day => (place ? dayFromTemperaturesM(day, place) : undefined))),
      rain: sumOf(own.map(day => day.rainM)),
      rainByEvent: sumOf(own.map(({ rainM }) => (rainM === undefined ? undefined : eventM(rainM))))
    }
  })
}

/** The whole month, or why not. Month 1 to 12. */
export function monthOfRecord({ totalM, days }: DaySum, month: number): Maybe<number> {
  return monthFromDays(totalM, days, month)
}

/** Enough of its days have full weather; where some have and others not, only those that have are taken. */
export const isFullWeather = ({ weather }: RecordMonth): boolean => weather.days >= LEAST_DAYS

/** What the card of weather takes, of one day. */
export function dayInputs(day: WeatherDay, { latitudeDeg, elevationM, windHeightM }: RecordPlace): CalculationInputs {
  return {
    latitude: latitudeDeg,
    date: day.on,
    elevation: elevationM,
    max: day.highC,
    min: day.lowC,
    'dew-point': day.dewPointC,
    'humidity-max': day.humidityHigh,
    'humidity-min': day.humidityHigh === undefined ? undefined : day.humidityLow,
    'humidity-mean': day.humidity,
    'solar-radiation': day.solarWPerM2,
    sunshine: day.sunshineS,
    wind: day.windMPerS,
    'wind-height': windHeightM
  }
}

/** Full weather: temperatures, damp of the air, wind, and sun. */
export function hasFullWeather(day: WeatherDay): boolean {
  const damp = day.dewPointC ?? day.humidity ?? day.humidityHigh
  const sun = day.solarWPerM2 ?? day.sunshineS
  return [day.highC, day.lowC, day.windMPerS, damp, sun].every(fact => fact !== undefined)
}

/** Reference evapotranspiration of a day in m; undefined where a fact for it is missing. */
export function dayFromWeatherM(day: WeatherDay, place: RecordPlace): number | undefined {
  if (!hasFullWeather(day) || place.elevationM === undefined) return undefined
  const weather = weatherOf(dayInputs(day, place))
  if (isAbsent(weather)) return undefined
  const when = { latitudeDeg: place.latitudeDeg, dayOfYear: dayOfYear(day.on), words: day.on }
  const found = weatherEto(weather, when)
  return isAbsent(found) ? undefined : found.value.etoMm / 1000
}

function dayFromTemperaturesM({ on, highC, lowC }: WeatherDay, { latitudeDeg }: RecordPlace): number | undefined {
  if (highC === undefined || lowC === undefined) return undefined
  const mm = hargreavesMm({ maxC: highC, minC: lowC }, solarDay(latitudeDeg, dayOfYear(on)).extraterrestrialMj)
  return isPresent(mm) ? mm / 1000 : undefined
}

function eventM(rainM: number): number | undefined {
  const counted = effectiveRainM('per-event', { rainM })
  return isAbsent(counted) ? undefined : counted
}

function sumOf(values: readonly (number | undefined)[]): DaySum {
  const there = values.filter(value => value !== undefined)
  return { totalM: sum(there), days: there.length }
}
