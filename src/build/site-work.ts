import type { PageContext } from '../binder/context.ts'
import type { PagePlan } from '../render/eleventy-plan.ts'
import { assessOne } from './assess.ts'
import type { AssessedSite } from './assess.ts'
import { attachmentOutputs, readAttachments } from './attachments.ts'
import { loadOne } from './load-one.ts'
import type { OutputFile } from './output-stage.ts'
import { contextOf } from './page-context.ts'
import { photoOutputs, withPhotosThere } from './photos.ts'
import { digestOf } from './site-digest.ts'
import type { SiteDigest } from './site-digest.ts'
import { planSitePages } from './site-pages.ts'
import type { SharedWork, SiteUnit } from './site-unit.ts'
import type { Fleet } from '../model/fleet.ts'

export interface MadeSite {
  readonly digest: SiteDigest
  readonly files: readonly OutputFile[]
}

/** Makes sites whole, pages and all; nothing is written. Their pages go through Eleventy together. */
export async function makeSites(units: readonly SiteUnit[], common: SharedWork): Promise<MadeSite[]> {
  // Read in only where pages are made: a check needs no Eleventy.
  const { renderPages } = await import('../render/eleventy.ts')
  const planned = await Promise.all(units.map(unit => planSite(unit, common)))
  const rendered = new Map(
    (
      await renderPages(
        planned.flatMap(one => one.pages),
        { stamp: common.mark }
      )
    ).map(one => [one.path, one.html])
  )
  return planned.map(({ digest, pages, files }) => ({
    digest,
    files: [...pages.map(({ path }) => ({ path, content: rendered.get(path) ?? '' })), ...files]
  }))
}

/** What is known of a site without its pages. */
export function digestSite(unit: SiteUnit, common: SharedWork): SiteDigest {
  const { assessed } = assessUnit(unit, common)
  const [context] = contextOf(assessed, common.publicAddress, unit.prints)
  return digestOf(unit.sources.id, assessed.findings, context)
}

/** A page is made from this; nothing for a site that could not be understood. */
export async function contextsOf(unit: SiteUnit, common: SharedWork): Promise<PageContext[]> {
  const { assessed } = assessUnit(unit, common)
  return withAttachments(assessed, unit, common)
}

interface PlannedSite extends MadeSite {
  readonly pages: readonly PagePlan[]
}

async function planSite(unit: SiteUnit, common: SharedWork): Promise<PlannedSite> {
  const { assessed, fleet } = assessUnit(unit, common)
  const { sources, findings, site } = assessed
  const [context] = await withAttachments(assessed, unit, common)
  if (!context || !site) return { digest: digestOf(sources.id, findings), pages: [], files: [] }
  const { pages, tags, labels } = planSitePages(context, fleet, unit.labelWish)
  const files = [
    ...(await photoOutputs(withPhotosThere(site, sources), sources)),
    ...(await attachmentOutputs(site, sources))
  ]
  return { digest: digestOf(sources.id, findings, context, tags, labels), pages, files }
}

function assessUnit(unit: SiteUnit, common: SharedWork): { readonly assessed: AssessedSite; readonly fleet: Fleet } {
  const loaded = loadOne(unit.sources, common)
  const others = unit.rivals.flatMap(one => loadOne(one, common).site ?? [])
  const sites = [...others, ...(loaded.site ? [loaded.site] : [])]
  const fleet = {
    sites: sites.sort((a, b) => (a.id < b.id ? -1 : 1)),
    register: unit.register,
    registerGone: common.registerGone
  }
  return { assessed: assessOne(unit.sources, loaded, fleet, common.on), fleet }
}

function withAttachments(
  assessed: AssessedSite,
  { sources, prints }: SiteUnit,
  common: SharedWork
): Promise<PageContext[]> {
  return Promise.all(
    contextOf(assessed, common.publicAddress, prints).map(async context => ({
      ...context,
      attachments: await readAttachments(context.site, sources)
    }))
  )
}
