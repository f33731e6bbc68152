import { createHash } from 'node:crypto'
import { publicContext } from '../binder/context.ts'
import type { PageContext } from '../binder/context.ts'
import { makeBinder } from '../binder/make-binder.ts'
import { languageFile, makeBoxPage } from '../binder/make-box-page.ts'
import type { LabelWish } from '../binder/make-labels.ts'
import { makeLabelSheet } from '../binder/make-labels.ts'
import { makeSitePage } from '../binder/make-site-page.ts'
import type { BoxPage, LabelSheet } from '../binder/pages.ts'
import { isTag } from '../domain/tags/tag.ts'
import type { Box } from '../model/site.ts'
import type { Fleet } from '../model/fleet.ts'
import type { PagePlan } from '../render/eleventy-plan.ts'
import { wordsOf } from '../words/languages.ts'
import { roomyLabels } from './label-notes.ts'
import type { LabelTally } from './label-notes.ts'

/** The pages of one site, and the tags whose page is among them. */
export interface SitePages {
  readonly pages: readonly PagePlan[]
  readonly tags: readonly string[]
  readonly labels: LabelTally
}

/** Two boxes with one tag: the first keeps the page, be it of this site or of one whose name sorts before it. */
export function planSitePages(context: PageContext, fleet: Fleet, labelWish?: LabelWish): SitePages {
  const taken = new Set(
    fleet.sites.filter(one => one.id < context.site.id).flatMap(one => one.boxes.flatMap(box => box.tag ?? []))
  )
  const boxes = boxPages(context, taken, fleet)
  const labels = roomyLabels(makeLabelSheet(publicContext(context), labelWish), context.words)
  return {
    pages: [...boxes.pages, ...officePages(context, labels.sheet)],
    tags: boxes.tags,
    labels: { made: labels.sheet.labels.length, notes: labels.notes }
  }
}

function boxPages(context: PageContext, taken: Set<string>, fleet: Fleet): Pick<SitePages, 'pages' | 'tags'> {
  const { site, version } = context
  const boxes = site.boxes.flatMap(box => {
    const { tag } = box
    if (tag === undefined || !isTag(tag) || taken.has(tag)) return []
    taken.add(tag)
    return boxInLanguages({ ...box, tag }, context)
  })
  const own = new Set(boxes.map(page => page.tag))
  const gone = fleet.register.filter(entry => entry.site === site.id && !own.has(entry.tag)).map(entry => entry.tag)
  const offline = { version: contentVersion([version, boxes]), tags: [...own, ...gone] }
  const pages = boxes.map(page => ({
    path: `public/B/${page.tag}/${languageFile(page.language, indexOf(page, context))}`,
    template: 'box-page',
    data: { ...page, offline },
    from: `${site.at.file}, ${page.box}`
  }))
  return { pages, tags: [...own] }
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

function officePages(context: PageContext, labels: LabelSheet): PagePlan[] {
  const { id, at } = context.site
  const hasLabels = labels.labels.length > 0
  const page = (name: string, template: string, data: object): PagePlan => ({
    path: `office/${id}/${name}.html`,
    template,
    data,
    from: at.file
  })
  return [
    page('index', 'site', makeSitePage(context, hasLabels)),
    page('binder', 'binder', makeBinder(context)),
    ...(hasLabels ? [page('labels', 'labels', labels)] : [])
  ]
}
