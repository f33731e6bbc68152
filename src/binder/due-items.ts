import type { PageContext } from './context.ts'
import { isAbsent, isPresent } from '../base/absent.ts'
import { daysBetween } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'

export interface DueItem {
  readonly site: string
  readonly siteTitle: string
  readonly box?: string
  readonly subject: string
  readonly kind: 'battery' | 'backflow'
  readonly what: string
  readonly dueOn?: IsoDate
  readonly state: 'overdue' | 'due-soon' | 'no-date' | 'ok'
  readonly needs: readonly { readonly item: string; readonly count: number }[]
}

/** Days ahead that count as soon. */
const SOON = 60

/** Everything dated on a site: batteries and backflow tests. A site that is out of service or removed has nothing due. */
export function dueItems({ site, plan, words }: PageContext): DueItem[] {
  if (site.status === 'removed' || site.status === 'out-of-service') return []
  const head = { site: site.id, siteTitle: site.title }
  const batteries = [...plan.batteries.values()].flatMap<DueItem>(battery => {
    if (battery.state === 'none') return []
    const box = site.controllers.find(one => one.id === battery.controller)?.box
    return [
      {
        ...head,
        ...(box ? { box } : {}),
        subject: battery.controller,
        kind: 'battery',
        what: words.office.battery(battery.count, battery.kind),
        ...(isPresent(battery.dueOn) ? { dueOn: battery.dueOn } : {}),
        state: battery.state,
        needs: [{ item: battery.kind, count: battery.count }]
      }
    ]
  })
  const tests = site.supplies.flatMap<DueItem>(supply => {
    const due = plan.backflows.get(supply.id)
    if (!due || !supply.backflow || supply.backflow.reason) return []
    const item = { ...head, subject: supply.id, kind: 'backflow' as const, what: words.office.backflow, needs: [] }
    if (isAbsent(due.dueOn)) return [{ ...item, state: 'no-date' }]
    const left = daysBetween(plan.on, due.dueOn)
    return [{ ...item, dueOn: due.dueOn, state: left < 0 ? 'overdue' : left <= SOON ? 'due-soon' : 'ok' }]
  })
  return [...batteries, ...tests]
}
