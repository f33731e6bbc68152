import type { ScheduledController } from '../domain/schedule/controller.ts'
import type { DayKind } from '../domain/schedule/day-choices.ts'
import type { PlacedStart, SharedSupply } from '../domain/schedule/place-starts.ts'
import type { DayRule } from '../domain/schedule/program.ts'
import { daysPerWeek } from '../domain/schedule/spacing.ts'
import type { Controller } from '../model/site.ts'
import type { AdviceGroup } from './advice-groups.ts'
import type { ProgramOf } from './advice-program.ts'
import type { AllowedTimes } from './advice-rules.ts'

/** What the advice for one controller is made from. */
export interface SolveOf {
  readonly controller: Controller
  readonly scheduled: ScheduledController
  readonly groups: readonly AdviceGroup[]
  readonly times: AllowedTimes
  readonly year: number
  readonly kinds: readonly DayKind[]
  readonly supply: SharedSupply
  /** Starts of other controllers on the same supply. */
  readonly others: readonly PlacedStart[]
}

/** A group with the day rules to choose from. */
export interface Choice {
  readonly group: AdviceGroup
  readonly rules: readonly DayRule[]
}

export /** Rules with so many waterings a week or more; those with most where none has as many. */
function atLevel(rules: readonly DayRule[], level: number): readonly DayRule[] {
  const most = Math.max(...rules.map(daysPerWeek))
  return rules.filter(rule => daysPerWeek(rule) >= Math.min(level, most))
}

export function partsOf(group: AdviceGroup, rule: DayRule, starts: number, of: SolveOf): ProgramOf {
  const { times, controller, scheduled } = of
  const { id, sheet } = controller
  return { controller: id, group, rule, starts, active: times.active, sheet, stepS: scheduled.stepS }
}
