import type { SourceText } from '../load/loaded.ts'
import { loadOne } from './load-one.ts'
import type { FleetSources, SiteSources } from './read-fleet.ts'
import { tagTokens } from './tag-tokens.ts'

export interface TagsOfSite {
  readonly tags: readonly string[]
  /** Other sites that carry one of them, in order. */
  readonly rivals: readonly SiteSources[]
}

/** For each site what may be its tags, and who else carries one. A site is read for it only where its text does not tell. */
export function tagsOfSites({
  sites,
  shared
}: Pick<FleetSources, 'sites' | 'shared'>): ReadonlyMap<string, TagsOfSite> {
  const tags = new Map(sites.map(one => [one.id, tagsOf(one, shared)]))
  const carriers = new Map<string, SiteSources[]>()
  for (const one of sites)
    for (const tag of new Set(tags.get(one.id))) carriers.set(tag, [...(carriers.get(tag) ?? []), one])
  return new Map(
    sites.map(one => {
      const own = tags.get(one.id) ?? []
      const others = new Set(own.flatMap(tag => carriers.get(tag) ?? []))
      others.delete(one)
      return [one.id, { tags: own, rivals: sites.filter(other => others.has(other)) }]
    })
  )
}

function tagsOf(sources: SiteSources, shared: readonly SourceText[]): readonly string[] {
  const { tokens, opaque } = tagTokens(sources.site?.text ?? '')
  if (!opaque) return tokens
  const { site } = loadOne(sources, { shared })
  return [...new Set([...tokens, ...(site?.boxes ?? []).flatMap(box => box.tag ?? [])])]
}
