import { sortedBy } from '../base/collections.ts'
import { canBeSet, dayChoices, firstBarred } from '../domain/schedule/day-choices.ts'
import type { DayRule } from '../domain/schedule/program.ts'
import { daysPerWeek } from '../domain/schedule/spacing.ts'
import { writeDayRule } from '../domain/schedule/text.ts'
import { date, epochDay, fromEpochDay } from '../units/date.ts'
import type { AdviceGroup } from './advice-groups.ts'
import type { UnmetPlan } from './advice-plan.ts'
import type { AllowedTimes } from './advice-rules.ts'
import type { SolveOf } from './advice-solve-of.ts'

/** The days as set, where the controller can be set to them and they keep to the days allowed. */
export function keptRule(group: AdviceGroup, { times, kinds }: SolveOf): readonly DayRule[] {
  const own = group.asSet.days
  return canBeSet(own, kinds) && firstBarred(own, allowedDays(group, times)) === undefined ? [own] : []
}

function allowedDays(group: AdviceGroup, { active, isAllowed }: AllowedTimes) {
  return { days: active(group).flatMap(month => month.map(({ day }) => day)), isAllowed }
}

/** Day rules that keep to the days allowed, the one as set first, then those of its kind, the nearest to it first, then others. */
export function rulesFor(group: AdviceGroup, of: SolveOf): readonly DayRule[] {
  const { times, kinds, year } = of
  const allowed = allowedDays(group, times)
  const first = allowed.days.find(times.isAllowed) ?? epochDay(date(`${year}-01-01`))
  const own = group.asSet.days
  const usual = daysPerWeek(own)
  const near = sortedBy(
    dayChoices({ ...allowed, kinds, from: fromEpochDay(first) }).filter(
      rule => writeDayRule(rule) !== writeDayRule(own)
    ),
    rule => (rule.kind === own.kind ? 0 : 1),
    rule => Math.abs(daysPerWeek(rule) - usual)
  )
  return [...keptRule(group, of), ...near]
}

/** No rule keeps to the days allowed: the one that does so for longest, and the day on which it leaves them. */
export function daysUnmet(group: AdviceGroup, { times, kinds, controller }: SolveOf): UnmetPlan {
  const allowed = allowedDays(group, times)
  const from = allowed.days.find(times.isAllowed) ?? 0
  const tried = [group.asSet.days, { kind: 'every-n-days' as const, every: 2, from: fromEpochDay(from) }].filter(rule =>
    canBeSet(rule, kinds)
  )
  const firsts = tried.flatMap(rule => {
    const first = firstBarred(rule, allowed)
    return first === undefined ? [] : [{ rule: writeDayRule(rule), first }]
  })
  const best = sortedBy(firsts, one => -one.first)[0]
  return {
    kind: 'days',
    subject: controller.id,
    rule: best?.rule ?? writeDayRule(group.asSet.days),
    ...(best ? { first: fromEpochDay(best.first) } : {})
  }
}
