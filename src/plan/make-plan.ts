import type { Site } from '../model/site.ts'
import type { IsoDate } from '../units/date.ts'
import type { Plan } from './plan.ts'
import { planAdvice } from './advice.ts'
import { planBackflows } from './backflows.ts'
import { planBatteries } from './batteries.ts'
import { planCautions } from './cautions.ts'
import { planBudget } from './budget.ts'
import { planClimate } from './climate.ts'
import { planCovers } from './covers.ts'
import { planDrawing } from './drawing.ts'
import { planDrifts } from './clock-drift.ts'
import { planPressures } from './pressures.ts'
import { planNextRuns } from './next-runs.ts'
import { planSensorMarks } from './sensor-marks.ts'
import { planSchedules } from './schedules.ts'
import { planStrips } from './strips.ts'
import { planPeaks } from './supply-peaks.ts'
import { planTotals } from './totals.ts'
import { planTrends } from './trends.ts'
import { planWater } from './water.ts'
import { planWires } from './wires.ts'

/** Every derived number of a site on a day, computed once, with its working. The same site and day give the same plan. */
export function makePlan(site: Site, on: IsoDate): Plan {
  const wires = planWires(site)
  const trends = planTrends(site, on)
  const schedules = planSchedules(site, on)
  const batteries = planBatteries(site, on, schedules.schedules)
  const covers = planCovers(site)
  const backflows = planBackflows(site, on)
  const peaks = planPeaks(site, schedules.schedules)
  const pressures = planPressures(site, schedules.schedules)
  const climate = planClimate(site)
  const water = planWater(site, on, schedules.schedules, climate.climate)
  const advice = planAdvice(site, on, schedules.schedules, water.water)
  const strips = planStrips(site, schedules.schedules)
  const drawing = planDrawing(site)
  const totals = planTotals(site, schedules.schedules)
  const budget = planBudget({ site, climate: climate.climate, schedules: schedules.schedules, water: water.water })
  return {
    on,
    wires: wires.wires,
    trends: trends.trends,
    batteries: batteries.batteries,
    schedules: schedules.schedules,
    cautions: planCautions(site, on),
    covers: covers.covers,
    backflows: backflows.backflows,
    peaks: peaks.peaks,
    drifts: planDrifts(site, schedules.schedules),
    pressures: pressures.pressures,
    budget: budget.budget,
    climate: climate.climate,
    water: water.water,
    nights: water.nights,
    advice: advice.advice,
    given: advice.given,
    strips: strips.strips,
    passes: strips.passes,
    totals: totals.totals,
    next: planNextRuns(site, on),
    drawing: drawing.drawing,
    sensorMarks: planSensorMarks(site, totals.totals),
    workings: [
      wires,
      trends,
      schedules,
      totals,
      climate,
      water,
      advice,
      peaks,
      pressures,
      budget,
      batteries,
      covers,
      backflows,
      drawing
    ].flatMap(part => part.workings)
  }
}
