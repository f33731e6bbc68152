import { fromEpochDay } from '../../units/date.ts'
import { showWindow } from '../../units/clock.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { hourBreaches } from './hour-breaches.ts'
import { howToFit, watersWhen } from './hours.ts'
import { byWhom } from './rules-over.ts'

export const outsideTheWindow: SiteCheck = {
  card: {
    code: 'schedule/outside-window',
    severity: 'error',
    looksAt: 'Watering outside the hours that a rule of the site allows.',
    why: 'It breaks the rule of the place, and water given in the day is lost to sun and wind or falls on people.',
    sources: ['site-record'],
    fix: 'Start earlier, shorten the runs, or use fewer cycles.',
    worked: {
      example: `watering-rules: [{ authority: invented water board, window: 23:00-05:00 }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every day, starts: ["04:40"], stations: { 1: 30 min } }] }`,
      instead: `watering-rules: [{ authority: invented water board, window: 23:00-05:00 }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every day, starts: ["04:30"], stations: { 1: 30 min } }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const { controller, rule, note, start, allowed } of hourBreaches(site, plan, 'window')) {
      const program = controller.programs.find(one => one.id === start.program)
      if (!program) continue
      const hours = rule.windows.map(one => showWindow(one, site.units)).join(' and ')
      report({
        subject: controller.id,
        at: at(program, 'starts'),
        message:
          `${controller.id}, program ${program.id}: ${watersWhen(start, site.units)} on ${fromEpochDay(start.day)}, ` +
          `outside ${hours}${byWhom(site, rule)}.${note}`,
        fix: howToFit(start, allowed, site.units, note !== ''),
        values: { minutes_outside: start.outsideMinutes, first_on: fromEpochDay(start.firstDay) },
        related: [{ at: at(rule, 'window'), note: 'the hours allowed' }]
      })
    }
  }
}
