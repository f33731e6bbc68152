import type { PageContext } from './context.ts'
import { hasThreeLeads } from './unit-facts.ts'
import { openJobs } from '../plan/open-jobs.ts'
import type { Controller, Station } from '../model/site.ts'

/** What the form of a visit asks of this box beside what it asks of every one. */
export interface VisitAsks {
  /** What earlier visits left open, in their words: ticked where it is done now. */
  readonly jobs: readonly string[]
  /** The set in each controller, "1 × 9 V alkaline"; none of a controller of which it is not stated. */
  readonly sets: Readonly<Record<string, string>>
  /** Stations whose coils are read twice: common to open, common to close. */
  readonly threeLeads: readonly string[]
}

export function visitAsks(
  { site, plan }: Pick<PageContext, 'site' | 'plan'>,
  stations: readonly Station[],
  controllers: readonly Controller[]
): VisitAsks {
  const batteries = controllers.flatMap(one => plan.batteries.get(one.id) ?? [])
  return {
    jobs: openJobs(site, plan.on).map(job => job.text),
    sets: Object.fromEntries(
      batteries
        .filter(one => one.count > 0 && one.kind !== 'not stated')
        .map(one => [one.controller, `${one.count} × ${one.kind}`])
    ),
    threeLeads: stations.filter(hasThreeLeads).map(one => one.id)
  }
}
