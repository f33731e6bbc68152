import type { PageContext } from '../binder/context.ts'
import type { Finding } from '../diagnostics/finding.ts'
import { sortFindings } from '../diagnostics/finding.ts'
import type { IsoDate } from '../units/date.ts'
import { refuseUnknownSites } from './assess.ts'
import { frameOf, readKeptFleet } from './kept-fleet.ts'
import type { KeptFleet } from './kept-fleet.ts'
import { readWordsLookedFor, writeWordsLookedFor } from './kept-words.ts'
import { labelNoteTexts } from './label-notes.ts'
import { labelReach, refuseSmallLabels } from './label-room.ts'
import { makeUnits } from './make-units.ts'
import { withStage } from './output-stage.ts'
import type { OutputReport } from './output-stage.ts'
import type { PrintReport } from './print-documents.ts'
import { printAll } from './print-fleet.ts'
import { LINKED, printsThere } from './prints-there.ts'
import type { PrintWish } from './print-wish.ts'
import { refuseLostRegister } from './refuse-lost-register.ts'
import { shardOf } from './shard.ts'
import type { Shard } from './shard.ts'
import { shardFile } from './shard-file.ts'
import { cacheFolder, forgetOthers } from './site-cache.ts'
import type { SiteDigest } from './site-digest.ts'
import { keptPatterns, writeFleet } from './write-fleet.ts'

export interface BuildWish {
  readonly sites: string
  readonly out: string
  readonly on: IsoDate
  readonly only?: readonly string[]
  /** A part of the sites; the pages of the whole fleet are made where the parts are merged. */
  readonly shard?: Shard
  readonly print?: PrintWish
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
  /** Where labels are printed: how far off their codes are read, and what had no room on them. */
  readonly labels?: LabelReport
}

export interface LabelReport {
  readonly reach: string
  readonly notes: readonly string[]
  /** Labels that were left out. */
  readonly crowded: number
}

/**
 * Reads, plans, checks, renders and writes; prints too where asked, and where a print could not be had, writes once more without the link
 * to it. All sites are read, so that the fleet page and the tags are whole; a site is planned and rendered again only where something that
 * shapes it changed, and the pages of sites that were not asked for are carried over. The old output stays until the new one is whole.
 */
export async function buildFleet(wish: BuildWish): Promise<BuildResult> {
  const result = await buildOnce(wish)
  const { prints, built } = result
  if (wish.print && prints && built.some(site => leadsToNoPrint(site, prints, wish.out))) {
    const restricted = wish.print.restricted && !prints.noBrowser
    await buildOnce({ ...wish, print: { ...wish.print, binders: false, labels: false, charts: false, restricted } })
  }
  return result
}

/** The page of a site was made before its print was tried. */
function leadsToNoPrint(site: string, { noBrowser, failed }: PrintReport, out: string): boolean {
  const lost = new Set(noBrowser ? LINKED.map(name => `print/${site}-${name}.pdf`) : failed.map(({ pdf }) => pdf))
  return LINKED.some(name => lost.has(`print/${site}-${name}.pdf`) && !printsThere(site, out).includes(name))
}

async function buildOnce(wish: BuildWish): Promise<BuildResult> {
  const { on, shard, print, out } = wish
  let fleet: KeptFleet | undefined = readKeptFleet(wish.sites, on, site => printsOf(site, wish), {
    ...(wish.mark === undefined ? {} : { mark: wish.mark }),
    ...(print?.labelWish ? { labelWish: print.labelWish } : {})
  })
  refuseUnknownSites(fleet.sources, wish.only ?? [])
  refuseLostRegister(fleet, out)
  const { common } = fleet
  if (print?.labelWish) refuseSmallLabels(common.publicAddress, print.labelWish)
  const frame = frameOf(fleet)
  const asked = askedOf(frame.ids, wish)
  const cache = cacheFolder(out)
  const lookedFor = readWordsLookedFor(cache, frame.mark)
  let units = shard ? fleet.units.filter(one => asked.has(one.sources.id)) : fleet.units
  const { result, report } = await withStage(out, async stage => {
    const { onSite } = wish
    const sites = await makeUnits({ units, asked, common, cache, ...(onSite ? { onSite } : {}) }, stage)
    // A print needs the texts of the sites once more; else they make room for the pages of all.
    units = []
    if (!print) fleet = undefined
    const { digests, known } = sites
    const writing = { frame, digests, asked, known, lookedFor, ...(print ? { print } : {}) }
    if (shard) stage.keep(keptPatterns({ ...writing, frame: { ...frame, ids: [...asked] } }))
    const words = shard ? undefined : await writeFleet(stage, writing)
    if (shard) stage.write(shardFile({ shard, frame, digests }))
    const built = digests.filter(one => asked.has(one.id))
    return { sites, words, prints: fleet ? await printAll({ stage, fleet, digests: built, wish }) : undefined }
  })
  const { sites, words, prints } = result
  if (words) writeWordsLookedFor(cache, frame.mark, words)
  sites.keep(out)
  if (!shard) forgetOthers(cache, new Set(frame.ids))
  const isBuilt = (one: SiteDigest): boolean => asked.has(one.id) && one.built !== undefined
  return {
    on,
    findings: sortFindings([...frame.general, ...sites.digests.flatMap(one => one.findings)]),
    built: sites.digests.filter(isBuilt).map(one => one.id),
    leftOut: sites.digests.filter(one => asked.has(one.id) && !one.built).map(one => one.id),
    made: sites.made,
    same: sites.same,
    notAsked: frame.ids.filter(id => !asked.has(id)),
    report,
    ...(prints ? { prints } : {}),
    ...(print?.labels ? { labels: labelReport(sites.digests.filter(isBuilt), common.publicAddress, print) } : {})
  }
}

function labelReport(built: readonly SiteDigest[], publicAddress: string, { labelWish }: PrintWish): LabelReport {
  const tallies = built.flatMap(({ id, built }) => (built ? [{ site: id, ...built.labels }] : []))
  return {
    reach: tallies.some(({ made }) => made > 0) ? labelReach(publicAddress, labelWish) : '',
    notes: tallies.flatMap(tally => labelNoteTexts(tally.site, tally)),
    crowded: tallies.flatMap(({ notes }) => notes).filter(({ shown }) => shown === undefined).length
  }
}

function askedOf(ids: readonly string[], { only = [], shard }: BuildWish): ReadonlySet<string> {
  const named = only.length > 0 ? ids.filter(id => only.includes(id)) : ids
  return new Set(shard ? shardOf(named, shard) : named)
}

/** Those that this build prints, and those that an earlier one left standing. */
function printsOf(site: string, { out, print }: BuildWish): PageContext['prints'] {
  const asked = { binder: print?.binders === true, labels: print?.labels === true }
  return printsThere(site, out, asked)
}
