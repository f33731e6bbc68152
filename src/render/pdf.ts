import type { Browser, Page } from 'puppeteer'
import { askDocument, fillPageNumbers, lostTargets, wrongNumbers } from './pdf-numbers.ts'
import type { DocumentFacts } from './pdf-numbers.ts'
import { normalizePdf } from './pdf-normal.ts'
import { addressOf, serveFromDisk } from './pdf-page.ts'
import type { Asked, PrintSource } from './pdf-page.ts'
import { readPdf } from './pdf-read.ts'
import type { PdfContents } from './pdf-read.ts'
import type { IsoDate } from '../units/date.ts'

export type Paper = 'A4' | 'Letter'

export interface PrintJob extends PrintSource {
  readonly paper: Paper
  /** Left out: the document's own. */
  readonly title?: string
  readonly on: IsoDate
}

export interface Print {
  readonly bytes: Uint8Array
  readonly pages: number
  /** Paths below the root of what the document showed: style sheets, type, pictures. */
  readonly used: readonly string[]
}

/** Points, 1/72 in. ISO 216 and ANSI/ASME Y14.1. */
const SIZES: Readonly<Record<Paper, readonly [number, number]>> = { A4: [595.28, 841.89], Letter: [612, 792] }

/** The layout changes with the width of a number at most once or twice; more means that it never settles. */
const FILLINGS = 3

/**
 * Prints one document: tagged, with bookmarks and its language, page numbers filled into the contents and read back from the finished
 * file, the same bytes for the same document. Throws, naming the document and what is wrong, rather than hand back a print that
 * lacks a picture, has a dead link or a wrong page number.
 */
export async function printPdf(browser: Browser, job: PrintJob): Promise<Print> {
  const context = await browser.createBrowserContext()
  try {
    const page = await context.newPage()
    await page.setJavaScriptEnabled(false)
    const asked = await serveFromDisk(page, job)
    await page.goto(addressOf(job), { waitUntil: 'load', timeout: 60_000 })
    const facts = await askDocument(page)
    throwIfAny(job, documentFaults(facts, asked.missing))
    return await printSettled(page, job, facts, asked)
  } finally {
    await context.close()
  }
}

async function printSettled(page: Page, job: PrintJob, facts: DocumentFacts, asked: Asked): Promise<Print> {
  let numbers: ReadonlyMap<string, number> = new Map()
  let faults: string[] = []
  if (facts.targets.length > 0) numbers = await measure(page, job, facts)
  for (let filling = 1; filling <= FILLINGS; filling += 1) {
    throwIfAny(job, lostTargets(facts.targets, numbers))
    if (facts.targets.length > 0) await fillPageNumbers(page, facts.targets, numbers)
    const raw = await printPage(page, job, facts.roughPages, true)
    const bytes = normalizePdf(raw, { title: job.title ?? facts.title, on: job.on })
    const print = await readPdf(bytes, { sizes: true, bookmarks: true, linksTo: facts.targets })
    throwIfAny(job, [...printFaults(print, job, facts), ...lacking(asked.missing)])
    faults = wrongNumbers(facts.targets, numbers, print)
    if (faults.length === 0) return { bytes, pages: print.pages, used: [...asked.used].sort() }
    numbers = print.destinations
  }
  throw notPrinted(job, faults)
}

/** A first print, without tags since they do not move anything, tells each destination's page. */
async function measure(page: Page, job: PrintJob, facts: DocumentFacts): Promise<ReadonlyMap<string, number>> {
  return (await readPdf(await printPage(page, job, facts.roughPages, false))).destinations
}

/** The time allowed grows with the length of the document: 30 s, and 1 s more for each page. */
async function printPage(page: Page, job: PrintJob, pages: number, finished: boolean): Promise<Uint8Array> {
  return page.pdf({
    format: job.paper,
    preferCSSPageSize: true,
    printBackground: true,
    tagged: finished,
    outline: finished,
    timeout: 30_000 + 1_000 * pages
  })
}

function documentFaults(facts: DocumentFacts, missing: ReadonlySet<string>): string[] {
  return [
    ...(facts.language === '' ? ['It does not say its language.'] : []),
    ...lacking(missing),
    ...facts.deadAnchors.map(id => `A link leads to "#${id}", which is not there.`),
    ...facts.repeatedIds.map(id => `The id "${id}" stands more than once.`)
  ]
}

function printFaults(print: PdfContents, job: PrintJob, facts: DocumentFacts): string[] {
  const [width, height] = SIZES[job.paper]
  const odd = print.sizes.findIndex(([w, h]) => !near([w, h], [width, height]) && !near([h, w], [width, height]))
  return [
    ...(print.tagged ? [] : ['The print carries no tags.']),
    ...(print.language === facts.language ? [] : [`The print's language is "${print.language}".`]),
    ...(facts.headings > 0 && print.bookmarks.length === 0 ? ['The print carries no bookmarks.'] : []),
    ...(odd === -1 ? [] : [`Page ${odd + 1} is not ${job.paper}.`])
  ]
}

const lacking = (missing: ReadonlySet<string>): string[] => [...missing].map(path => `${path} is not there.`)

/** Within a point: browsers round a page to whole pixels. */
function near(a: readonly [number, number], b: readonly [number, number]): boolean {
  return Math.abs(a[0] - b[0]) <= 1 && Math.abs(a[1] - b[1]) <= 1
}

function throwIfAny(job: PrintJob, faults: readonly string[]): void {
  if (faults.length > 0) throw notPrinted(job, faults)
}

function notPrinted(job: PrintJob, faults: readonly string[]): Error {
  return new Error(`${job.path} could not be printed. ${[...new Set(faults)].join(' ')}`)
}
