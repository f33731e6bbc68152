import { sum } from '../../base/collections.ts'
import { hoursAllowed } from '../../domain/schedule/rules.ts'
import type { RulePart } from '../../domain/schedule/rules.ts'
import { insideOf, outsideOf } from '../../domain/schedule/stretches.ts'
import type { Window } from '../../units/clock.ts'
import type { Site, WateringRule } from '../../model/site.ts'
import type { Plan } from '../../plan/plan.ts'
import { ruleFacts } from '../../plan/rule-facts.ts'
import { worstStarts } from './hours.ts'
import type { StartOutside } from './hours.ts'
import { brokenRules } from './rules-over.ts'
import type { RuleOver } from './rules-over.ts'

/** The worst start of a program under a rule, and the hours that all rules together leave it. */
export interface HourBreach extends Pick<RuleOver, 'controller' | 'rule' | 'note'> {
  readonly start: StartOutside
  readonly allowed: readonly Window[]
}

/**
 * Each program that waters in hours that a rule bars. Where one rule is stricter than another on every day that the other is broken, the
 * stricter alone is told: keeping it keeps both.
 */
export function hourBreaches(site: Site, plan: Plan, part: RulePart): HourBreach[] {
  const hoursOn = hoursAllowed(site.wateringRules, ruleFacts(site))
  const over = brokenRules(site, plan, part)
  return over.flatMap(one =>
    worstStarts(one.days, one.broken)
      .filter(start => !over.some(other => isStricter(other, one, start.program, part)))
      .map(start => {
        const { controller, rule, note } = one
        return { controller, rule, note, start, allowed: hoursOn(start.day) }
      })
  )
}

function isStricter(other: RuleOver, one: RuleOver, program: string, part: RulePart): boolean {
  if (other === one || other.controller !== one.controller) return false
  const [others, own] = [minutesByDay(other, program), minutesByDay(one, program)]
  const [othersAll, ownAll] = [total(others), total(own)]
  if (othersAll < ownAll || (othersAll === ownAll && barredS(other.rule, part) <= barredS(one.rule, part))) return false
  return [...own].every(([day, minutes]) => (others.get(day) ?? 0) >= minutes - 1e-6)
}

/** Of a day on which the rule holds. */
function barredS({ windows, barred }: WateringRule, part: RulePart): number {
  const stretches = part === 'window' ? outsideOf(windows) : insideOf(barred ?? [])
  return sum(stretches.map(([fromS, toS]) => toS - fromS))
}

const total = (minutes: ReadonlyMap<number, number>): number => sum([...minutes.values()])

function minutesByDay({ broken }: RuleOver, program: string): ReadonlyMap<number, number> {
  const minutes = new Map<number, number>()
  for (const { day, runs } of broken)
    for (const { run, outsideMinutes } of runs)
      if (run.program === program) minutes.set(day, (minutes.get(day) ?? 0) + outsideMinutes)
  return minutes
}
