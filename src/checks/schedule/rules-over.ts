import { barredBy } from '../../domain/schedule/rules.ts'
import type { RulePart } from '../../domain/schedule/rules.ts'
import { outside } from '../../domain/schedule/windows.ts'
import type { OutsideDay } from '../../domain/schedule/windows.ts'
import type { YearRuns } from '../../domain/schedule/year-runs.ts'
import type { Controller, Site, WateringRule } from '../../model/site.ts'
import type { Plan } from '../../plan/plan.ts'
import { bindsStation, ruleFacts } from '../../plan/rule-facts.ts'
import { legalDays } from './legal-runs.ts'

/** A controller's year under one rule. */
export interface RuleOver {
  readonly controller: Controller
  readonly rule: WateringRule
  /** By the legal clock. */
  readonly days: YearRuns
  /** What to say where the controller's clock is another; empty where it is right. */
  readonly note: string
  /** What the part of the rule that is looked at bars, where a station that it concerns waters. */
  readonly broken: readonly OutsideDay[]
}

/** Each controller under each rule of the site, where a part of the rule is broken in the year. */
export function brokenRules(site: Site, plan: Plan, part: RulePart): RuleOver[] {
  const facts = ruleFacts(site)
  const barred = site.wateringRules.map(rule => ({ rule, on: barredBy(rule, part, facts) }))
  return site.controllers.flatMap(controller => {
    const { days, note } = legalDays(plan.schedules.get(controller.id))
    if (days.length === 0) return []
    return barred.flatMap(({ rule, on }) => {
      const broken = outside(days, on, bindsStation(rule, site, controller.id))
      return broken.length === 0 ? [] : [{ controller, rule, days, note, broken }]
    })
  })
}

/** Key under which the days of a rule are written. */
export function daysKey(rule: WateringRule): string {
  return rule.days === undefined && rule.daysByAddress ? 'days-by-address' : 'days'
}

/** " (Port Sable Water)" where the site has more than one rule, so that the reader knows which one is meant. */
export function byWhom({ wateringRules }: Site, { authority }: WateringRule): string {
  return wateringRules.length > 1 && authority !== undefined ? ` (${authority})` : ''
}
