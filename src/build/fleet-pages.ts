import type { FleetInput } from '../binder/make-fleet-page.ts'
import { makeFleetPage } from '../binder/make-fleet-page.ts'
import { makeFindingsPage } from '../binder/make-findings-page.ts'
import { makeGonePage } from '../binder/make-gone-page.ts'
import { makeMapPage } from '../binder/make-map-page.ts'
import { makeRoutePage } from '../binder/make-route-page.ts'
import { makeWaterPage } from '../binder/make-water-page.ts'
import type { TagEntryPage } from '../binder/pages.ts'
import type { Finding } from '../diagnostics/finding.ts'
import { isTag } from '../domain/tags/tag.ts'
import type { RegisteredTag } from '../model/fleet.ts'
import type { PagePlan } from '../render/eleventy-plan.ts'
import type { IsoDate } from '../units/date.ts'
import type { Words } from '../words/words.ts'
import { summaryOf } from './site-digest.ts'
import type { SiteDigest } from './site-digest.ts'

/** What the pages of the whole fleet are made from. */
export interface FleetWork {
  /** Folder of the sites, as messages print it. */
  readonly folder: string
  readonly on: IsoDate
  readonly register: readonly RegisteredTag[]
  /** Findings of no site. */
  readonly general: readonly Finding[]
  readonly digests: readonly SiteDigest[]
  /** Sites whose own pages are made this time. */
  readonly asked: ReadonlySet<string>
  /** Time on sites that a week holds, s; left out where nobody says. */
  readonly weekS?: number
  readonly words: Words
  readonly version: string
}

export interface FleetPages {
  readonly pages: readonly PagePlan[]
  /** Pages of tags whose site is not built this time: written only where the last output holds no page to carry over. */
  readonly fallbacks: readonly PagePlan[]
}

/** Days ahead that a route is made for, as the due list is where nothing else is asked for. */
const ROUTE_DAYS = 60

/** A tag that was issued always answers, whatever became of its box. */
export function planFleetPages(work: FleetWork): FleetPages {
  const { digests, asked, folder: from, general, on, weekS, words, version } = work
  const built = digests.flatMap(one => (one.built ? [one.built] : []))
  const taken = new Set(built.filter(one => asked.has(one.summary.id)).flatMap(one => one.tags))
  const { pages: gone, fallbacks } = gonePages(work, taken)
  const input: FleetInput = {
    built: digests.flatMap(one => summaryOf(one) ?? []),
    left: digests.filter(one => !one.built).map(({ id, findings }) => ({ id, findings })),
    on,
    words,
    version
  }
  return {
    fallbacks,
    pages: [
      ...gone,
      { path: 'public/index.html', template: 'tag-entry', data: tagEntry([...taken].sort(), words), from },
      { path: 'office/index.html', template: 'fleet', data: makeFleetPage(input), from },
      {
        path: 'office/route.html',
        template: 'route',
        data: makeRoutePage({
          sites: input.built,
          on,
          within: ROUTE_DAYS,
          words,
          version,
          ...(weekS === undefined ? {} : { weekS })
        }),
        from
      },
      { path: 'office/map.html', template: 'map', data: makeMapPage(input), from },
      { path: 'office/water.html', template: 'water', data: makeWaterPage(input), from },
      { path: 'office/findings.html', template: 'findings', data: makeFindingsPage(input, general), from }
    ]
  }
}

function gonePages({ register, digests, asked, folder, words }: FleetWork, taken: Set<string>): FleetPages {
  const pages: PagePlan[] = []
  const fallbacks: PagePlan[] = []
  const titles = new Map(digests.flatMap(({ id, built }) => (built ? [[id, built.summary.title]] : [])))
  for (const entry of register) {
    if (taken.has(entry.tag) || !isTag(entry.tag)) continue
    taken.add(entry.tag)
    const page = {
      path: `public/B/${entry.tag}/index.html`,
      template: 'gone',
      data: makeGonePage(entry, titles.get(entry.site) ?? entry.site, words),
      from: `${folder}/tags.csv`
    }
    const elsewhere = entry.state === 'live' && !(titles.has(entry.site) && asked.has(entry.site))
    if (elsewhere) fallbacks.push(page)
    else pages.push(page)
  }
  return { pages, fallbacks }
}

function tagEntry(tags: readonly string[], words: Words): TagEntryPage {
  return { language: words.language, ...words.office.entry, tags }
}
