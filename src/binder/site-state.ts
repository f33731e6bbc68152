import type { DueItem } from './due-items.ts'

/** The worst of what is due on a site: overdue before no date before soon. */
export function siteState(due: readonly DueItem[]): 'bad' | 'soon' | 'unknown' | 'good' {
  const states = new Set(due.map(one => one.state))
  if (states.has('overdue')) return 'bad'
  if (states.has('no-date')) return 'unknown'
  return states.has('due-soon') ? 'soon' : 'good'
}
