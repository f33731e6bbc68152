import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { groupBy } from '../base/collections.ts'
import type { LabelWish } from '../binder/make-labels.ts'
import type { PageContext } from '../binder/context.ts'
import type { RegisteredTag } from '../model/fleet.ts'
import type { FleetSources, SiteSources } from './read-fleet.ts'
import { tagsOfSites } from './rivals.ts'
import { sharedUses } from './shared-uses.ts'
import type { SharedWork, SiteUnit } from './site-unit.ts'

/** What is printed shapes pages too: they link to prints, and labels are laid out for their sheets. */
export interface PrintsOfUnits {
  readonly printsOf: (site: string) => PageContext['prints']
  readonly labelWish: LabelWish | undefined
}

/** The fleet parted into sites that can be made one by one, each with the key under which its outputs are kept. */
export function planUnits(
  sources: FleetSources,
  register: readonly RegisteredTag[],
  common: SharedWork,
  { printsOf, labelWish }: PrintsOfUnits
): SiteUnit[] {
  const tags = tagsOfSites(sources)
  const slices = registerSlices(register)
  const names = sources.shared.map(one => one.file)
  // Hashed once, not for every site that it leads to.
  const shared = new Map(sources.shared.map(one => [one, hash(JSON.stringify(one))]))
  const frame = [common.mark, common.on, common.publicAddress, common.registerGone, names]
  return sources.sites.map(site => {
    const { tags: own = [], rivals = [] } = tags.get(site.id) ?? {}
    const unit = {
      sources: site,
      register: slices(site.id, own),
      rivals,
      prints: printsOf(site.id),
      ...(labelWish ? { labelWish } : {})
    }
    const content = [
      frame,
      unit.sources,
      unit.register,
      unit.prints,
      labelWish ?? '',
      sharedUses(site, sources.shared).map(one => shared.get(one)),
      fileHashes(site),
      rivals.length > 0 ? [rivals, sources.shared] : []
    ]
    return { ...unit, key: hash(JSON.stringify(content)) }
  })
}

/**
 * What the register says of a site and of the tags it carries, in the order of the register. Without line numbers: a line more above would
 * otherwise make every site anew, and no page or finding shows them.
 */
function registerSlices(
  register: readonly RegisteredTag[]
): (site: string, tags: readonly string[]) => RegisteredTag[] {
  const entries = register.map((entry, order) => ({ order, entry: { ...entry, at: { ...entry.at, path: [] } } }))
  const bySite = groupBy(entries, one => one.entry.site)
  const byTag = groupBy(entries, one => one.entry.tag)
  return (site, tags) => {
    const found = new Set([...(bySite.get(site) ?? []), ...tags.flatMap(tag => byTag.get(tag) ?? [])])
    return [...found].sort((a, b) => a.order - b.order).map(one => one.entry)
  }
}

/** Pictures and drawings of a site by what is in them. */
function fileHashes({ folder, others }: SiteSources): readonly string[] {
  return others.map(path => hash(bytesOf(join(folder, path))))
}

function bytesOf(path: string): Uint8Array | string {
  try {
    return readFileSync(path)
  } catch {
    return 'cannot be read'
  }
}

function hash(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex')
}
