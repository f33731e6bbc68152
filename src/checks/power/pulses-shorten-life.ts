import { isPresent } from '../../base/absent.ts'
import { addDays, daysBetween } from '../../units/date.ts'
import type { IsoDate } from '../../units/date.ts'
import { roundedText } from '../../units/show.ts'
import type { BatteryPlan } from '../../plan/plan.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { daysText } from './set-text.ts'

/** Longer than any set is left in: a life beyond it shortens nothing. */
const LONGEST_LIFE_DAYS = 36_525

export const pulsesShortenLife: SiteCheck = {
  card: {
    code: 'power/pulses-shorten-life',
    severity: 'warning',
    looksAt:
      'How long the pulses that a set is rated for last as programmed, against the interval at which it is changed.',
    why: 'Each opening and each closing takes a pulse. Many starts and cycles use up a set long before the calendar says so.',
    sources: ['product-sheet', 'project-rule'],
    fix: 'Shorten the interval to what the pulses last, or send fewer pulses.',
    worked: {
      on: '2026-05-01',
      example: `controllers:
  - id: K1
    box: VB1
    sheet: _shared/sheets/plain.md
    battery: { kind: 9 V alkaline, count: 1, fitted: 2026-02-02, interval: 12 months }
    programs: [{ id: A, days: every day, starts: ["06:00", "08:00", "12:00", "15:00"], stations: { 1: 2 x 6 min, 2: 4 x 3 min } }]`,
      instead: `controllers:
  - id: K1
    box: VB1
    sheet: _shared/sheets/plain.md
    battery: { kind: 9 V alkaline, count: 1, fitted: 2026-02-02, interval: 166 days }
    programs: [{ id: A, days: every day, starts: ["06:00", "08:00", "12:00", "15:00"], stations: { 1: 2 x 6 min, 2: 4 x 3 min } }]`
    }
  },
  run: ({ site, plan }, report) => {
    for (const controller of site.controllers) {
      const battery = plan.batteries.get(controller.id)
      const short = battery && shortened(battery)
      if (!battery?.pulses || !short) continue
      const { rated, perDay, lifeDays } = battery.pulses
      const { fitted, dueOn, intervalDueOn } = short
      const allowed = Math.floor((rated / daysBetween(fitted, intervalDueOn)) * 10) / 10
      report({
        subject: controller.id,
        at: at(controller, 'battery', 'interval'),
        message:
          `${controller.id}: ${roundedText(perDay, 1)} pulses a day use up the ${rated} of the sheet in ${daysText(lifeDays)}, ` +
          `by ${dueOn}; the interval alone says ${intervalDueOn}.`,
        fix: `Write "interval: ${daysText(lifeDays)}", or bring it down to ${roundedText(allowed, 1)} pulses a day with fewer starts or cycles.`,
        values: {
          pulses_per_day: perDay,
          days: lifeDays,
          due_on: dueOn,
          rated_pulses: rated,
          interval_due_on: intervalDueOn
        },
        related: controller.sheet
          ? [{ at: at(controller.sheet, 'battery', 'pulses'), note: 'the pulses of a set' }]
          : []
      })
    }
  }
}

/** The dates of a set whose pulses, and nothing else, set the day it is due. */
function shortened(
  battery: BatteryPlan
): { readonly fitted: IsoDate; readonly dueOn: IsoDate; readonly intervalDueOn: IsoDate } | undefined {
  const { fitted, pulses, dueOn, intervalDueOn } = battery
  if (!pulses || !fitted || !intervalDueOn || !isPresent(dueOn) || pulses.lifeDays > LONGEST_LIFE_DAYS) return undefined
  return addDays(fitted, pulses.lifeDays) === dueOn && dueOn < intervalDueOn
    ? { fitted, dueOn, intervalDueOn }
    : undefined
}
