import type { DueItem } from '../binder/due-items.ts'
import type { PageContext } from '../binder/context.ts'
import { dueIcs } from '../export/due-ics.ts'
import type { IsoDate } from '../units/date.ts'
import { EN_US } from '../words/words.ts'
import type { SiteDigest } from './site-digest.ts'
import { toolVersion } from './tool-version.ts'

/** What an event needs to know of its site. */
export interface CalendarSite {
  readonly site: Pick<PageContext['site'], 'id' | 'location'>
  readonly publicAddress: string
}

export function calendarSites(digests: readonly SiteDigest[], publicAddress: string): CalendarSite[] {
  return digests.flatMap(({ id, built }) =>
    built ? [{ site: { id, ...(built.location ? { location: built.location } : {}) }, publicAddress }] : []
  )
}

/** The due list as a calendar feed. Its identities carry the host of the public address, which printed labels depend on already. */
export function calendarOf(items: readonly DueItem[], contexts: readonly CalendarSite[], on: IsoDate): string {
  const places = new Map(contexts.map(({ site }) => [site.id, site.location ?? {}]))
  const host = (contexts[0]?.publicAddress ?? '')
    .replace(/^[A-Z]+:\/\//iu, '')
    .replace(/[/:].*$/u, '')
    .toLowerCase()
  return dueIcs(items, {
    on,
    words: EN_US,
    version: toolVersion(),
    host: host || 'underlid.invalid',
    placeOf: site => places.get(site) ?? {}
  })
}
