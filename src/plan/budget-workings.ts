import { isAbsent } from '../base/absent.ts'
import type { Calculation, CalculationInputs } from '../domain/calculation.ts'
import { meterUnits } from '../domain/water/meter-units.ts'
import { waterBudgetCard } from '../domain/water/water-budget-card.ts'
import type { Site } from '../model/site.ts'
import type { BudgetPlan, MeterPeriod } from './budget-plan.ts'
import type { Working } from './plan.ts'

/** How allowance, estimate and metered use came about, by the cards of their calculations. */
export function budgetWorkings(site: Site, budget: BudgetPlan): Working[] {
  return [...ordinanceWorkings(site, budget), ...budget.periods.flatMap(one => periodWorkings(site, one))]
}

function ordinanceWorkings(site: Site, { etoM, areaM2, specialAreaM2, adjustment, zones }: BudgetPlan): Working[] {
  if (adjustment === undefined || isAbsent(etoM) || isAbsent(areaM2)) return []
  const written = zones.flatMap(zone =>
    zone.isSpecial || isAbsent(zone.factor) || isAbsent(zone.areaM2)
      ? []
      : [`${zone.factor}, ${percent(zone.efficiency)} %, ${zone.areaM2} m²`]
  )
  return worked(waterBudgetCard, site.title, {
    eto: etoM,
    area: areaM2,
    'special-area': specialAreaM2,
    adjustment,
    zones: written.length > 0 ? written.join('; ') : undefined
  })
}

/** Without the last bits of a conversion. */
const percent = (share: number): number => Number((share * 100).toPrecision(6))

function periodWorkings(site: Site, { supply, from, to, days, meteredM3 }: MeterPeriod): Working[] {
  const readings = (on: string) =>
    site.visits
      .filter(visit => visit.on === on)
      .flatMap(visit => visit.readings)
      .find(one => one.supply === supply && one.meter)?.meter
  const [earlier, later] = [readings(from), readings(to)]
  if (isAbsent(meteredM3) || !earlier || !later) return []
  return worked(meterUnits, `${supply}, ${from} to ${to}`, {
    reading: later.si,
    earlier: earlier.si,
    days,
    units: site.units
  })
}

function worked(card: Calculation, subject: string, inputs: CalculationInputs): Working[] {
  const result = card.run(inputs)
  return isAbsent(result) ? [] : [{ calculation: card.name, subject, steps: result.steps }]
}
