import { isAbsent } from '../base/absent.ts'
import { sum } from '../base/collections.ts'
import { commonMonthDays } from '../domain/climate/day-of-year.ts'
import type { CalculationInputs } from '../domain/calculation.ts'
import { applicationRateCard } from '../domain/water/application-rate.ts'
import { cycleSoakCard } from '../domain/water/cycle-soak-card.ts'
import { effectiveRainCard } from '../domain/water/effective-rain-card.ts'
import { landscapeCoefficientCard } from '../domain/water/landscape-coefficient.ts'
import { monthlyPercentCard } from '../domain/water/monthly-percent-card.ts'
import { phaseNeedCard } from '../domain/water/phase-need-card.ts'
import { runTimeCard } from '../domain/water/run-time-card.ts'
import { soilReservoirCard } from '../domain/water/soil-reservoir-card.ts'
import { uniformityCard } from '../domain/water/uniformity-card.ts'
import { ALLOWABLE_DEPLETION } from '../reference/soil.ts'
import { MONTHS, daysInMonth } from '../units/date.ts'
import { worked } from './climate-workings.ts'
import type { WaterPlan, Working } from './plan.ts'
import { stationFlowM3s } from './station-flow.ts'
import { catchCanInputs } from './water-delivery.ts'
import { activeRows } from './water-months.ts'
import type { WaterMonthsOf } from './water-months.ts'
import type { NeedMonth } from './water-plan.ts'

/** How a station's figures came about, each by the card of its calculation; need and run time for the month that needs most at a watering. */
export function waterWorkings(of: WaterMonthsOf, plan: WaterPlan): Working[] {
  const { station, site } = of
  const flow = stationFlowM3s(station)
  if (isAbsent(plan.rateMPerS)) return needWorkings(of, plan)
  const shared = { rate: plan.rateMPerS, units: site.units }
  return [
    ...(isAbsent(flow) || plan.rateBy === 'catch-cans'
      ? []
      : worked(applicationRateCard, station.id, { flow, area: station.area?.si })),
    ...worked(uniformityCard, station.id, catchCanInputs(station)),
    ...(isAbsent(plan.intake)
      ? []
      : worked(cycleSoakCard, station.id, {
          ...shared,
          intake: plan.intake.intakeMPerS,
          surface: plan.intake.surfaceM
        })),
    ...(isAbsent(plan.reservoir)
      ? []
      : worked(soilReservoirCard, station.id, { ...shared, ...reservoirInputs(of), ...dailyUse(of, plan) })),
    ...needWorkings(of, plan),
    ...runTimeWorkings(of, plan)
  ]
}

function reservoirInputs({ station: { soil } }: WaterMonthsOf): CalculationInputs {
  const depletion = soil?.allowableDepletion?.si ?? ALLOWABLE_DEPLETION
  return soil?.availableWater
    ? { 'available-water': soil.availableWater.si, depletion }
    : { depth: soil?.rootDepth?.si, texture: soil?.texture, depletion }
}

/** Use of a day in the month in which the root zone lasts for the shortest time. */
function dailyUse({ year }: WaterMonthsOf, { need: { months } }: WaterPlan): CalculationInputs {
  const daily = months.map((month, index) => dailyUseM(month, daysInMonth(year, index + 1)))
  const most = Math.max(...daily)
  return most > 0 ? { need: most / 86_400 } : {}
}

function dailyUseM({ useM, parts }: NeedMonth, monthDays: number): number {
  const days = Math.min(monthDays, sum(parts.map(one => one.days)))
  return isAbsent(useM) || days === 0 ? 0 : useM / days
}

/** The coefficient of its parts, the percents of the months, and the need of the month that needs most at a watering. */
function needWorkings(of: WaterMonthsOf, plan: WaterPlan): Working[] {
  const { need, months } = plan
  const { station, site, climate, year } = of
  const parts = isAbsent(need.factor) ? undefined : need.factor.parts
  const coefficient = parts ? worked(landscapeCoefficientCard, station.id, { ...parts }) : []
  const index = peakOf(months)
  const [month, etM] = [need.months[index ?? -1], climate.months[index ?? -1]?.etM]
  if (index === undefined || !month || isAbsent(etM) || isAbsent(month.rainM)) return coefficient
  const subject = `${station.id}, ${MONTHS[index]}`
  return [
    ...coefficient,
    ...zoneRain(of, plan, index),
    ...worked(phaseNeedCard, subject, {
      eto: etM,
      rain: month.rainM,
      days: daysInMonth(year, index + 1),
      phases: month.parts.map(one => `${one.name} ${one.factor} ${one.days}`).join(', '),
      units: site.units
    }),
    ...percentWorkings(of, need.months)
  ]
}

/** Rain that counts by the use of the zone and the storage of its soil. */
function zoneRain(of: WaterMonthsOf, { need, reservoir }: WaterPlan, index: number): Working[] {
  const { station, site, climate, year } = of
  const [rainM, month] = [climate.months[index]?.rainM, need.months[index]]
  const holdsM = isAbsent(reservoir) ? reservoir : reservoir.holdsM
  if (climate.rainMethod !== 'tr-21' || climate.underGlass || !month || isAbsent(rainM)) return []
  const use = dailyUseM(month, daysInMonth(year, index + 1)) * daysInMonth(year, index + 1)
  if (isAbsent(holdsM)) return []
  const inputs = { method: 'tr-21', rain: rainM, use, storage: holdsM, units: site.units }
  return worked(effectiveRainCard, `${station.id}, ${MONTHS[index]}`, inputs)
}

/** Each month's need of a day against the greatest, as a program's monthly percent follows it. */
function percentWorkings({ station, site }: WaterMonthsOf, months: readonly NeedMonth[]): Working[] {
  const inMm = months.map(({ needM, parts }, index) => {
    const days = sum(parts.map(one => one.days))
    return isAbsent(needM) || days === 0 ? 0 : (needM / days) * commonMonthDays(index + 1) * 1000
  })
  return worked(monthlyPercentCard, station.id, { eto: `${inMm.map(plainNumber).join(' ')} mm`, units: site.units })
}

/** Without an exponent, which no table has. */
const plainNumber = (value: number): string => value.toFixed(9)

/** The month that needs most at a watering. */
function peakOf(months: WaterPlan['months']): number | undefined {
  const needs = months.map(({ needM, events }) => (isAbsent(needM) || events === 0 ? 0 : needM / events))
  const most = Math.max(...needs)
  return most > 0 ? needs.indexOf(most) : undefined
}

function runTimeWorkings(of: WaterMonthsOf, { months, rateMPerS, need }: WaterPlan): Working[] {
  const { station, site, stepS } = of
  const index = peakOf(months)
  const month = months[index ?? -1]
  if (index === undefined || !month || isAbsent(month.needM) || isAbsent(need.delivery)) return []
  const { delivery } = need.delivery
  return worked(runTimeCard, `${station.id}, ${MONTHS[index]}`, {
    need: month.needM,
    rate: rateMPerS,
    efficiency: delivery.by === 'efficiency' ? delivery.share : undefined,
    dulq: delivery.by === 'dulq' ? delivery.share : undefined,
    events: month.events,
    cycles: Math.max(...activeRows(of, index).map(({ cycles }) => cycles)),
    step: stepS,
    units: site.units
  })
}
