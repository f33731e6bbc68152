import { createHash } from 'node:crypto'
import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { Refusal } from '../base/refusal.ts'
import type { Finding } from '../diagnostics/finding.ts'
import { boxesGeojson } from '../export/geojson.ts'
import { siteJson } from '../export/fleet-json.ts'
import { wireScheduleCsv } from '../export/wire-schedule-csv.ts'
import { zonesCsv } from '../export/zones-csv.ts'
import type { PageContext } from '../binder/context.ts'
import { withoutPrivate } from '../load/without-private.ts'
import type { IsoDate } from '../units/date.ts'
import { assessSite } from './assess-site.ts'
import type { AssessedSite, Assessment } from './assess.ts'
import { openItemsText, plainPage, selfContained, startPage } from './handover-page.ts'
import { filesBelow } from './output-files.ts'
import { contextOf } from './page-context.ts'
import { buildFleet } from './pipeline.ts'
import { findLeaks } from './privacy-gate.ts'
import { publicAddressOf } from './public-address.ts'

export interface HandoverWish {
  readonly sites: string
  readonly out: string
  readonly on: IsoDate
  readonly site: string
  /** Hands over although errors are open, and lists them inside. */
  readonly asIs: boolean
  readonly withRestricted: boolean
}

export type HandoverResult =
  | { readonly refused: readonly Finding[] }
  | { readonly path: string; readonly files: number; readonly open: readonly Finding[] }

type Files = Map<string, Uint8Array>

/** Builds and prints one site, and puts all that is handed over into one file whose bytes depend on the sources and the day alone. */
export async function handOver(wish: HandoverWish): Promise<HandoverResult> {
  const assessment = assessSite(wish.sites, wish.on, wish.site)
  const [assessed] = assessment.sites
  const [context] = assessed ? contextOf(assessed, publicAddressOf(assessment), ['binder', 'labels']) : []
  if (!assessed || !context)
    throw new Refusal(
      `The file of ${wish.site} cannot be read, so nothing can be handed over.`,
      'Run: npx underlid check'
    )
  const blocking = assessed.findings.filter(one => one.severity === 'error')
  if (blocking.length > 0 && !wish.asIs) return { refused: blocking }
  await printed(wish)
  const files = packageOf(wish, assessment, assessed, context)
  refuseLeaks(files, assessed, wish)
  files.set('MANIFEST-SHA256.txt', text(manifest(files)))
  const path = join(wish.out, 'handover', `${wish.site}-${wish.on}.zip`)
  await writeZip(path, files)
  return { path, files: files.size, open: assessed.findings }
}

async function printed({ sites, out, on, site, withRestricted }: HandoverWish): Promise<void> {
  const print = { binders: true, labels: true, restricted: withRestricted }
  const { prints } = await buildFleet({ sites, out, on, only: [site], print })
  if (prints?.noBrowser) throw new Refusal(...prints.noBrowser)
  const [failed] = prints?.failed ?? []
  if (failed) throw new Refusal(`Not printed: ${failed.pdf}: ${failed.reason}`)
}

function packageOf(wish: HandoverWish, assessment: Assessment, assessed: AssessedSite, context: PageContext): Files {
  const { site, words } = context
  const w = words.handover.package
  const files: Files = new Map([...outputsOf(wish, context), ...dataOf(assessment, assessed, context)])
  const open = openItemsText(site.title, wish.on, assessed.findings, words)
  files.set('open-items.txt', text(open))
  files.set('open-items.html', text(plainPage(w.openItems, open, words.language)))
  files.set('README.txt', text(w.readme(site.title, wish.on, site.id)))
  const links = [
    { href: `print/${site.id}-binder.pdf`, label: words.binder.subtitle, note: words.office.binderNote },
    { href: `print/${site.id}-labels.pdf`, label: words.office.labels, note: words.office.labelsNote },
    { href: `office/${site.id}/index.html`, label: w.pages, note: w.pagesNote },
    { href: 'open-items.html', label: w.openItems, note: w.count(assessed.findings.length) }
  ].filter(({ href }) => files.has(href))
  files.set('index.html', text(startPage(site.title, w.handedOver(wish.on), links, words.language)))
  const there = new Set(files.keys())
  for (const [path, bytes] of files)
    if (path.endsWith('.html')) files.set(path, text(selfContained(Buffer.from(bytes).toString('utf8'), path, there)))
  return files
}

/** Pages, pictures and prints as they stand in the output folder, with the same paths, so that links between them hold. */
function outputsOf({ out, site, withRestricted }: HandoverWish, context: PageContext): [string, Uint8Array][] {
  const tags = context.site.boxes.flatMap(box => (box.tag === undefined ? [] : [box.tag]))
  const isWanted = (path: string): boolean =>
    (path.startsWith(`office/${site}/`) && (withRestricted || !path.endsWith('/restricted.html'))) ||
    tags.some(tag => path.startsWith(`public/B/${tag}/`)) ||
    /^public\/(?:[^/]+\.js|licenses\.txt)$/u.test(path) ||
    path === `print/${site}-binder.pdf` ||
    path === `print/${site}-labels.pdf` ||
    (withRestricted && path === `print/${site}-restricted.pdf`)
  return filesBelow(out)
    .filter(isWanted)
    .sort()
    .map(path => [path, new Uint8Array(readFileSync(join(out, path)))])
}

/** The site file, visits and shared files that it uses, without what is private; the same facts for other programs. */
function dataOf(
  { sources }: Assessment,
  { id, sources: own }: AssessedSite,
  context: PageContext
): [string, Uint8Array][] {
  const siteText = own.site?.text ?? ''
  const root = `${sources.folder}/`
  const below = (file: string): string => (file.startsWith(root) ? file.slice(root.length) : file)
  const shared = sources.shared.filter(({ file }) => siteText.includes(below(file)) || /\/company\.md$/u.test(file))
  const plans = (own.plans ?? []).filter(({ file }) => siteText.includes(file.slice(file.lastIndexOf('/') + 1)))
  const texts = [...(own.site ? [own.site] : []), ...own.visits, ...(own.tables ?? []), ...plans, ...shared]
  return [
    ...texts.map<[string, Uint8Array]>(one => [`data/sites/${below(one.file)}`, text(withoutPrivate(one.text))]),
    [`data/${id}.json`, text(`${JSON.stringify(siteJson(context), undefined, 2)}\n`)],
    ['data/wires.csv', text(wireScheduleCsv([context]))],
    ['data/zones.csv', text(zonesCsv(context))],
    ['data/boxes.geojson', text(`${JSON.stringify(boxesGeojson([context]), undefined, 2)}\n`)]
  ]
}

function refuseLeaks(files: Files, { site }: AssessedSite, { withRestricted }: HandoverWish): void {
  if (!site || withRestricted) return
  // What a PDF shows stands in the page that it was printed from.
  const read = [...files]
    .filter(([path]) => !path.endsWith('.pdf'))
    .map(([path, bytes]) => ({ path: asText(path), bytes }))
  const leaks = findLeaks(read, [site])
  if (leaks.length === 0) return
  throw new Refusal(
    'Nothing was handed over: a private word would stand in it.',
    ...leaks.slice(0, 8).map(one => `  ${one.path} holds the private "${one.label}".`),
    'Take it out of the text, or hand over with --with-restricted.'
  )
}

/** Markdown and tables are read as the texts that they are. */
const asText = (path: string): string => path.replace(/\.(?:md|csv|geojson)$/u, match => `${match}.txt`)

/** As `sha256sum -c` reads it. */
function manifest(files: Files): string {
  return [...files]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([path, bytes]) => `${createHash('sha256').update(bytes).digest('hex')}  ${path}\n`)
    .join('')
}

/** The earliest day that the form knows, written without a zone, so that every zone writes the same. */
const DAY = '1980-01-01T00:00:00'
const STORED = /\.(?:pdf|jpe?g|png)$/iu

async function writeZip(path: string, files: Files): Promise<void> {
  const { zipSync } = await import('fflate')
  const entries = [...files]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, bytes]) => [name, [bytes, { level: STORED.test(name) ? 0 : 9 }]] as const)
  const zipped = zipSync(Object.fromEntries(entries) as Parameters<typeof zipSync>[0], { mtime: DAY })
  mkdirSync(dirname(path), { recursive: true })
  writeFileSync(`${path}.next`, zipped)
  renameSync(`${path}.next`, path)
}

const text = (content: string): Uint8Array => new Uint8Array(Buffer.from(content, 'utf8'))
