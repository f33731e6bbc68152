import type { Run } from '../../domain/schedule/program.ts'
import type { Controller, Site } from '../../model/site.ts'
import { legalRunsOf } from '../../plan/legal-runs.ts'
import type { SchedulePlan } from '../../plan/plan.ts'
import { MONTHS } from '../../units/date.ts'

/** What a rule is held against: when the water runs by the legal clock, and what to say where the controller's clock is another. */
export interface ToldRuns {
  readonly runs: readonly Run[]
  /** A sentence with a space before it; empty where the clock is right. */
  readonly note: string
}

export function legalRuns(site: Site, controller: Controller, schedule: SchedulePlan | undefined): ToldRuns {
  const { runs, behind } = legalRunsOf(site, controller, schedule?.runs ?? [])
  if (!behind) return { runs, note: '' }
  const { minutes, months } = behind
  return {
    runs,
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
