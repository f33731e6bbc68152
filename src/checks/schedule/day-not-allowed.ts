import { groupBy } from '../../base/collections.ts'
import { runsOn } from '../../domain/schedule/days.ts'
import type { DayRule } from '../../domain/schedule/program.ts'
import { writeDayRule } from '../../domain/schedule/text.ts'
import { outsideDays } from '../../domain/schedule/windows.ts'
import { fromEpochDay } from '../../units/date.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { legalRuns } from './legal-runs.ts'

export const dayNotAllowed: SiteCheck = {
  card: {
    code: 'schedule/day-not-allowed',
    severity: 'error',
    looksAt: 'A program that starts on days a rule of the site does not allow.',
    why: 'It breaks the rule of the place every time it runs.',
    sources: ['site-record'],
    fix: 'Set the program to the days that the rule allows.',
    worked: {
      example: `watering-rules: [{ authority: invented water board, days: Mon Thu }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: Mon Wed, starts: ["01:00"], stations: { 1: 10 min } }] }`,
      instead: `watering-rules: [{ authority: invented water board, days: Mon Thu }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: Mon Thu, starts: ["01:00"], stations: { 1: 10 min } }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const controller of site.controllers) {
      const { runs, note } = legalRuns(site, controller, plan.schedules.get(controller.id))
      for (const rule of site.wateringRules) {
        if (!rule.days) continue
        const days = rule.days
        const wrong = outsideDays(runs, days).filter(one => !runsOn(days, one.run.day))
        for (const [id, own] of groupBy(wrong, one => one.run.program)) {
          const program = controller.programs.find(one => one.id === id)
          const firstRun = runs.find(run => run.program === id)
          if (!program || !firstRun || hasItsOwnCode(program.days, days, firstRun.day)) continue
          const dates = [...new Set(own.map(one => one.run.day))].sort((a, b) => a - b)
          const first = fromEpochDay(dates[0] ?? firstRun.day)
          report({
            subject: controller.id,
            at: at(program, 'days'),
            message:
              `${controller.id}, program ${id}: "${writeDayRule(program.days)}" waters on ${dates.length} ${dates.length === 1 ? 'day' : 'days'} of the year ` +
              `that the rule "${writeDayRule(days)}" does not allow, first on ${first}.${note}`,
            fix: `Set it to "days: ${writeDayRule(days)}". A start after midnight counts on the new date.`,
            values: { days: dates.length, first_on: first },
            related: [{ at: at(rule, 'days'), note: 'the days allowed' }]
          })
        }
      }
    }
  }
}

/** Day counting that starts right under a rule of dates and drifts off, and odd dates with the 31st, are told by checks of their own. */
function hasItsOwnCode(own: DayRule, rule: DayRule, firstDay: number): boolean {
  const ofDates = rule.kind === 'odd-dates' || rule.kind === 'even-dates'
  if (own.kind === 'every-n-days') return ofDates && runsOn(rule, firstDay)
  return own.kind === 'odd-dates' && rule.kind === 'odd-dates'
}
