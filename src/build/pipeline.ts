import { existsSync } from 'node:fs'
import { join } from 'node:path'
import type { PageContext } from '../binder/context.ts'
import { makeChartsPage } from '../binder/make-charts.ts'
import { makeRestrictedSheet } from '../binder/make-restricted.ts'
import { Refusal } from '../base/refusal.ts'
import type { Finding } from '../diagnostics/finding.ts'
import { sortFindings } from '../diagnostics/finding.ts'
import { renderPages } from '../render/eleventy.ts'
import type { PagePlan } from '../render/eleventy-plan.ts'
import { publicScripts } from '../render/page-script.ts'
import { EN_US } from '../words/words.ts'
import { refuseUnknownSites } from './assess.ts'
import { dataOutputs } from './data-outputs.ts'
import { planFleetPages } from './fleet-pages.ts'
import type { FleetWork } from './fleet-pages.ts'
import { readKeptFleet } from './kept-fleet.ts'
import type { KeptFleet } from './kept-fleet.ts'
import { readWordsLookedFor, writeWordsLookedFor } from './kept-words.ts'
import { makeUnits } from './make-units.ts'
import type { MadeUnits } from './make-units.ts'
import { withStage } from './output-stage.ts'
import type { OutputReport, Stage } from './output-stage.ts'
import { filesBelow } from './output-files.ts'
import type { Leak, PrivateWordOf } from './privacy-gate.ts'
import { cacheFolder, forgetOthers } from './site-cache.ts'
import type { BuiltDigest, SiteDigest } from './site-digest.ts'
import type { SiteUnit } from './site-unit.ts'
import { contextsOf } from './site-work.ts'
import { toolVersion } from './tool-version.ts'
import type { DocumentToPrint, PrintReport } from './print-documents.ts'
import type { IsoDate } from '../units/date.ts'
import { FILES_A_TASK, tasksOf } from './work-order.ts'
import { workThrough } from './work-pool.ts'

export interface BuildWish {
  readonly sites: string
  readonly out: string
  readonly on: IsoDate
  readonly only?: readonly string[]
  readonly print?: {
    readonly binders: boolean
    readonly labels: boolean
    readonly charts?: boolean
    readonly restricted: boolean
  }
  readonly onPrinted?: (pdf: string, how: 'printed' | 'reused' | 'failed') => void
  readonly onSite?: (done: number, of: number) => void
  /** Left out: that of this program and its templates. */
  readonly mark?: string
}

export interface BuildResult {
  readonly on: IsoDate
  readonly findings: readonly Finding[]
  readonly built: readonly string[]
  readonly leftOut: readonly string[]
  /** Sites made anew, and those taken over since nothing that shapes them changed. */
  readonly made: readonly string[]
  readonly same: readonly string[]
  readonly notAsked: readonly string[]
  readonly report: OutputReport
  readonly prints?: PrintReport
}

/**
 * Reads, plans, checks, renders and writes; prints too where asked. All sites are read, so that the fleet page and the tags are whole; a site is
 * planned and rendered again only where something that shapes it changed, and the pages of sites that were not asked for are carried over. The old
 * output stays until the new one is whole.
 */
export async function buildFleet(wish: BuildWish): Promise<BuildResult> {
  const fleet = readKeptFleet(wish.sites, wish.on, site => printsOf(site, wish), wish.mark)
  const { sources, units, common } = fleet
  refuseUnknownSites(sources, wish.only ?? [])
  const ids = sources.sites.map(one => one.id)
  const asked = new Set(wish.only && wish.only.length > 0 ? wish.only : ids)
  const cache = cacheFolder(wish.out)
  const { result, report } = await withStage(wish.out, async stage => {
    const sites = await makeUnits(
      { units, asked, common, cache, ...(wish.onSite ? { onSite: wish.onSite } : {}) },
      stage
    )
    const work = fleetWork(fleet, sites.digests, asked, wish.on)
    const words = await writeFleet(stage, fleet, work, sites, cache, wish)
    const printing = { stage, fleet, digests: sites.digests.filter(one => asked.has(one.id)), wish }
    return { sites, work, words, prints: wish.print ? await printAll(printing) : undefined }
  })
  const { sites, work, words, prints } = result
  writeWordsLookedFor(cache, common.mark, words)
  sites.keep(wish.out)
  forgetOthers(cache, new Set(ids))
  const isBuilt = (one: SiteDigest): boolean => asked.has(one.id) && one.built !== undefined
  return {
    on: wish.on,
    findings: sortFindings([...work.general, ...sites.digests.flatMap(one => one.findings)]),
    built: sites.digests.filter(isBuilt).map(one => one.id),
    leftOut: sites.digests.filter(one => asked.has(one.id) && !one.built).map(one => one.id),
    made: sites.made,
    same: sites.same,
    notAsked: ids.filter(id => !asked.has(id)),
    report,
    ...(prints ? { prints } : {})
  }
}

const PRINTS = ['binder', 'labels', 'charts', 'restricted'] as const

function fleetWork(
  { sources, register, general }: KeptFleet,
  digests: readonly SiteDigest[],
  asked: ReadonlySet<string>,
  on: IsoDate
): FleetWork {
  return { folder: sources.folder, on, register, general, digests, asked, words: EN_US, version: toolVersion() }
}

/** Everything of a build that no single site owns, and the look through what is public. Gives the private words that were looked for. */
async function writeFleet(
  stage: Stage,
  fleet: KeptFleet,
  work: FleetWork,
  sites: MadeUnits,
  cache: string,
  wish: BuildWish
): Promise<readonly PrivateWordOf[]> {
  const { common } = fleet
  const planned = planFleetPages(work)
  const pages = await renderPages([...planned.pages, ...planned.fallbacks], { stamp: common.mark })
  const fallbacks = new Set(planned.fallbacks.map(one => one.path))
  for (const { path, html } of pages) if (!fallbacks.has(path)) stage.write({ path, content: html })
  for (const file of publicScripts()) stage.write(file)
  for (const file of dataOutputs(work, common.publicAddress)) stage.write(file)
  stage.keep(keptPatterns(fleet, work, wish))
  for (const { path, html } of pages)
    if (fallbacks.has(path) && !existsSync(join(stage.folder, path))) stage.write({ path, content: html })
  const words = work.digests.flatMap(privateWordsOf)
  await refuseLeaks(stage.folder, words, sites.known, readWordsLookedFor(cache, common.mark))
  return words
}

function privateWordsOf({ id, built }: SiteDigest): PrivateWordOf[] {
  return (built?.privateWords ?? []).map(word => ({ site: id, ...word }))
}

/** Those that this build prints, and those that an earlier one left standing. */
function printsOf(site: string, { out, print }: BuildWish): PageContext['prints'] {
  const asked = { binder: print?.binders === true, labels: print?.labels === true }
  return (['binder', 'labels'] as const).filter(
    name => asked[name] || existsSync(join(out, `print/${site}-${name}.pdf`))
  )
}

interface Printing {
  readonly stage: Stage
  readonly fleet: KeptFleet
  readonly digests: readonly SiteDigest[]
  readonly wish: BuildWish
}

async function printAll(printing: Printing): Promise<PrintReport> {
  const { stage, fleet, digests, wish } = printing
  const { print, onPrinted, on } = wish
  const documents = digests.flatMap<DocumentToPrint>(({ id, built }) => {
    if (!built) return []
    const one = (name: string): DocumentToPrint => ({
      html: `office/${id}/${name}.html`,
      pdf: `print/${id}-${name}.pdf`,
      paper: built.paper,
      on
    })
    return [
      ...(print?.binders ? [one('binder')] : []),
      ...(print?.labels && hasTags(built) ? [one('labels')] : []),
      ...(print?.charts && built.summary.counts.controllers > 0 ? [one('charts')] : []),
      ...(print?.restricted ? [one('restricted')] : [])
    ]
  })
  if (print?.restricted) await stageApart(printing, 'restricted', 'binder', makeRestrictedSheet)
  if (print?.charts) await stageApart(printing, 'charts', 'charts', makeChartsPage)
  // The browser's driver and the reader of PDFs are slow to read in; only a print needs them.
  const { printDocuments } = await import('./print-documents.ts')
  return printDocuments(stage, documents, {
    base: fleet.common.publicAddress,
    ...(onPrinted ? { onDone: onPrinted } : {})
  })
}

const hasTags = ({ features }: BuiltDigest): boolean => features.some(one => typeof one.properties['tag'] === 'string')

/** A print apart has a page only while it is asked for: the next build without the option takes it away again. */
async function stageApart(
  { stage, fleet, digests }: Printing,
  name: string,
  template: string,
  make: (context: PageContext) => object
): Promise<void> {
  const wanted = new Set(digests.filter(one => one.built).map(one => one.id))
  for (const unit of fleet.units.filter(one => wanted.has(one.sources.id))) {
    const plans = (await contextsOf(unit, fleet.common)).map<PagePlan>(context => ({
      path: `office/${context.site.id}/${name}.html`,
      template,
      data: make(context)
    }))
    const pages = await renderPages(plans, { stamp: fleet.common.mark })
    for (const { path, html } of pages) stage.write({ path, content: html })
  }
}

/**
 * Last good outputs of sites that were left out, and of those not asked for. Prints of sites that were only built stay too: the
 * foot of each page says of which day they are.
 */
function keptPatterns({ units, register }: KeptFleet, work: FleetWork, { print }: BuildWish): string[] {
  const ids = units.map((one: SiteUnit) => one.sources.id)
  const built = new Set(work.digests.filter(one => one.built && work.asked.has(one.id)).map(one => one.id))
  const carried = new Set(ids.filter(id => !built.has(id)))
  return [
    ...[...carried].flatMap(id => [`office/${id}/*`, ...PRINTS.map(name => `print/${id}-${name}.pdf`)]),
    ...register.filter(entry => carried.has(entry.site)).map(entry => `public/B/${entry.tag}/*`),
    ...ids.flatMap(id => [
      ...(print?.binders ? [] : [`print/${id}-binder.pdf`]),
      ...(print?.labels ? [] : [`print/${id}-labels.pdf`]),
      ...(print?.charts ? [] : [`print/${id}-charts.pdf`])
    ])
  ]
}

/** Files that stand as they were looked through are looked through for new words only. */
async function refuseLeaks(
  folder: string,
  words: readonly PrivateWordOf[],
  known: ReadonlySet<string>,
  before: ReadonlySet<string>
): Promise<void> {
  const paths = filesBelow(join(folder, 'public')).map(path => `public/${path}`)
  const come = words.filter(one => !before.has(one.text))
  const leaks = [
    ...(await leaksIn(
      folder,
      paths.filter(path => !known.has(path)),
      words
    )),
    ...(await leaksIn(
      folder,
      paths.filter(path => known.has(path)),
      come
    ))
  ]
  if (leaks.length === 0) return
  throw new Refusal(
    'Nothing was written: a private word would stand on a page that anybody can open.',
    ...leaks.slice(0, 8).map(one => `  ${one.path} holds the private "${one.label}" of ${one.site}.`),
    'Run "underlid check": privacy/private-word-public names the line to change.'
  )
}

async function leaksIn(folder: string, paths: readonly string[], words: readonly PrivateWordOf[]): Promise<Leak[]> {
  if (words.length === 0 || paths.length === 0) return []
  const leaks: Leak[] = []
  const tasks = tasksOf(paths, FILES_A_TASK).map(look => ({ look }))
  await workThrough({ folders: { last: '', next: folder }, words }, tasks, answer =>
    leaks.push(...(answer.leaks ?? []))
  )
  return leaks.sort((a, b) => (a.path < b.path ? -1 : a.path > b.path ? 1 : 0))
}
