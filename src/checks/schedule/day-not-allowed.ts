import { runsOn } from '../../domain/schedule/days.ts'
import type { DayRule } from '../../domain/schedule/program.ts'
import { writeDayRule } from '../../domain/schedule/text.ts'
import { daysOfRule } from '../../domain/schedule/rules.ts'
import type { OutsideDay } from '../../domain/schedule/windows.ts'
import { fromEpochDay } from '../../units/date.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { ruleFacts } from '../../plan/rule-facts.ts'
import { brokenRules, byWhom, daysKey } from './rules-over.ts'

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
    const facts = ruleFacts(site)
    for (const { controller, rule, days: year, note, broken } of brokenRules(site, plan, 'days')) {
      const allowed = daysOfRule(rule, facts)
      if (!allowed) continue
      for (const [id, dates] of startedOff(broken, allowed)) {
        const program = controller.programs.find(one => one.id === id)
        const firstDay = year.find(({ pattern }) => pattern.some(run => run.program === id))?.day
        const [first] = dates
        if (!program || firstDay === undefined || first === undefined) continue
        if (hasItsOwnCode(program.days, allowed, firstDay)) continue
        const others = site.wateringRules.filter(one => one !== rule && daysOfRule(one, facts))
        report({
          subject: controller.id,
          at: at(program, 'days'),
          message:
            `${controller.id}, program ${id}: "${writeDayRule(program.days)}" waters on ${dates.length} ${dates.length === 1 ? 'day' : 'days'} of the year ` +
            `that the rule "${writeDayRule(allowed)}"${byWhom(site, rule)} does not allow, first on ${fromEpochDay(first)}.${note}`,
          fix:
            others.length === 0
              ? `Set it to "days: ${writeDayRule(allowed)}". A start after midnight counts on the new date.`
              : `Keep to days that this rule and ${others.map(one => `"${writeDayRule(daysOfRule(one, facts) ?? allowed)}"`).join(' and ')} both allow.`,
          values: { days: dates.length, first_on: fromEpochDay(first) },
          related: [{ at: at(rule, daysKey(rule)), note: 'the days allowed' }]
        })
      }
    }
  }
}

/** By program, the days that are not allowed on which it starts; what runs on past midnight has a code of its own. */
function startedOff(broken: readonly OutsideDay[], allowed: DayRule): ReadonlyMap<string, readonly number[]> {
  const dates = new Map<string, number[]>()
  for (const { day, runs } of broken) {
    if (runsOn(allowed, day)) continue
    for (const program of new Set(runs.map(({ run }) => run.program)))
      dates.set(program, [...(dates.get(program) ?? []), day])
  }
  return dates
}

/** Day counting that starts right under a rule of dates and drifts off, and odd dates with the 31st, are told by checks of their own. */
function hasItsOwnCode(own: DayRule, rule: DayRule, firstDay: number): boolean {
  const ofDates = rule.kind === 'odd-dates' || rule.kind === 'even-dates'
  if (own.kind === 'every-n-days') return ofDates && runsOn(rule, firstDay)
  return own.kind === 'odd-dates' && rule.kind === 'odd-dates'
}
