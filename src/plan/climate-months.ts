import { absent, isAbsent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import type { CalculationInputs } from '../domain/calculation.ts'
import { HARGREAVES_UNCERTAINTY, etoHargreaves } from '../domain/climate/eto-hargreaves.ts'
import { etoPenmanMonteith } from '../domain/climate/eto-penman-monteith.ts'
import { zoneEtoM } from '../domain/climate/eto-zone.ts'
import type { Climate, Site } from '../model/site.ts'
import { MONTHS } from '../units/date.ts'
import type { Month } from '../units/date.ts'
import { isFullWeather, monthOfRecord } from './climate-days.ts'
import type { RecordMonth } from './climate-days.ts'
import { ET_WAYS } from './climate-plan.ts'
import type { ClimateMonth, EtWay, WeatherLack } from './climate-plan.ts'

/** What the months are made from. */
export interface ClimateFacts {
  readonly site: Site
  readonly climate: Climate
  readonly record: readonly RecordMonth[] | undefined
}

type Et = Pick<ClimateMonth, 'etM' | 'way' | 'off' | 'days'>

/** Reference evapotranspiration of a month, index 0 to 11, by the first way that has it; else why the first that should have it has not. */
export function etOf(facts: ClimateFacts, index: number): Et {
  let why: Et | undefined
  for (const way of waysOf(facts)) {
    const found = BY_WAY[way](facts, index)
    if (!found) continue
    if (!isAbsent(found.etM)) return { ...found, way }
    why ??= found
  }
  return why ?? { etM: absent('no reference evapotranspiration is stated for the month') }
}

/** Ways for which the site file gives facts for at least one month. */
export function waysOf({ climate, record }: ClimateFacts): EtWay[] {
  const temperatures = climate.meanHigh !== undefined && climate.meanLow !== undefined
  const given: Readonly<Record<EtWay, boolean>> = {
    'by-hand': Object.keys(climate.referenceEt ?? {}).length > 0,
    'daily-weather': record?.some(isFullWeather) ?? false,
    'daily-temperatures': record?.some(one => one.temperatures.days > 0 && !isFullWeather(one)) ?? false,
    weather: temperatures && weatherLacks(climate, undefined).length === 0,
    'zone-table': climate.etoZone !== undefined,
    temperatures
  }
  return ET_WAYS.filter(way => given[way])
}

/** What full weather lacks, of the means of a month or, without one, of the climate as a whole. */
export function weatherLacks(climate: Climate, month: Month | undefined): WeatherLack[] {
  const has = (fact: Readonly<Partial<Record<Month, unknown>>> | undefined) =>
    month === undefined ? fact !== undefined : fact?.[month] !== undefined
  return [
    ...(has(climate.dewPoint) || has(climate.humidity) ? [] : (['humidity'] as const)),
    ...(has(climate.wind) ? [] : (['wind'] as const)),
    ...(has(climate.sunshine) || has(climate.solarRadiation) ? [] : (['sunshine'] as const))
  ]
}

type Way = (facts: ClimateFacts, index: number) => Et | undefined

/** Undefined where the way has no facts for the month. */
const BY_WAY: Readonly<Record<EtWay, Way>> = {
  'by-hand': ({ climate }, index) => {
    const stated = climate.referenceEt?.[monthAt(index)]
    return stated && { etM: stated.si }
  },
  'daily-weather': ({ record }, index) => {
    const month = record?.[index]
    if (!month || !isFullWeather(month)) return undefined
    return { etM: monthOfRecord(month.weather, index + 1), days: month.weather.days }
  },
  'daily-temperatures': ({ record }, index) => {
    const month = record?.[index]
    if (!month || month.temperatures.days === 0) return undefined
    const { days } = month.temperatures
    return { etM: monthOfRecord(month.temperatures, index + 1), days, off: HARGREAVES_UNCERTAINTY }
  },
  weather: (facts, index) => {
    if (weatherLacks(facts.climate, monthAt(index)).length > 0) return undefined
    return { etM: byCard(weatherInputs(facts, index), inputs => etoPenmanMonteith.run(inputs)) }
  },
  'zone-table': ({ climate }, index) => {
    const zone = zoneEtoM(climate.etoZone ?? 0)
    return { etM: isAbsent(zone) ? zone : (zone[index] ?? 0) }
  },
  temperatures: (facts, index) => {
    const inputs = temperatureInputs(facts, index)
    return { etM: byCard(inputs, one => etoHargreaves.run(one)), off: HARGREAVES_UNCERTAINTY }
  }
}

/** What the card of temperatures takes, or what is missing. */
export function temperatureInputs({ site, climate }: ClimateFacts, index: number): Maybe<CalculationInputs> {
  const month = monthAt(index)
  const [max, min] = [climate.meanHigh?.[month]?.si, climate.meanLow?.[month]?.si]
  if (max === undefined || min === undefined) return absent('mean high or mean low is not stated for the month')
  const latitude = site.location?.latitude
  return latitude === undefined ? absent('the latitude of the site is not stated') : { latitude, month, max, min }
}

/** What the card of weather takes, or what is missing. */
export function weatherInputs(facts: ClimateFacts, index: number): Maybe<CalculationInputs> {
  const inputs = temperatureInputs(facts, index)
  if (isAbsent(inputs)) return inputs
  const { climate, site } = facts
  const month = monthAt(index)
  const elevation = site.location?.elevation?.si
  if (elevation === undefined) return absent('the elevation of the site is not stated')
  return {
    ...inputs,
    elevation,
    'dew-point': climate.dewPoint?.[month]?.si,
    'humidity-mean': climate.humidity?.[month]?.si,
    sunshine: climate.sunshine?.[month]?.si,
    'solar-radiation': climate.solarRadiation?.[month]?.si,
    wind: climate.wind?.[month]?.si,
    'wind-height': climate.windHeight?.si
  }
}

function byCard(
  inputs: Maybe<CalculationInputs>,
  run: (inputs: CalculationInputs) => ReturnType<typeof etoHargreaves.run>
): Maybe<number> {
  if (isAbsent(inputs)) return inputs
  const worked = run(inputs)
  return isAbsent(worked) ? worked : Number(worked.value['in-month']) / 1000
}

const monthAt = (index: number): Month => MONTHS[index] ?? 'Jan'
