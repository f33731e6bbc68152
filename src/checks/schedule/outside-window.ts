import { outsideWindow } from '../../domain/schedule/windows.ts'
import { groupBy } from '../../base/collections.ts'
import { fromEpochDay } from '../../units/date.ts'
import { showClock, showWindow } from '../../units/clock.ts'
import { roundedText } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { worstOf } from './runs.ts'

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
    for (const controller of site.controllers) {
      const runs = plan.schedules.get(controller.id)?.runs ?? []
      for (const rule of site.wateringRules) {
        for (const [id, outside] of groupBy(outsideWindow(runs, rule.windows), one => one.run.program)) {
          const worst = worstOf(outside)
          const program = controller.programs.find(one => one.id === id)
          if (!worst || !program) continue
          const clock = (seconds: number) => showClock(seconds / 60, site.units)
          report({
            subject: controller.id,
            at: at(program, 'starts'),
            message:
              `${controller.id}, program ${id}: station ${worst.run.station} waters from ${clock(worst.fromS)} to ${clock(worst.toS)}, ` +
              `outside ${rule.windows.map(one => showWindow(one, site.units)).join(' and ')} (${fromEpochDay(worst.run.day)}).`,
            fix: `Move the start or shorten the program so that ${roundedText(worst.outsideMinutes, 1)} min fall back inside the hours allowed.`,
            values: {
              minutes_outside: worst.outsideMinutes,
              first_on: fromEpochDay(outside[0]?.run.day ?? worst.run.day)
            },
            related: [{ at: at(rule, 'window'), note: 'the hours allowed' }]
          })
        }
      }
    }
  }
}
