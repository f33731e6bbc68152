import { isAbsent } from '../base/absent.ts'
import type { Calculation, CalculationInputs } from '../domain/calculation.ts'
import { applicationRateCard } from '../domain/water/application-rate.ts'
import { cycleSoakCard } from '../domain/water/cycle-soak-card.ts'
import { runTimeCard } from '../domain/water/run-time-card.ts'
import { soilReservoirCard } from '../domain/water/soil-reservoir-card.ts'
import { ALLOWABLE_DEPLETION } from '../reference/soil.ts'
import { MONTHS } from '../units/date.ts'
import type { WaterPlan, Working } from './plan.ts'
import { stationFlowM3s } from './station-flow.ts'
import { activeRows, shareWatered } from './water-months.ts'
import type { WaterMonthsOf } from './water-months.ts'

/** How a station's figures came about, each by the card of its calculation; the run time for the month with the greatest need at a watering. */
export function waterWorkings(of: WaterMonthsOf, plan: WaterPlan): Working[] {
  const { station, site } = of
  const flow = stationFlowM3s(station)
  if (isAbsent(plan.rateMPerS) || isAbsent(flow)) return []
  const shared = { rate: plan.rateMPerS, units: site.units }
  return [
    ...worked(applicationRateCard, station.id, { flow, area: station.area?.si }),
    ...(isAbsent(plan.intake)
      ? []
      : worked(cycleSoakCard, station.id, {
          ...shared,
          intake: plan.intake.intakeMPerS,
          surface: plan.intake.surfaceM
        })),
    ...(isAbsent(plan.reservoir) ? [] : worked(soilReservoirCard, station.id, { ...shared, ...reservoirInputs(of) })),
    ...runTimeWorkings(of, plan)
  ]
}

function reservoirInputs({ station: { soil } }: WaterMonthsOf): CalculationInputs {
  const depletion = soil?.allowableDepletion?.si ?? ALLOWABLE_DEPLETION
  return soil?.availableWater
    ? { 'available-water': soil.availableWater.si, depletion }
    : { depth: soil?.rootDepth?.si, texture: soil?.texture, depletion }
}

function runTimeWorkings(of: WaterMonthsOf, { months, rateMPerS }: WaterPlan): Working[] {
  const { station, site, stepS } = of
  const needs = months.map(({ needM, events }) => (isAbsent(needM) || events === 0 ? 0 : needM / events))
  const index = needs.indexOf(Math.max(...needs))
  const month = months[index]
  if (!month || !((needs[index] ?? 0) > 0) || isAbsent(month.needM)) return []
  const active = activeRows(of, index)
  const whole = shareWatered(of, index, active) === 1
  const need = whole
    ? { eto: site.climate?.referenceEt?.[MONTHS[index] ?? 'Jan']?.si, factor: station.plants?.factor }
    : { need: month.needM }
  return worked(runTimeCard, `${station.id}, ${MONTHS[index]}`, {
    ...need,
    rate: rateMPerS,
    efficiency: station.efficiency?.si,
    events: month.events,
    cycles: Math.max(...active.map(({ cycles }) => cycles)),
    step: stepS,
    units: site.units
  })
}

function worked(card: Calculation, subject: string, inputs: CalculationInputs): Working[] {
  const result = card.run(inputs)
  return isAbsent(result) ? [] : [{ calculation: card.name, subject, steps: result.steps }]
}
