import { daysOfRule } from '../../domain/schedule/rules.ts'
import { ruleFacts } from '../../plan/rule-facts.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { controllersInService } from '../wire/subject.ts'
import { daysKey } from './rules-over.ts'

export const oddEvenTurnover: SiteCheck = {
  card: {
    code: 'schedule/odd-even-turnover',
    severity: 'warning',
    looksAt:
      'A controller on odd dates that also waters on the 31st and on 29 February, where the rule leaves those out.',
    why: 'The 31st is followed by the 1st, so odd addresses would water on two days running; most rules leave it out.',
    sources: ['project-rule'],
    fix: 'Set the controller to leave out the 31st and 29 February, or write that the rule allows them.',
    worked: {
      example: `watering-rules: [{ authority: invented water board, days: odd dates }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: odd dates with the 31st, starts: ["01:00"], stations: { 1: 10 min } }] }`,
      instead: `watering-rules: [{ authority: invented water board, days: odd dates }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: odd dates, starts: ["01:00"], stations: { 1: 10 min } }] }`
    }
  },
  run: ({ site }, report) => {
    const facts = ruleFacts(site)
    const strict = site.wateringRules.find(rule => {
      const days = daysOfRule(rule, facts)
      return days?.kind === 'odd-dates' && !days.withTurnover
    })
    if (!strict) return
    for (const controller of controllersInService(site)) {
      for (const program of controller.programs) {
        if (program.days.kind !== 'odd-dates' || !program.days.withTurnover) continue
        report({
          subject: controller.id,
          at: at(program, 'days'),
          message: `${controller.id}, program ${program.id} waters on the 31st; the rule leaves out the 31st and 29 February.`,
          fix: 'Set it to "days: odd dates". If the rule allows the 31st, write "odd dates with the 31st" in the rule.',
          related: [{ at: at(strict, daysKey(strict)), note: 'the days allowed' }]
        })
      }
    }
  }
}
