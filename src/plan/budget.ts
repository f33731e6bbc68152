import { absent, isAbsent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { sum } from '../base/collections.ts'
import { allowanceGal, gallonsM3, specialUseGal } from '../domain/water/water-budget.ts'
import type { Site } from '../model/site.ts'
import { ADJUSTMENTS } from '../reference/water-budget.ts'
import type { BudgetMonth, BudgetPlan, BudgetZone } from './budget-plan.ts'
import { budgetWorkings } from './budget-workings.ts'
import { allOf, budgetZones } from './budget-zones.ts'
import type { ClimatePlan } from './climate-plan.ts'
import { meterPeriods } from './meter-periods.ts'
import type { SchedulePlan, WaterPlan, Working } from './plan.ts'
import { monthlyEtM } from './monthly-et.ts'

export interface BudgetFacts {
  readonly site: Site
  readonly climate: ClimatePlan
  readonly schedules: ReadonlyMap<string, SchedulePlan>
  readonly water: ReadonlyMap<string, WaterPlan>
}

export interface BudgetPlanned {
  readonly budget: BudgetPlan
  readonly workings: readonly Working[]
}

const MONTH_INDEXES = Array.from({ length: 12 }, (_, index) => index)

/** Allowance, estimate, programs and meter readings of a site side by side. */
export function planBudget(facts: BudgetFacts): BudgetPlanned {
  const { site, climate, schedules, water } = facts
  const etM = monthlyEtM(climate)
  const etoM = isAbsent(etM) ? etM : sum(etM)
  const zones = budgetZones({ site, water, etM })
  const land = landOf(site, zones)
  const adjustment = adjustmentOf(site)
  const allowanceM3 = allowanceOf(site, etoM, land, adjustment)
  const shares = sharesOf(etM)
  const programmed = programmedByMonth(schedules)
  const special = specialByMonth(site, etM)
  const months = MONTH_INDEXES.map<BudgetMonth>(index => ({
    allowanceM3: isAbsent(allowanceM3) ? allowanceM3 : part(allowanceM3, shares, index),
    estimatedM3: allOf([...zones.map(zone => zone.months[index] ?? 0), special(index)]),
    programmedM3: programmed[index] ?? 0
  }))
  const budget: BudgetPlan = {
    etoM,
    ...land,
    ...(typeof adjustment === 'number' ? { adjustment } : {}),
    allowanceM3,
    estimatedM3: allOf(months.map(one => one.estimatedM3)),
    zones,
    programmedM3: sum(programmed),
    flowNotStated: flowNotStated(schedules),
    months,
    periods: meterPeriods(site, months)
  }
  return { budget, workings: budgetWorkings(site, budget) }
}

interface Land {
  readonly areaM2: Maybe<number>
  readonly specialAreaM2: number
}

function landOf({ budget }: Site, zones: readonly BudgetZone[]): Land {
  const specialStations = zones.filter(zone => zone.isSpecial)
  const apart = budget?.specialArea?.si ?? 0
  const specialAreaM2 = apart + sum(specialStations.map(({ areaM2 }) => (isAbsent(areaM2) ? 0 : areaM2)))
  const stated = budget?.area?.si
  const all = allOf(zones.map(zone => zone.areaM2))
  const areaM2 = stated ?? (isAbsent(all) ? absent('the area of some zones is not stated') : all + apart)
  return { areaM2, specialAreaM2 }
}

/** Undefined where the form does not ask for one. The local rule goes before the ordinance's own figure. */
function adjustmentOf({ budget }: Site): number | undefined {
  if (budget?.form !== 'ordinance 2015') return undefined
  return budget.adjustment ?? (budget.kind === undefined ? undefined : ADJUSTMENTS[budget.kind])
}

function allowanceOf(
  { budget }: Site,
  etoM: Maybe<number>,
  { areaM2, specialAreaM2 }: Land,
  adjustment: number | undefined
): Maybe<number> {
  if (!budget) return absent('no budget is stated')
  if (budget.form === 'annual volume') return budget.annual?.si ?? absent('the volume of a year is not stated')
  if (adjustment === undefined) return absent('neither the kind of landscape nor an adjustment is stated')
  if (isAbsent(etoM)) return etoM
  if (isAbsent(areaM2)) return areaM2
  if (specialAreaM2 > areaM2) return absent('the special areas are larger than the whole')
  return gallonsM3(allowanceGal({ etoM, rainM: 0, adjustment, areaM2, specialAreaM2 }))
}

/** A year's allowance falls on the months as their evapotranspiration does. Rule of the project. */
function sharesOf(etM: Maybe<readonly number[]>): Maybe<readonly number[]> {
  if (isAbsent(etM)) return etM
  const year = sum(etM)
  return year > 0 ? etM.map(month => month / year) : absent('there is no evapotranspiration to share the year by')
}

function part(yearM3: number, shares: Maybe<readonly number[]>, index: number): Maybe<number> {
  return isAbsent(shares) ? shares : yearM3 * (shares[index] ?? 0)
}

/** Ground that counts in full and hangs on no station is part of the estimate of the ordinance. */
function specialByMonth({ budget }: Site, etM: Maybe<readonly number[]>): (index: number) => Maybe<number> {
  const areaM2 = budget?.form === 'ordinance 2015' ? (budget.specialArea?.si ?? 0) : 0
  if (areaM2 === 0) return () => 0
  return index => (isAbsent(etM) ? etM : gallonsM3(specialUseGal(etM[index] ?? 0, areaM2)))
}

function programmedByMonth(schedules: ReadonlyMap<string, SchedulePlan>): readonly number[] {
  const rows = [...schedules.values()].flatMap(({ months }) => months)
  return MONTH_INDEXES.map(index => sum(rows.map(({ volumeM3 }) => volumeM3?.[index] ?? 0)))
}

function flowNotStated(schedules: ReadonlyMap<string, SchedulePlan>): readonly string[] {
  const ids = [...schedules].flatMap(([controller, { months }]) =>
    months.flatMap(({ station, minutes, volumeM3 }) =>
      volumeM3 === undefined && sum(minutes) > 0 ? [`${controller}/${station}`] : []
    )
  )
  return [...new Set(ids)]
}
