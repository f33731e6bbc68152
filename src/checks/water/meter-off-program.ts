import { isAbsent } from '../../base/absent.ts'
import { groupBy } from '../../base/collections.ts'
import { atLeast, atMost } from '../../domain/within.ts'
import type { MeterPeriod } from '../../plan/budget-plan.ts'
import { roundedText, show } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import type { Report, SiteCheck } from '../check.ts'
import { at } from '../at.ts'

/** Common practice, no source: flows on file are seldom known closer than that. */
const MOST_SHARE = 1.25
const LEAST_SHARE = 0.75

/** Fewer watering days hang too much on the hour of the reading, and on the day on which the controllers were switched on. Rule of the project. */
const LEAST_WATERING_DAYS = 7

export const meterOffProgram: SiteCheck = {
  card: {
    code: 'water/meter-off-program',
    severity: 'warning',
    looksAt:
      'What the meter of a supply counted between the last two readings, against what the programs gave in those days: more than a quarter over or under. Programs as they stand now; stretches with fewer than seven watering days are left out.',
    why: 'More than was programmed is a leak, a valve that does not close, or a run that somebody left on. Less is a shut-off that stands closed, a valve that does not open, a sensor that holds back, or a dead battery.',
    sources: ['common-practice', 'project-rule'],
    fix: 'Shut all valves and watch the meter; then run zone by zone and compare each with its flow on file.',
    worked: {
      example: `on: 2026-04-06
readings: [{ supply: S1, meter: 1284 m³ }]
---
on: 2026-04-20
readings: [{ supply: S1, meter: 1294 m³ }]`,
      instead: `on: 2026-04-06
readings: [{ supply: S1, meter: 1284 m³ }]
---
on: 2026-04-20
readings: [{ supply: S1, meter: 1289.4 m³ }]`
    }
  },
  run: ({ site, plan }, report) => {
    for (const periods of groupBy(plan.budget.periods, one => one.supply).values()) {
      const last = periods.at(-1)
      if (last) judge(last, site.units, report)
    }
  }
}

function judge(period: MeterPeriod, units: UnitSystem, report: Report): void {
  const { supply, from, to, reading, meteredM3, programmedM3, wateringDays, slip } = period
  if (isAbsent(meteredM3) || slip || wateringDays < LEAST_WATERING_DAYS || !(programmedM3 > 0)) return
  const share = meteredM3 / programmedM3
  if (atMost(share, MOST_SHARE) && atLeast(share, LEAST_SHARE)) return
  const over = share > 1
  const volume = (m3: number) => show(m3, 'volume', units)
  report({
    subject: supply,
    severity: over ? 'warning' : 'note',
    at: at(reading, 'meter'),
    message: `${supply}: from ${from} to ${to} the meter counted ${volume(meteredM3)}, ${roundedText(share * 100, 0)} % of the ${volume(programmedM3)} that the programs gave as they stand now.`,
    fix: over
      ? 'Shut all valves and watch the meter: if it turns, look for a leak or a valve that does not close. Then see whether the flows on file are right.'
      : 'See that every valve opens and what the sensors held back; then whether the flows on file are right.',
    values: { metered_m3: meteredM3, programmed_m3: programmedM3, share_percent: share * 100, from, to }
  })
}
