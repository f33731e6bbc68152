import { runsOn } from '../../domain/schedule/days.ts'
import { daysOfRule } from '../../domain/schedule/rules.ts'
import { writeDayRule } from '../../domain/schedule/text.ts'
import { fromEpochDay } from '../../units/date.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { ruleFacts } from '../../plan/rule-facts.ts'
import { brokenRules, byWhom, daysKey } from './rules-over.ts'

export const intervalAgainstDates: SiteCheck = {
  card: {
    code: 'schedule/interval-against-dates',
    severity: 'error',
    looksAt: 'A program that counts days under a rule of odd or even dates.',
    why: 'After a month of 31 days the count falls on the other dates, and from then on it waters on forbidden ones.',
    sources: ['project-rule'],
    fix: 'Set the controller to odd or even dates. Where it has no such setting, move the count at each month of 31 days.',
    worked: {
      example: `watering-rules: [{ authority: invented water board, days: even dates }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every 2 days from 2026-07-02, starts: ["22:00"], stations: { 1: 10 min } }] }`,
      instead: `watering-rules: [{ authority: invented water board, days: even dates }]
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: even dates, starts: ["22:00"], stations: { 1: 10 min } }] }`
    }
  },
  run: ({ site, plan }, report) => {
    const facts = ruleFacts(site)
    for (const { controller, rule, days: year, note, broken } of brokenRules(site, plan, 'days')) {
      const allowed = daysOfRule(rule, facts)
      if (allowed?.kind !== 'odd-dates' && allowed?.kind !== 'even-dates') continue
      for (const program of controller.programs) {
        if (program.days.kind !== 'every-n-days') continue
        const first = year.find(({ pattern }) => pattern.some(run => run.program === program.id))
        const breaking = broken.find(
          ({ day, runs }) => !runsOn(allowed, day) && runs.some(({ run }) => run.program === program.id)
        )
        if (!first || !breaking || breaking.day === first.day) continue
        const on = fromEpochDay(breaking.day)
        report({
          subject: controller.id,
          at: at(program, 'days'),
          message:
            `${controller.id}, program ${program.id}: "${writeDayRule(program.days)}" leaves the rule ` +
            `"${writeDayRule(allowed)}"${byWhom(site, rule)} on ${on}.${note}`,
          fix: `Set it to "days: ${writeDayRule(allowed)}". Where the controller can only count days, start the count anew by ${on}.`,
          values: { first_breaking_date: on },
          related: [{ at: at(rule, daysKey(rule)), note: 'the days allowed' }]
        })
      }
    }
  }
}
