import type { PageContext } from '../binder/context.ts'
import { makeBinder } from '../binder/make-binder.ts'
import { makeBoxPage } from '../binder/make-box-page.ts'
import { makeFleetPage } from '../binder/make-fleet-page.ts'
import { makeGonePage } from '../binder/make-gone-page.ts'
import { makeLabelSheet } from '../binder/make-labels.ts'
import { makeSitePage } from '../binder/make-site-page.ts'
import type { TagEntryPage } from '../binder/pages.ts'
import type { RegisteredTag } from '../model/fleet.ts'
import type { PagePlan } from '../render/eleventy-plan.ts'
import type { Words } from '../words/words.ts'
import type { Assessment } from './assess.ts'
import { isTag } from '../domain/tags/tag.ts'

/** Every page of a build, as plain objects for the templates. Two boxes with one tag: the first keeps the page. */
export function planPages(
  assessment: Assessment,
  contexts: readonly PageContext[],
  words: Words,
  version: string
): PagePlan[] {
  const taken = new Set<string>()
  const boxes = contexts.flatMap(context => boxPages(context, taken))
  return [
    ...boxes,
    ...gonePages(assessment, taken, words),
    {
      path: 'public/index.html',
      template: 'tag-entry',
      data: tagEntry([...taken].sort(), words),
      from: 'the register of tags'
    },
    ...contexts.flatMap(context => sitePages(context)),
    {
      path: 'office/index.html',
      template: 'fleet',
      data: fleetPage(assessment, contexts, words, version),
      from: assessment.sources.folder
    }
  ]
}

function boxPages(context: PageContext, taken: Set<string>): PagePlan[] {
  return context.site.boxes.flatMap(box => {
    const { tag } = box
    if (tag === undefined || !isTag(tag) || taken.has(tag)) return []
    taken.add(tag)
    return [
      {
        path: `public/B/${tag}/index.html`,
        template: 'box-page',
        data: makeBoxPage({ ...box, tag }, context),
        from: `${context.site.at.file}, ${box.id}`
      }
    ]
  })
}

/** A tag that was issued always answers, whatever became of its box or of its site's file. */
function gonePages({ fleet, sources, sites }: Assessment, taken: Set<string>, words: Words): PagePlan[] {
  const kept = new Set(sites.filter(one => !one.site).map(one => one.id))
  const title = (entry: RegisteredTag) => fleet.sites.find(site => site.id === entry.site)?.title ?? entry.site
  return fleet.register.flatMap(entry => {
    // The last good page of a site that could not be read is carried over instead.
    if (taken.has(entry.tag) || !isTag(entry.tag) || (entry.state === 'live' && kept.has(entry.site))) return []
    taken.add(entry.tag)
    return [
      {
        path: `public/B/${entry.tag}/index.html`,
        template: 'gone',
        data: makeGonePage(entry, title(entry), words),
        from: `${sources.folder}/tags.csv`
      }
    ]
  })
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
    page('labels', 'labels', makeLabelSheet(context))
  ]
}

function fleetPage(assessment: Assessment, built: readonly PageContext[], words: Words, version: string): object {
  const left = assessment.sites.filter(one => !one.site).map(({ id, findings }) => ({ id, findings }))
  return makeFleetPage({ built, left, on: assessment.on, words, version })
}
