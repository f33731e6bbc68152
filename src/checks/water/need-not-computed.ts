import { isAbsent } from '../../base/absent.ts'
import type { Absent } from '../../base/absent.ts'
import type { Climate, Site, Station } from '../../model/site.ts'
import type { ClimatePlan, WeatherLack } from '../../plan/climate-plan.ts'
import type { Plan } from '../../plan/plan.ts'
import type { NeedPlan } from '../../plan/water-plan.ts'
import { MONTHS } from '../../units/date.ts'
import type { Report, SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { capital, listed } from '../file/say.ts'
import { stationName, stationsInService } from '../wire/subject.ts'

export const needNotComputed: SiteCheck = {
  card: {
    code: 'water/need-not-computed',
    severity: 'warning',
    looksAt:
      'Facts of the climate, the rain, the plants or a test with cans that contradict each other, or of which one half is missing, so that a need cannot be computed from them. What is simply not supplied is listed in the binder.',
    why: 'Somebody wrote these facts so that the run times would be judged by them, and they are not.',
    sources: ['fao-56', 'wucols-guide', 'project-rule'],
    fix: 'Add what is missing, or take out what contradicts.',
    worked: {
      example: `climate: { mean-high: 7 8 10 13 16 19 21 20 17 13 10 8 °C, mean-low: 2 2 3 4 7 10 12 12 10 7 4 2 °C }
location: { time-zone: Europe/London }`,
      instead: `climate: { mean-high: 7 8 10 13 16 19 21 20 17 13 10 8 °C, mean-low: 2 2 3 4 7 10 12 12 10 7 4 2 °C }`
    }
  },
  run: ({ site, plan }, report) => {
    if (site.climate) judgeClimate(site, site.climate, plan, report)
    for (const station of stationsInService(site)) {
      const need = plan.water.get(station.id)?.need
      if (need) judgeStation(station, need, plan.climate, report)
    }
  }
}

const LACKS: Readonly<Record<WeatherLack, string>> = {
  humidity: 'dew point or humidity',
  wind: 'wind',
  sunshine: 'sunshine or solar radiation',
  elevation: 'the elevation of the site'
}

function judgeClimate(site: Site, climate: Climate, plan: Plan, report: Report): void {
  const { months, lacks } = plan.climate
  const watered = wateredMonths(site, plan)
  const without = watered.flatMap(index => whyNot(months[index]?.etM, index))
  const [first] = without
  if (first && isMeantToBeComputed(climate))
    report({
      subject: site.id,
      at: at(climate),
      message: `Reference ET is not computed for ${namesOf(without)}: ${first.why.reason}.`,
      fix: 'Add the fact that is missing, or state "reference-et:".'
    })
  if (lacks.length > 0)
    report({
      subject: site.id,
      at: at(climate),
      severity: 'note',
      message: `${lackText(lacks)} not stated, so reference ET comes from temperatures alone and may be 20\u00a0% off.`,
      fix: `Add ${listed(
        lacks.map(one => LACKS[one]),
        'and'
      )}; then all of the weather counts.`
    })
  judgeRain(site, climate, plan.climate, watered, report)
}

/** "Wind is", "Wind and sunshine or solar radiation are". */
function lackText(lacks: readonly WeatherLack[]): string {
  const names = lacks.map(one => LACKS[one])
  return `${capital(listed(names, 'and'))} ${lacks.length === 1 ? 'is' : 'are'}`
}

function judgeRain(
  site: Site,
  climate: Climate,
  { rainMethod, underGlass, months }: ClimatePlan,
  watered: readonly number[],
  report: Report
): void {
  if (underGlass) return
  const place = { subject: site.id, at: at(climate, 'effective-rain') }
  if (isAbsent(rainMethod)) {
    const fix = 'Write "effective-rain: none", or scs-monthly where the rain of each month is stated.'
    report({ ...place, message: `${capital(rainMethod.reason)}.`, fix })
    return
  }
  const without = watered.flatMap(index => {
    const { rainM, effectiveRainM } = months[index] ?? {}
    return whyNot(rainMethod === 'tr-21' ? rainM : effectiveRainM, index)
  })
  const [first] = without
  if (!first) return
  report({
    ...place,
    message: `Rain is counted by ${rainMethod}, but for ${namesOf(without)} ${first.why.reason}.`,
    fix: 'State "rain:" month by month, name a daily record with rain, or write "effective-rain: none".'
  })
}

function judgeStation(station: Station, need: NeedPlan, climate: ClimatePlan, report: Report): void {
  const { factor, delivery } = need
  const { plants, catchCans } = station
  const partsOfFactor = plants?.speciesFactor ?? plants?.density ?? plants?.microclimate
  if (plants && partsOfFactor !== undefined && isAbsent(factor))
    report({
      subject: station.zone,
      at: at(plants),
      message: `${stationName(station)}: ${factor.reason}.`,
      fix: 'Write "factor:" alone, or "species-factor:" with density and microclimate.'
    })
  if (catchCans && !station.efficiency && isAbsent(delivery))
    report({
      subject: station.zone,
      at: at(catchCans, 'catches'),
      message: `${stationName(station)}: the test with cans tells nothing: ${delivery.reason}.`,
      fix: 'Write what each can caught, or take the test out.'
    })
  const storage = storageLacks(need, climate)
  if (storage)
    report({
      subject: station.zone,
      at: at(station, 'soil'),
      message: `${stationName(station)}: rain is counted by what the soil stores, and ${storage.reason}.`,
      fix: 'State texture and root depth, or the available water, under "soil:".'
    })
}

/** Why the soil storage method has no storage, in a month whose rain is known. */
function storageLacks({ months }: NeedPlan, climate: ClimatePlan): Absent | undefined {
  if (climate.rainMethod !== 'tr-21' || climate.underGlass) return undefined
  const known = months.filter((one, index) => !isAbsent(one.useM) && !isAbsent(climate.months[index]?.rainM))
  return known.map(one => one.rainM).find(isAbsent)
}

/** Months, 0 to 11, in which anything of the site waters. */
function wateredMonths(site: Site, plan: Plan): number[] {
  const stations = stationsInService(site).map(one => plan.water.get(one.id)?.months ?? [])
  return MONTHS.flatMap((_, index) => (stations.some(months => (months[index]?.events ?? 0) > 0) ? [index] : []))
}

/** Figures by hand may be left out month by month; what is to be computed may not. */
function isMeantToBeComputed({ etoZone, meanHigh, meanLow, dailyWeather }: Climate): boolean {
  return [etoZone, meanHigh, meanLow, dailyWeather].some(fact => fact !== undefined)
}

interface Without {
  readonly index: number
  readonly why: Absent
}

function whyNot(value: unknown, index: number): Without[] {
  return isAbsent(value) ? [{ index, why: value }] : []
}

function namesOf(without: readonly Without[]): string {
  return listed(
    without.map(({ index }) => MONTHS[index] ?? ''),
    'and'
  )
}
