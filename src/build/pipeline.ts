import { existsSync } from 'node:fs'
import { join } from 'node:path'
import type { PageContext } from '../binder/context.ts'
import { contextOf } from './page-context.ts'
import { makeRestrictedSheet } from '../binder/make-restricted.ts'
import { Refusal } from '../base/refusal.ts'
import { renderPages } from '../render/eleventy.ts'
import type { PagePlan } from '../render/eleventy-plan.ts'
import { publicScripts } from '../render/page-script.ts'
import { EN_US } from '../words/words.ts'
import { assessFleet, refuseUnknownSites } from './assess.ts'
import type { Assessment } from './assess.ts'
import { dataOutputs } from './data-outputs.ts'
import { withStage } from './output-stage.ts'
import type { OutputReport, Stage } from './output-stage.ts'
import { attachmentOutputs, readAttachments } from './attachments.ts'
import { planPages } from './page-plans.ts'
import { photoOutputs, withPhotosThere } from './photos.ts'
import { leaksBelow } from './privacy-gate.ts'
import { toolVersion } from './tool-version.ts'
import { printDocuments } from './print-documents.ts'
import type { DocumentToPrint, PrintReport } from './print-documents.ts'
import { publicAddressOf } from './public-address.ts'
import type { IsoDate } from '../units/date.ts'

export interface BuildWish {
  readonly sites: string
  readonly out: string
  readonly on: IsoDate
  readonly only?: readonly string[]
  readonly print?: { readonly binders: boolean; readonly labels: boolean; readonly restricted: boolean }
  readonly onPrinted?: (pdf: string, how: 'printed' | 'reused' | 'failed') => void
}

export interface BuildResult {
  readonly assessment: Assessment
  readonly built: readonly string[]
  readonly leftOut: readonly string[]
  readonly report: OutputReport
  readonly prints?: PrintReport
}

/**
 * Reads, plans, checks, renders and writes; prints too where asked. All sites are read, so that the fleet page and the tags are whole; the
 * pages of sites that were not asked for are carried over. The old output stays until the new one is whole.
 */
export async function buildFleet(wish: BuildWish): Promise<BuildResult> {
  const assessment = assessFleet(wish.sites, wish.on)
  refuseLostRegister(assessment)
  const asked = askedOf(assessment, wish.only ?? [])
  const address = publicAddressOf(assessment)
  const contexts = await Promise.all(
    assessment.sites
      .flatMap(one =>
        contextOf(one, address, printsOf(one.id, wish)).map(context => ({ context, sources: one.sources }))
      )
      .map(async ({ context, sources }) => ({ ...context, attachments: await readAttachments(context.site, sources) }))
  )
  const built = contexts.filter(one => asked.has(one.site.id))
  const planned = planPages({ assessment, contexts, asked, words: EN_US, version: toolVersion() })
  const pages = await renderPages([...planned.pages, ...planned.fallbacks])
  const fallbacks = new Set(planned.fallbacks.map(one => one.path))
  const { result: prints, report } = await withStage(wish.out, async stage => {
    for (const { path, html } of pages) if (!fallbacks.has(path)) stage.write({ path, content: html })
    for (const { site, sources } of assessment.sites)
      if (site && asked.has(site.id))
        for (const file of [
          ...photoOutputs(withPhotosThere(site, sources), sources),
          ...attachmentOutputs(site, sources)
        ])
          stage.write(file)
    for (const file of publicScripts()) stage.write(file)
    for (const file of dataOutputs(assessment, contexts)) stage.write(file)
    stage.keep(keptPatterns(assessment, built, wish))
    for (const { path, html } of pages)
      if (fallbacks.has(path) && !existsSync(join(stage.folder, path))) stage.write({ path, content: html })
    refuseLeaks(stage.folder, assessment)
    return wish.print ? printAll(stage, built, wish, address) : undefined
  })
  const leftOut = assessment.sites.filter(one => asked.has(one.id) && !one.site).map(one => one.id)
  return { assessment, built: built.map(one => one.site.id), leftOut, report, ...(prints ? { prints } : {}) }
}

const PRINTS = ['binder', 'labels', 'restricted'] as const

function askedOf({ sources, sites }: Assessment, only: readonly string[]): ReadonlySet<string> {
  refuseUnknownSites(sources, only)
  return new Set(only.length > 0 ? only : sites.map(one => one.id))
}

/** Those that this build prints, and those that an earlier one left standing. */
function printsOf(site: string, { out, print }: BuildWish): PageContext['prints'] {
  const asked = { binder: print?.binders === true, labels: print?.labels === true }
  return (['binder', 'labels'] as const).filter(
    name => asked[name] || existsSync(join(out, `print/${site}-${name}.pdf`))
  )
}

async function printAll(
  stage: Stage,
  contexts: readonly PageContext[],
  { print, onPrinted, on }: BuildWish,
  base: string
): Promise<PrintReport> {
  const documents = contexts.flatMap<DocumentToPrint>(({ site }) => {
    const one = (name: string): DocumentToPrint => ({
      html: `office/${site.id}/${name}.html`,
      pdf: `print/${site.id}-${name}.pdf`,
      paper: site.paper,
      on
    })
    return [
      ...(print?.binders ? [one('binder')] : []),
      ...(print?.labels && site.boxes.some(box => box.tag) ? [one('labels')] : []),
      ...(print?.restricted ? [one('restricted')] : [])
    ]
  })
  if (print?.restricted) await stageRestricted(stage, contexts)
  return printDocuments(stage, documents, { base, ...(onPrinted ? { onDone: onPrinted } : {}) })
}

/** The restricted sheet has a page only while it is asked for: the next build without the option takes it away again. */
async function stageRestricted(stage: Stage, contexts: readonly PageContext[]): Promise<void> {
  const plans = contexts.map<PagePlan>(context => ({
    path: `office/${context.site.id}/restricted.html`,
    template: 'binder',
    data: makeRestrictedSheet(context)
  }))
  for (const { path, html } of await renderPages(plans)) stage.write({ path, content: html })
}

/**
 * Last good outputs of sites that were left out, and of those not asked for. Prints of sites that were only built stay too: the
 * foot of each page says of which day they are.
 */
function keptPatterns({ sources, fleet }: Assessment, built: readonly PageContext[], { print }: BuildWish): string[] {
  const ids = sources.sites.map(one => one.id)
  const carried = ids.filter(id => !built.some(one => one.site.id === id))
  return [
    ...carried.flatMap(id => [`office/${id}/*`, ...PRINTS.map(name => `print/${id}-${name}.pdf`)]),
    ...fleet.register.filter(entry => carried.includes(entry.site)).map(entry => `public/B/${entry.tag}/*`),
    ...ids.flatMap(id => [
      ...(print?.binders ? [] : [`print/${id}-binder.pdf`]),
      ...(print?.labels ? [] : [`print/${id}-labels.pdf`])
    ])
  ]
}

/** Without the register the pages of tags that are retired, moved or replaced would be taken away, and printed codes lead nowhere. */
function refuseLostRegister({ sources, fleet, general }: Assessment): void {
  const [first] = general
  if (!sources.register || fleet.register.length > 0 || !first) return
  throw new Refusal(
    `${first.place.file}: ${first.message}`,
    `${first.fix} Nothing was written: a tag that was issued always keeps its page.`
  )
}

function refuseLeaks(folder: string, { fleet }: Assessment): void {
  const leaks = leaksBelow(folder, fleet.sites)
  if (leaks.length === 0) return
  throw new Refusal(
    'Nothing was written: a private word would stand on a page that anybody can open.',
    ...leaks.slice(0, 8).map(one => `  ${one.path} holds the private "${one.label}" of ${one.site}.`),
    'Run "underlid check": privacy/private-word-public names the line to change.'
  )
}
