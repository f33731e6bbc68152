import type { YearRuns } from '../../domain/schedule/year-runs.ts'
import type { SchedulePlan } from '../../plan/plan.ts'
import { MONTHS } from '../../units/date.ts'

/** What a rule is held against: when the water runs by the legal clock, and what to say where the controller's clock is another. */
export interface ToldDays {
  readonly days: YearRuns
  /** A sentence with a space before it; empty where the clock is right. */
  readonly note: string
}

export function legalDays(schedule: SchedulePlan | undefined): ToldDays {
  if (!schedule) return { days: [], note: '' }
  const { days, behind } = schedule.legal
  if (!behind) return { days, note: '' }
  const { minutes, months } = behind
  return {
    days,
    note: ` Its clock does not follow daylight saving and is ${minutes}\u00a0min behind in ${spanOf(months)}.`
  }
}

/** "Apr to Oct"; a summer across the year's end starts where a month is missing before it. */
function spanOf(months: readonly number[]): string {
  const sorted = [...months].sort((a, b) => a - b)
  const first = sorted.find(month => !months.includes(month === 1 ? 12 : month - 1)) ?? 1
  const last = sorted.find(month => !months.includes((month % 12) + 1)) ?? 12
  return first === last ? (MONTHS[first - 1] ?? '') : `${MONTHS[first - 1]} to ${MONTHS[last - 1]}`
}
