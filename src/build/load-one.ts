import type { LoadedSite } from '../load/loaded.ts'
import { loadSite } from '../load/site.ts'
import type { FleetSources, SiteSources } from './read-fleet.ts'

/** A site from its texts. */
export function loadOne(one: SiteSources, { shared }: Pick<FleetSources, 'shared'>): LoadedSite {
  const files = [...(one.site ? [one.site] : []), ...one.visits]
  return loadSite({ id: one.id, files, tables: one.tables ?? [], plans: one.plans ?? [], shared, others: one.others })
}
