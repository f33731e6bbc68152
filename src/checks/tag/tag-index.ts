import { groupBy } from '../../base/collections.ts'
import type { Fleet, RegisteredTag } from '../../model/fleet.ts'
import type { Box, Site } from '../../model/site.ts'

export interface TagHolder {
  readonly site: string
  readonly box: string
}

export interface TagIndex {
  /** Boxes that carry a tag, by tag, those of a site whose name sorts first before the others. */
  readonly holders: ReadonlyMap<string, readonly TagHolder[]>
  readonly registered: ReadonlyMap<string, RegisteredTag>
  readonly bySite: ReadonlyMap<string, readonly RegisteredTag[]>
}

const known = new WeakMap<Fleet, TagIndex>()

/** The tags of a fleet, looked up once: thousands of sites ask for thousands of tags. */
export function tagIndex(fleet: Fleet): TagIndex {
  const index = known.get(fleet) ?? makeIndex(fleet)
  known.set(fleet, index)
  return index
}

function makeIndex({ sites, register }: Fleet): TagIndex {
  const holders = new Map<string, TagHolder[]>()
  for (const site of [...sites].sort(byId))
    for (const { tag, id } of site.boxes)
      if (tag !== undefined) holders.set(tag, [...(holders.get(tag) ?? []), { site: site.id, box: id }])
  const registered = new Map<string, RegisteredTag>()
  for (const entry of register) if (!registered.has(entry.tag)) registered.set(entry.tag, entry)
  return { holders, registered, bySite: groupBy(register, one => one.site) }
}

const byId = (a: Site, b: Site): number => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)

/** The tag that the register holds for a box and that no box of the site carries: most likely the one on its label. */
export function registeredTag(box: Box, site: Site, register: readonly RegisteredTag[]): string | undefined {
  const held = new Set(site.boxes.map(one => one.tag))
  return register.find(one => one.site === site.id && one.box === box.id && one.state === 'live' && !held.has(one.tag))
    ?.tag
}
