import { fromEpochDay } from '../../units/date.ts'
import { showWindow } from '../../units/clock.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { hourBreaches } from './hour-breaches.ts'
import { howToFit, watersWhen } from './hours.ts'
import { byWhom } from './rules-over.ts'

export const hoursNotAllowed: SiteCheck = {
  card: {
    code: 'schedule/hours-not-allowed',
    severity: 'error',
    looksAt: 'Watering in hours that a rule of the site forbids.',
    why: 'It breaks the rule of the place, and most of these rules forbid the hot hours, when the most water is lost.',
    sources: ['site-record'],
    fix: 'Start after the forbidden hours, or early enough to be done before them.',
    worked: {
      example: `watering-rules: [{ authority: invented water board, not: 10:00-16:00 }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every day, starts: ["09:40"], stations: { 1: 30 min } }] }`,
      instead: `watering-rules: [{ authority: invented water board, not: 10:00-16:00 }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every day, starts: ["09:30"], stations: { 1: 30 min } }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const { controller, rule, note, start, allowed } of hourBreaches(site, plan, 'not')) {
      const program = controller.programs.find(one => one.id === start.program)
      if (!program) continue
      const hours = (rule.barred ?? []).map(one => showWindow(one, site.units)).join(' and ')
      report({
        subject: controller.id,
        at: at(program, 'starts'),
        message:
          `${controller.id}, program ${program.id}: ${watersWhen(start, site.units)} on ${fromEpochDay(start.day)}; ` +
          `${hours} is forbidden${byWhom(site, rule)}.${note}`,
        fix: howToFit(start, allowed, site.units, note !== ''),
        values: { minutes_outside: start.outsideMinutes, first_on: fromEpochDay(start.firstDay) },
        related: [{ at: at(rule, 'not'), note: 'the hours forbidden' }]
      })
    }
  }
}
