import type { BatteryPlan } from '../../plan/plan.ts'

/** "4 × AA alkaline"; "a new set" where nobody wrote what it takes. */
export function setText({ count, kind }: Pick<BatteryPlan, 'count' | 'kind'>): string {
  return kind === 'not stated' ? 'a new set' : `${count} × ${kind}`
}

/** "1 day", "17 days". */
export const daysText = (days: number): string => `${days} ${days === 1 ? 'day' : 'days'}`

/** What set the date, to stand in brackets. */
export const becauseText = ({ because }: Pick<BatteryPlan, 'because'>): string => because.replace(/ \((.+)\)$/u, ', $1')
