import { sortedBy } from '../base/collections.ts'
import { rainMethodOf } from '../domain/water/effective-rain.ts'
import type { Climate, DailyWeather, Site } from '../model/site.ts'
import { MONTHS } from '../units/date.ts'
import { recordMonths } from './climate-days.ts'
import type { RecordMonth, RecordPlace } from './climate-days.ts'
import { etOf, waysOf, weatherLacks } from './climate-months.ts'
import type { ClimateFacts } from './climate-months.ts'
import type { ClimateMonth, ClimatePlan, WeatherLack } from './climate-plan.ts'
import { countedRainOf, rainOf } from './climate-rain.ts'
import { climateWorkings } from './climate-workings.ts'
import type { Working } from './plan.ts'

export interface ClimatePlanned {
  readonly climate: ClimatePlan
  readonly workings: readonly Working[]
}

/** Twelve months of reference evapotranspiration and rain, however the site file gives them. */
export function planClimate(site: Site): ClimatePlanned {
  const climate: Climate = site.climate ?? { at: site.at }
  const facts: ClimateFacts = { site, climate, record: recordOf(site, climate) }
  const rainMethod = rainMethodOf(climate.effectiveRain ?? 'none')
  const underGlass = site.place === 'glasshouse'
  const months = MONTHS.map((_, index): ClimateMonth => {
    const rainM = rainOf(facts, index)
    const effectiveRainM = countedRainOf(facts, index, { rainM, method: rainMethod, underGlass })
    return { ...etOf(facts, index), rainM, effectiveRainM }
  })
  const days = sortedBy(climate.dailyWeather?.days ?? [], one => one.on)
  const [first, last] = [days[0], days.at(-1)]
  const plan: ClimatePlan = {
    months,
    ways: waysOf(facts),
    lacks: lacksOf(facts),
    ...(climate.etoZone === undefined ? {} : { zone: climate.etoZone }),
    ...(first && last ? { record: { days: days.length, first: first.on, last: last.on } } : {}),
    rainMethod,
    underGlass
  }
  return { climate: plan, workings: climateWorkings(facts, plan, placeOf(site, climate)) }
}

/** More of the weather is given than temperatures, and not all of it. */
function lacksOf({ climate, site }: ClimateFacts): WeatherLack[] {
  if (climate.dailyWeather) {
    const full = climate.dailyWeather.days.some(({ windMPerS, solarWPerM2 }) => windMPerS ?? solarWPerM2)
    return full && site.location?.elevation === undefined ? ['elevation'] : []
  }
  const { dewPoint, humidity, wind, sunshine, solarRadiation } = climate
  if ([dewPoint, humidity, wind, sunshine, solarRadiation].every(fact => fact === undefined)) return []
  const lacks = weatherLacks(climate, undefined)
  return lacks.length === 0 && site.location?.elevation === undefined ? ['elevation'] : lacks
}

function placeOf({ location }: Site, { windHeight }: Climate): RecordPlace | undefined {
  if (location?.latitude === undefined) return undefined
  return { latitudeDeg: location.latitude, elevationM: location.elevation?.si, windHeightM: windHeight?.si }
}

/** By record and place: plans of one site on several days read the same record. */
const known = new WeakMap<DailyWeather, Map<string, readonly RecordMonth[]>>()

function recordOf(site: Site, climate: Climate): readonly RecordMonth[] | undefined {
  if (!climate.dailyWeather) return undefined
  const place = placeOf(site, climate)
  const key = JSON.stringify(place ?? null)
  const byPlace = known.get(climate.dailyWeather) ?? new Map<string, readonly RecordMonth[]>()
  known.set(climate.dailyWeather, byPlace)
  const months = byPlace.get(key) ?? recordMonths(climate.dailyWeather, place)
  byPlace.set(key, months)
  return months
}
