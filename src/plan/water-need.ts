import { absent, isAbsent, isPresent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { sum } from '../base/collections.ts'
import { isInDates, isInSeason } from '../domain/schedule/active.ts'
import { daysOfYear } from '../domain/schedule/calendar-days.ts'
import type { CalendarDay } from '../domain/schedule/calendar-days.ts'
import { landscapeCoefficient } from '../domain/water/landscape-coefficient.ts'
import { monthlyPercents } from '../domain/water/monthly-percent.ts'
import { mixedNeedM, mixedUseM, phaseFactor, phaseOn } from '../domain/water/phase-need.ts'
import type { PhaseDays, PhaseSpan } from '../domain/water/phase-need.ts'
import { longestIntervalDays } from '../domain/water/soil-reservoir.ts'
import type { Plants, Program, Site, Station } from '../model/site.ts'
import { daysInMonth } from '../units/date.ts'
import type { ClimatePlan } from './climate-plan.ts'
import { zoneRainM } from './climate-rain.ts'
import { stationDelivery } from './water-delivery.ts'
import type { FactorPlan, NeedMonth, NeedPlan } from './water-plan.ts'

export interface NeedFacts {
  readonly site: Site
  readonly station: Station
  readonly climate: ClimatePlan
  readonly year: number
  /** Programs that open the valve in each month, January first. */
  readonly programs: readonly (readonly Program[])[]
  /** What the root zone takes up at once. */
  readonly holdsM: Maybe<number>
}

/** Reference ET × factor of the phase − the rain that counts, over the days of each month that are watered. */
export function planNeed(facts: NeedFacts): NeedPlan {
  const { site, station } = facts
  const factor = factorOf(station.plants)
  const phases = spansOf(site, station)
  const watered = wateredDays(facts)
  const bare = watered.map((days, index) => monthOf(facts, index, { days, phases, factor }))
  const percents = percentsOf(bare)
  const months = bare.map((month, index): NeedMonth => ({ ...month, percent: percents[index] ?? NOT_WATERED }))
  return { factor, delivery: stationDelivery(station), phases, months, yearM: yearOf(months) }
}

const NOT_WATERED = absent('it does not water in this month')

/** One plant factor, or species times density times microclimate. */
export function factorOf(plants: Plants | undefined): Maybe<FactorPlan> {
  const { factor, speciesFactor: species, density, microclimate } = plants ?? {}
  if (factor !== undefined && species !== undefined)
    return absent('a plant factor and a species factor are stated, of which one is due')
  const parts = { density: density ?? 1, microclimate: microclimate ?? 1 }
  if (species !== undefined) {
    const value = landscapeCoefficient(species, parts.density, parts.microclimate)
    return { value, parts: { species, ...parts } }
  }
  if ((density ?? microclimate) !== undefined)
    return absent('density and microclimate go with a species factor; a plant factor has them in it')
  return factor === undefined ? absent('no plant factor is stated') : { value: factor }
}

/** Phases of the station, else of the site. */
export function spansOf(site: Site, station: Station): readonly PhaseSpan[] {
  return (station.phases ?? site.phases ?? []).map(({ name, from, to, factor, percent }) => ({
    name,
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
    ...(factor === undefined ? {} : { factor }),
    ...(percent === undefined ? {} : { percent: percent.si })
  }))
}

/** Days of each month on which one of its programs is in season and within its dates. */
function wateredDays({ site, year, programs }: NeedFacts): CalendarDay[][] {
  const months: CalendarDay[][] = programs.map(() => [])
  for (const day of daysOfYear(year)) {
    const active = programs[day.month - 1] ?? []
    if (active.length === 0 || !isInSeason(day, site.season)) continue
    if (active.some(program => isWithin(day, program))) months[day.month - 1]?.push(day)
  }
  return months
}

function isWithin(day: CalendarDay, program: Program): boolean {
  const { days } = program
  return isInDates(day, program) && (days.kind !== 'every-n-days' || day.iso >= days.from)
}

interface MonthFacts {
  readonly days: readonly CalendarDay[]
  readonly phases: readonly PhaseSpan[]
  readonly factor: Maybe<FactorPlan>
}

type BareMonth = Omit<NeedMonth, 'percent'>

function monthOf(facts: NeedFacts, index: number, { days, phases, factor }: MonthFacts): BareMonth {
  if ((facts.programs[index] ?? []).length === 0) return without([], NOT_WATERED)
  const etoM = facts.climate.months[index]?.etM ?? NOT_WATERED
  if (isAbsent(etoM)) return without([], etoM)
  const parts = partsOf(days, phases, factor)
  if (isAbsent(parts)) return without([], parts)
  const monthDays = daysInMonth(facts.year, index + 1)
  const wholeUseM = wholeUse(etoM, parts)
  const rainM = zoneRainM(facts.climate, index, { useM: wholeUseM, storageM: facts.holdsM })
  const useM = mixedUseM(etoM, parts, monthDays)
  const dailyUseM = wholeUseM / monthDays
  return {
    parts,
    useM,
    rainM,
    needM: isAbsent(rainM) ? rainM : mixedNeedM(etoM, rainM, parts, monthDays),
    intervalDays: isAbsent(facts.holdsM) ? facts.holdsM : longestIntervalDays(facts.holdsM, dailyUseM)
  }
}

/** What the plants would use in the whole month, at the mean of the watered days. */
function wholeUse(etoM: number, parts: readonly PhaseDays[]): number {
  const days = sum(parts.map(one => one.days))
  return days === 0 ? 0 : (etoM * sum(parts.map(one => one.factor * one.days))) / days
}

function without(parts: readonly PhaseDays[], why: ReturnType<typeof absent>): BareMonth {
  return { parts, useM: why, rainM: why, needM: why, intervalDays: why }
}

/** Days of one name and factor together, in the order of their first day. */
function partsOf(
  days: readonly CalendarDay[],
  phases: readonly PhaseSpan[],
  factor: Maybe<FactorPlan>
): Maybe<readonly PhaseDays[]> {
  const own = isAbsent(factor) ? undefined : factor.value
  const parts = new Map<string, PhaseDays>()
  for (const { iso } of days) {
    const phase = phaseOn(iso, phases)
    const value = phaseFactor(phase, own)
    if (value === undefined) return isAbsent(factor) ? factor : absent('no plant factor is stated')
    const key = `${phase.name} ${value}`
    parts.set(key, { name: phase.name, factor: value, days: (parts.get(key)?.days ?? 0) + 1 })
  }
  return [...parts.values()]
}

/** Need of a day, which is what a program's monthly percent follows. */
export function dailyNeedM({ needM, parts }: Pick<NeedMonth, 'needM' | 'parts'>): Maybe<number> {
  const days = sum(parts.map(one => one.days))
  if (isAbsent(needM)) return needM
  return days === 0 ? absent('none of its days is in season') : needM / days
}

/** A month without a need of its own counts as none. Absent where no month needs any. */
function percentsOf(months: readonly BareMonth[]): Maybe<number>[] {
  const daily = months.map(dailyNeedM)
  const percents = monthlyPercents(daily.map(need => (isAbsent(need) ? 0 : need)))
  return daily.map((need, index) => {
    if (isAbsent(need)) return need
    return isAbsent(percents) ? percents : (percents.shares[index] ?? 0)
  })
}

function yearOf(months: readonly NeedMonth[]): Maybe<number> {
  const watered = months.map(one => one.needM).filter(need => need !== NOT_WATERED)
  const unknown = watered.find(isAbsent)
  if (unknown) return unknown
  return watered.length === 0 ? absent('it does not water') : sum(watered.filter(isPresent))
}
