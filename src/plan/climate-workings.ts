import { isAbsent } from '../base/absent.ts'
import { sortedBy } from '../base/collections.ts'
import type { Calculation, CalculationInputs } from '../domain/calculation.ts'
import { etoHargreaves } from '../domain/climate/eto-hargreaves.ts'
import { etoPenmanMonteith } from '../domain/climate/eto-penman-monteith.ts'
import { etoZoneCard } from '../domain/climate/eto-zone.ts'
import { monthFromDaysCard } from '../domain/climate/month-from-days.ts'
import { effectiveRainCard } from '../domain/water/effective-rain-card.ts'
import { MONTHS, monthOf } from '../units/date.ts'
import type { Month } from '../units/date.ts'
import { dayFromWeatherM, dayInputs, hasFullWeather } from './climate-days.ts'
import type { RecordPlace } from './climate-days.ts'
import { temperatureInputs, weatherInputs } from './climate-months.ts'
import type { ClimateFacts } from './climate-months.ts'
import type { ClimatePlan } from './climate-plan.ts'
import type { Working } from './plan.ts'

/** How the climate came about, each way by its card: for the month that has most of it, as the others go the same way. */
export function climateWorkings(facts: ClimateFacts, plan: ClimatePlan, place: RecordPlace | undefined): Working[] {
  return [...etWorkings(facts, plan, place), ...rainWorkings(facts, plan)]
}

function etWorkings(facts: ClimateFacts, plan: ClimatePlan, place: RecordPlace | undefined): Working[] {
  return plan.ways.flatMap(way => {
    const index = greatest(plan.months.map(one => (one.way === way && !isAbsent(one.etM) ? one.etM : undefined)))
    if (index === undefined) return []
    const month = MONTHS[index] ?? 'Jan'
    switch (way) {
      case 'by-hand':
        return []
      case 'zone-table':
        return worked(etoZoneCard, `zone ${plan.zone}`, { zone: plan.zone })
      case 'temperatures':
        return worked(etoHargreaves, month, temperatureInputs(facts, index))
      case 'weather':
        return worked(etoPenmanMonteith, month, weatherInputs(facts, index))
      case 'daily-weather':
      case 'daily-temperatures':
        return [...dayWorking(facts, index, place, way), ...monthWorking(facts, index, month, way)]
    }
  })
}

/** The day of the month that has most. */
function dayWorking(
  { climate, site }: ClimateFacts,
  index: number,
  place: RecordPlace | undefined,
  way: 'daily-weather' | 'daily-temperatures'
): Working[] {
  const own = (climate.dailyWeather?.days ?? []).filter(day => monthOf(day.on) === index + 1)
  if (!place) return []
  if (way === 'daily-weather') {
    const full = own.filter(hasFullWeather)
    const [day] = sortedBy(full, one => -(dayFromWeatherM(one, place) ?? 0))
    return day ? worked(etoPenmanMonteith, day.on, dayInputs(day, place)) : []
  }
  const warm = own.filter(one => one.highC !== undefined && one.lowC !== undefined)
  const [day] = sortedBy(warm, one => -(one.highC ?? 0))
  const latitude = site.location?.latitude
  return day ? worked(etoHargreaves, day.on, { latitude, date: day.on, max: day.highC, min: day.lowC }) : []
}

function monthWorking(
  { record, site }: ClimateFacts,
  index: number,
  month: Month,
  way: 'daily-weather' | 'daily-temperatures'
): Working[] {
  const days = record?.[index]?.[way === 'daily-weather' ? 'weather' : 'temperatures']
  if (!days) return []
  const inputs = { total: days.totalM, days: days.days, month, units: site.units }
  return worked(monthFromDaysCard, `reference ET, ${month}`, inputs)
}

/** For the month with most rain; a method that goes by zone is shown with the zone. */
function rainWorkings({ climate, record, site }: ClimateFacts, plan: ClimatePlan): Working[] {
  const index = greatest(plan.months.map(({ rainM }) => (isAbsent(rainM) ? undefined : rainM)))
  if (index === undefined) return []
  const month = MONTHS[index] ?? 'Jan'
  const { rainM, effectiveRainM } = plan.months[index] ?? {}
  const days = climate.rain?.[month] ? undefined : record?.[index]?.rain
  const summed = days
    ? worked(monthFromDaysCard, `rain, ${month}`, { total: days.totalM, days: days.days, month, units: site.units })
    : []
  if (plan.underGlass || isAbsent(plan.rainMethod) || plan.rainMethod === 'none') return summed
  if (plan.rainMethod === 'per-event') return [...summed, ...eventWorkings({ climate, record, site }, index)]
  if (isAbsent(effectiveRainM)) return summed
  return [...summed, ...worked(effectiveRainCard, month, { method: plan.rainMethod, rain: rainM, units: site.units })]
}

/** The heaviest day of the month as one rain, and what all of its days come to. */
function eventWorkings({ climate, record, site }: ClimateFacts, index: number): Working[] {
  const month = MONTHS[index] ?? 'Jan'
  const events = record?.[index]?.rainByEvent
  const own = (climate.dailyWeather?.days ?? []).filter(day => monthOf(day.on) === index + 1)
  const [heaviest] = sortedBy(own, one => -(one.rainM ?? 0))
  if (!events || !heaviest) return []
  const one = { method: 'per-event', rain: heaviest.rainM ?? 0, units: site.units }
  return [
    ...worked(effectiveRainCard, heaviest.on, one),
    ...worked(monthFromDaysCard, `rain that counts, ${month}`, {
      total: events.totalM,
      days: events.days,
      month,
      units: site.units
    })
  ]
}

function greatest(values: readonly (number | undefined)[]): number | undefined {
  const most = Math.max(...values.map(value => value ?? -1))
  return most > 0 ? values.indexOf(most) : undefined
}

export function worked(card: Calculation, subject: string, inputs: CalculationInputs | { absent: true }): Working[] {
  if (isAbsent(inputs)) return []
  const result = card.run(inputs)
  return isAbsent(result) ? [] : [{ calculation: card.name, subject, steps: result.steps }]
}
