import { groupBy } from '../base/collections.ts'
import { linesOfData, placeOfLine } from '../load/lines.ts'
import type { Fault } from '../load/loaded.ts'
import type { RegisteredTag } from '../model/fleet.ts'
import type { FleetSources } from './read-fleet.ts'

/** Live tags of sites that have no folder, once for each site, at the first line that names it. */
export function goneSiteFaults(
  {
    folder,
    register,
    sites
  }: Pick<FleetSources, 'folder' | 'register'> & { readonly sites: readonly { readonly id: string }[] },
  tags: readonly RegisteredTag[]
): Fault[] {
  if (!register) return []
  const there = new Set(sites.map(one => one.id))
  const gone = tags.filter(one => one.state === 'live' && !there.has(one.site))
  const lines = linesOfData(register)
  return [...groupBy(gone, one => one.site)].map<Fault>(([site, own]) => ({
    code: 'tag/site-gone',
    subject: '',
    place: placeOfLine(lines, Number(own[0]?.at.path[0] ?? 1)),
    details: { site, folder, tags: own.map(one => one.tag) },
    fatal: false
  }))
}
