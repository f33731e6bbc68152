import type { Worked } from '../domain/calculation.ts'
import { figures } from '../domain/figures.ts'
import { pulseLifeStep } from '../domain/power/battery-life.ts'
import { pulseLifeDays } from '../domain/power/life.ts'
import type { Controller, Site } from '../model/site.ts'
import type { IsoDate } from '../units/date.ts'
import type { BatteryPlan } from './plan.ts'
import { programmedPulses } from './programmed-pulses.ts'

/** How long the pulses that the product sheet states last, as programmed. Undefined where the sheet states none or nothing is programmed. */
export function pulseLife(
  site: Site,
  controller: Controller,
  fitted: IsoDate
): Worked<NonNullable<BatteryPlan['pulses']>> | undefined {
  const rated = controller.sheet?.battery?.pulses
  const sent = programmedPulses(site, controller, fitted)
  if (rated === undefined || !(rated > 0) || sent.value === 0) return undefined
  const total = sent.steps.length > 1 ? [`${figures(sent.value, 4)} pulses a day in all`] : []
  return {
    value: { rated, perDay: sent.value, lifeDays: pulseLifeDays(rated, sent.value) },
    steps: [...sent.steps, ...total, pulseLifeStep(rated, sent.value)]
  }
}
