import { isAbsent } from '../base/absent.ts'
import type { BatteryPlan } from '../plan/plan.ts'
import { daysBetween } from '../units/date.ts'
import type { Words } from '../words/words.ts'

/** What set the due date of a set, in the words of the page; what the plan says where there is no date. */
export function dueReason({ because, dueBy, dueOn, fitted, dateCode }: BatteryPlan, { power }: Words): string {
  if (dueBy === undefined || isAbsent(dueOn) || fitted === undefined) return because
  const w = power.due.by
  const { months, days } = dueBy.interval
  if (dueBy.because === 'interval') return w.interval(w.span(months, days), fitted, dueBy.isStated)
  if (dueBy.because === 'computed life') return w.life(daysBetween(fitted, dueOn), fitted)
  return dueBy.because === 'date code' ? w.dateCode(dateCode ?? dueOn) : because
}
