import { createHash } from 'node:crypto'
import { publicContext } from '../binder/context.ts'
import type { PageContext } from '../binder/context.ts'
import { makeBinder } from '../binder/make-binder.ts'
import { languageFile, makeBoxPage } from '../binder/make-box-page.ts'
import { makeFleetPage } from '../binder/make-fleet-page.ts'
import type { FleetInput } from '../binder/make-fleet-page.ts'
import { makeFindingsPage } from '../binder/make-findings-page.ts'
import { makeGonePage } from '../binder/make-gone-page.ts'
import { makeLabelSheet } from '../binder/make-labels.ts'
import { makeRoutePage } from '../binder/make-route-page.ts'
import { makeSitePage } from '../binder/make-site-page.ts'
import type { BoxPage, TagEntryPage } from '../binder/pages.ts'
import type { Box } from '../model/site.ts'
import type { RegisteredTag } from '../model/fleet.ts'
import type { PagePlan } from '../render/eleventy-plan.ts'
import { wordsOf } from '../words/languages.ts'
import type { Words } from '../words/words.ts'
import type { Assessment } from './assess.ts'
import { isTag } from '../domain/tags/tag.ts'

/** The pages of a build, as plain objects for the templates. */
export interface PlannedPages {
  readonly pages: readonly PagePlan[]
  /** Pages of tags whose site is not built this time: written only where the last output holds no page to carry over. */
  readonly fallbacks: readonly PagePlan[]
}

export interface PagesWish {
  readonly assessment: Assessment
  /** Every site that could be understood: the fleet page tells of all. */
  readonly contexts: readonly PageContext[]
  /** Sites whose own pages are made. */
  readonly asked: ReadonlySet<string>
  readonly words: Words
  readonly version: string
}

/** Two boxes with one tag: the first keeps the page. A tag that was issued always answers, whatever became of its box. */
export function planPages(wish: PagesWish): PlannedPages {
  const { assessment, contexts, asked, words, version } = wish
  const taken = new Set<string>()
  const built = contexts.filter(context => asked.has(context.site.id))
  const boxes = built.flatMap(context => boxPages(context, taken, assessment, version))
  const { pages: gone, fallbacks } = gonePages(assessment, built, taken, words)
  const from = assessment.sources.folder
  return {
    fallbacks,
    pages: [
      ...boxes,
      ...gone,
      { path: 'public/index.html', template: 'tag-entry', data: tagEntry([...taken].sort(), words), from },
      ...built.flatMap(sitePages),
      { path: 'office/index.html', template: 'fleet', data: makeFleetPage(fleetInput(wish)), from },
      { path: 'office/route.html', template: 'route', data: routePage(wish), from },
      {
        path: 'office/findings.html',
        template: 'findings',
        data: makeFindingsPage(fleetInput(wish), assessment.general),
        from
      }
    ]
  }
}

function boxPages(context: PageContext, taken: Set<string>, { fleet }: Assessment, version: string): PagePlan[] {
  const { site } = context
  const boxes = site.boxes.flatMap(box => {
    const { tag } = box
    if (tag === undefined || !isTag(tag) || taken.has(tag)) return []
    taken.add(tag)
    return boxInLanguages({ ...box, tag }, context)
  })
  const own = new Set(boxes.map(page => page.tag))
  const gone = fleet.register.filter(entry => entry.site === site.id && !own.has(entry.tag)).map(entry => entry.tag)
  const offline = { version: contentVersion([version, boxes]), tags: [...own, ...gone] }
  return boxes.map(page => ({
    path: `public/B/${page.tag}/${languageFile(page.language, indexOf(page, context))}`,
    template: 'box-page',
    data: { ...page, offline },
    from: `${site.at.file}, ${page.box}`
  }))
}

/** One page for each language of the site. */
function boxInLanguages(box: Box & { readonly tag: string }, context: PageContext): BoxPage[] {
  const { languages = [context.words.language] } = context.site
  return languages.map(language => makeBoxPage(box, { ...publicContext(context), words: wordsOf(language) }))
}

function indexOf(page: BoxPage, { site }: PageContext): number {
  return Math.max(0, site.languages?.indexOf(page.language) ?? 0)
}

/** Another one for any change of what the pages say, so that a phone fetches them anew, and only then. */
function contentVersion(content: unknown): string {
  return createHash('sha256').update(JSON.stringify(content)).digest('hex').slice(0, 12)
}

function gonePages(
  { fleet, sources }: Assessment,
  built: readonly PageContext[],
  taken: Set<string>,
  words: Words
): PlannedPages {
  const pages: PagePlan[] = []
  const fallbacks: PagePlan[] = []
  const title = (entry: RegisteredTag) => fleet.sites.find(site => site.id === entry.site)?.title ?? entry.site
  for (const entry of fleet.register) {
    if (taken.has(entry.tag) || !isTag(entry.tag)) continue
    taken.add(entry.tag)
    const data = makeGonePage(entry, title(entry), words)
    const page = {
      path: `public/B/${entry.tag}/index.html`,
      template: 'gone',
      data,
      from: `${sources.folder}/tags.csv`
    }
    const elsewhere = entry.state === 'live' && !built.some(context => context.site.id === entry.site)
    if (elsewhere) fallbacks.push(page)
    else pages.push(page)
  }
  return { pages, fallbacks }
}

function tagEntry(tags: readonly string[], words: Words): TagEntryPage {
  return { language: words.language, ...words.office.entry, tags }
}

function sitePages(context: PageContext): PagePlan[] {
  const { id, at } = context.site
  const page = (name: string, template: string, data: object): PagePlan => ({
    path: `office/${id}/${name}.html`,
    template,
    data,
    from: at.file
  })
  return [
    page('index', 'site', makeSitePage(context)),
    page('binder', 'binder', makeBinder(context)),
    page('labels', 'labels', makeLabelSheet(publicContext(context)))
  ]
}

/** Days ahead that a route is made for, as the due list is where nothing else is asked for. */
const ROUTE_DAYS = 60

function routePage({ assessment, contexts, words, version }: PagesWish): object {
  return makeRoutePage({ contexts, on: assessment.on, within: ROUTE_DAYS, words, version })
}

function fleetInput({ assessment, contexts, words, version }: PagesWish): FleetInput {
  const left = assessment.sites.filter(one => !one.site).map(({ id, findings }) => ({ id, findings }))
  return { built: contexts, left, on: assessment.on, words, version }
}
