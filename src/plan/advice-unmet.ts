import { sortedBy } from '../base/collections.ts'
import { placeStart } from '../domain/schedule/place-starts.ts'
import type { DayRule } from '../domain/schedule/program.ts'
import { daysPerWeek, weekdaysOf } from '../domain/schedule/spacing.ts'
import { atMost } from '../domain/within.ts'
import { DAY_MINUTES } from '../units/clock.ts'
import { meetsAsSet } from './advice-as-set.ts'
import type { AdviceGroup } from './advice-groups.ts'
import type { UnmetPlan } from './advice-plan.ts'
import { lengthS, programFor, startsMost } from './advice-program.ts'
import { atLevel, partsOf } from './advice-solve-of.ts'
import type { Choice, SolveOf } from './advice-solve-of.ts'

/** What stands in the way of every rule: of those with most waterings the limit that is passed by least. */
export function noneFits(group: AdviceGroup, rules: readonly DayRule[], of: SolveOf): UnmetPlan | undefined {
  if (meetsAsSet(group, of)) return undefined
  const most = startsMost(of.controller.sheet)
  const usual = Math.min(group.asSet.starts.length || 1, most)
  // Where starts do for cycles, more of them may be what helps.
  const counts = of.controller.sheet?.cycleSoak === false ? Array.from({ length: most }, (_, at) => at + 1) : [usual]
  const madeFor = (rule: DayRule) => counts.map(starts => programFor(partsOf(group, rule, starts, of)))
  const made = rules.flatMap(madeFor)
  if (made.some(one => 'program' in one)) return undefined
  // What stands in the way of the days with most waterings would stand in the way of all; of the others, less water at a time is what helps.
  const often = atLevel(rules, Infinity).flatMap(madeFor)
  const unmet = often.flatMap(one => ('unmet' in one && 'needed' in one.unmet ? [one.unmet] : []))
  return sortedBy(unmet, one => one.needed / one.allowed)[0]
}

/** The fullest night against the hours, at the days that leave it shortest; where the sum would fit, the last pass against what is free. */
export function hoursUnmet(choices: readonly Choice[], of: SolveOf, fitsAlone: (level: number) => boolean): UnmetPlan {
  const levels = [...new Set(choices.flatMap(({ rules }) => rules.map(daysPerWeek)))]
  const nights = levels.map(level => fullestNight(choices, level, of))
  const least = Math.min(...nights)
  const { controller, times } = of
  const longest = Math.max(...times.left) * 60
  if (!atMost(least, times.allowedS))
    return { kind: 'hours', subject: controller.id, needed: least, allowed: times.allowedS, onEnd: false }
  const alone = levels.some(fitsAlone)
  if (!alone) return { kind: 'hours', subject: controller.id, needed: least, allowed: longest, onEnd: true }
  return { kind: 'supply', subject: controller.id, needed: least, allowed: Math.min(least, freeBeside(of)) }
}

function fullestNight(choices: readonly Choice[], level: number, of: SolveOf): number {
  const nights = new Array<number>(7).fill(0)
  for (const { group, rules } of choices) {
    const [rule] = atLevel(rules, level)
    const made = rule && programFor(partsOf(group, rule, 1, of))
    const program = made && 'program' in made ? made.program : group.asSet
    for (const day of weekdaysOf(program.days))
      nights[day - 1] = (nights[day - 1] ?? 0) + lengthS(program, of.scheduled)
  }
  return Math.max(...nights)
}

/** The longest pass, s, that would still find room beside the others on the supply, every day. */
function freeBeside({ controller, groups, times, supply, others }: SolveOf): number {
  const flowM3s = Math.max(...groups.map(one => one.flowM3s))
  const place = (lengthMinutes: number) =>
    placeStart({
      controller: controller.id,
      days: { kind: 'every-day' },
      lengthMinutes,
      flowM3s,
      ahead: times.ahead,
      left: times.left,
      wished: [],
      placed: others,
      supply
    })
  let minutes = DAY_MINUTES
  while (minutes > 0 && !place(minutes)) minutes -= 5
  return Math.max(0, minutes) * 60
}
