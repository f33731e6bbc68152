import type { PageContext } from '../binder/context.ts'
import { siteSummary } from '../binder/site-summary.ts'
import type { SiteSummary } from '../binder/site-summary.ts'
import type { Finding } from '../diagnostics/finding.ts'
import type { Cell } from '../export/csv.ts'
import { siteJson } from '../export/fleet-json.ts'
import { siteFeatures } from '../export/geojson.ts'
import type { Feature } from '../export/geojson.ts'
import { wireRows } from '../export/wire-schedule-csv.ts'
import type { Site } from '../model/site.ts'
import { EN_US } from '../words/words.ts'
import type { LabelTally } from './label-notes.ts'

/** What is left of a site once its own pages are made: everything that the pages and files of the whole fleet need. */
export interface SiteDigest {
  readonly id: string
  readonly findings: readonly Finding[]
  /** Absent where the files of the site could not be understood. */
  readonly built?: BuiltDigest
}

export interface BuiltDigest {
  /** Without its findings, which stand in the digest once. */
  readonly summary: Omit<SiteSummary, 'findings'>
  readonly location?: NonNullable<Site['location']>
  readonly paper: Site['paper']
  readonly privateWords: readonly { readonly label: string; readonly text: string }[]
  /** Tags whose page is this site's. */
  readonly tags: readonly string[]
  readonly features: readonly Feature[]
  readonly wires: readonly (readonly Cell[])[]
  readonly json: object
  /** Its lid labels. */
  readonly labels: LabelTally
}

/** Of a site that was understood. */
export function summaryOf({ findings, built }: SiteDigest): SiteSummary | undefined {
  return built && { ...built.summary, findings }
}

const NO_LABELS: LabelTally = { made: 0, notes: [] }

/** As it reads back from a file, so that it makes no difference whether it was kept or made this time. */
export function digestOf(
  id: string,
  findings: readonly Finding[],
  context?: PageContext,
  tags: readonly string[] = [],
  labels: LabelTally = NO_LABELS
): SiteDigest {
  const digest: SiteDigest = { id, findings, ...(context ? { built: builtDigest(context, tags, labels) } : {}) }
  return JSON.parse(JSON.stringify(digest)) as SiteDigest
}

function builtDigest(context: PageContext, tags: readonly string[], labels: LabelTally): BuiltDigest {
  const { site } = context
  const { findings: _, ...summary } = siteSummary(context, EN_US)
  return {
    summary,
    ...(site.location ? { location: site.location } : {}),
    paper: site.paper,
    privateWords: site.privateWords.map(({ label, text }) => ({ label, text })),
    tags,
    features: siteFeatures(site),
    wires: wireRows(context),
    json: siteJson(context),
    labels
  }
}
