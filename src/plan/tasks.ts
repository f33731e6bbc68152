import type { TaskKind } from '../domain/dates/task-kind.ts'
import type { Site } from '../model/site.ts'
import type { VisitPart } from '../model/visit-facts.ts'
import type { IsoDate } from '../units/date.ts'
import { maintenanceTasks } from './tasks-maintenance.ts'
import { phaseTasks } from './tasks-phases.ts'
import { seasonTasks } from './tasks-season.ts'
import { warrantyTasks } from './tasks-warranty.ts'

/** Something dated that has to be done on a site, beside batteries and backflow tests. */
export interface SiteTask {
  readonly kind: TaskKind
  /** The writer's own name of it, where there is one. */
  readonly task?: string
  /** A box, a zone, the item of a warranty; the site itself where nothing is named. */
  readonly subject: string
  readonly box?: string
  /** Absent: nobody wrote a date to count from. */
  readonly dueOn?: IsoDate
  readonly minutesS?: number
  readonly tools?: readonly string[]
  readonly parts?: readonly VisitPart[]
  /** Where it comes again on fixed days, counted from `anchor`. */
  readonly repeats?: { readonly months: number; readonly days: number; readonly anchor: IsoDate }
}

/** Everything dated on a site but batteries and backflow tests. A site that is out of service or removed has nothing due. */
export function planTasks(site: Site, on: IsoDate): SiteTask[] {
  if (site.status === 'removed' || site.status === 'out-of-service') return []
  const stated = maintenanceTasks(site, on)
  const kinds = new Set((site.maintenance ?? []).map(one => one.task))
  return [...stated, ...seasonTasks(site, on, kinds), ...warrantyTasks(site, on), ...phaseTasks(site, on, kinds)]
}
