import { outsideDays } from '../../domain/schedule/windows.ts'
import { runsOn } from '../../domain/schedule/days.ts'
import { writeDayRule } from '../../domain/schedule/text.ts'
import { groupBy } from '../../base/collections.ts'
import { fromEpochDay } from '../../units/date.ts'
import { roundedText } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { worstOf } from './runs.ts'

export const crossesMidnight: SiteCheck = {
  card: {
    code: 'schedule/crosses-midnight',
    severity: 'warning',
    looksAt: 'A run that starts on an allowed day and goes on past midnight into a day that is not.',
    why: 'After midnight it is another date, and a rule of days counts the water that flows on it.',
    sources: ['site-record', 'project-rule'],
    fix: 'Start earlier, so that the run is over by midnight.',
    worked: {
      example: `watering-rules: [{ authority: invented water board, days: even dates }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: even dates, starts: ["23:30"], stations: { 1: 35 min } }] }`,
      instead: `watering-rules: [{ authority: invented water board, days: even dates }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: even dates, starts: ["23:25"], stations: { 1: 35 min } }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const controller of site.controllers) {
      const runs = plan.schedules.get(controller.id)?.runs ?? []
      for (const rule of site.wateringRules) {
        if (!rule.days) continue
        const days = rule.days
        const late = outsideDays(runs, days).filter(one => runsOn(days, one.run.day) && one.run.startS < 86_400)
        for (const [id, own] of groupBy(late, one => one.run.program)) {
          const worst = worstOf(own)
          const program = controller.programs.find(one => one.id === id)
          if (!worst || !program) continue
          report({
            subject: controller.id,
            at: at(program, 'starts'),
            message:
              `${controller.id}, program ${id}: station ${worst.run.station} runs ${roundedText(worst.outsideMinutes, 1)} min past midnight of ` +
              `${fromEpochDay(worst.run.day)}, into a day outside "${writeDayRule(days)}".`,
            fix: `Start at least ${roundedText(Math.ceil(worst.outsideMinutes), 0)} min earlier.`,
            values: { minutes_over: worst.outsideMinutes, first_on: fromEpochDay(own[0]?.run.day ?? worst.run.day) },
            related: [{ at: at(rule, 'days'), note: 'the days allowed' }]
          })
        }
      }
    }
  }
}
