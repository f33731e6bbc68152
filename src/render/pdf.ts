import { accessSync, constants, statSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, Page } from 'puppeteer'
import { BrowserLost, lostOr, watchOver } from './browser-lost.ts'
import type { Watch } from './browser-lost.ts'
import { bindSheets } from './pdf-attach.ts'
import { lostFields, placeFields, withFields } from './pdf-fields.ts'
import type { FormField } from './pdf-fields.ts'
import { destinationsOf, knownPdfFile, pagesLinkingTo } from './pdf-file.ts'
import type { PdfFile } from './pdf-file.ts'
import { fillPlaceholders, placeholders } from './pdf-fill.ts'
import { leadIndexOn } from './index-places.ts'
import { askDocument, fillContents, lostTargets, wrongNumbers } from './pdf-numbers.ts'
import type { DocumentFacts } from './pdf-numbers.ts'
import { linksToFiles, normalizePdf } from './pdf-normal.ts'
import { linksOf, openFromDisk, printPage, typeReady } from './pdf-page.ts'
import type { Asked, PrintSource } from './pdf-page.ts'
import { pdfReader, readPdf } from './pdf-read.ts'
import type { PdfContents } from './pdf-read.ts'
import { readySheets } from './pdf-sheets.ts'
import type { ReadySheets } from './pdf-sheets.ts'
import { writePdfFile } from './pdf-write.ts'
import type { IsoDate } from '../units/date.ts'

export type Paper = 'A4' | 'Letter'

export interface PrintJob extends PrintSource {
  readonly paper: Paper
  /** Width and height where it is on neither sheet: a label with its crop marks. */
  readonly sheetMm?: readonly [number, number]
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
 * lacks a picture, has a dead link or a wrong page number. A browser that ends, breaks down or gives no answer is a BrowserLost;
 * the time allowed grows with the length of the document.
 */
export async function printPdf(browser: Browser, job: PrintJob): Promise<Print> {
  const watch = watchOver(browser)
  try {
    return await Promise.race([printWatched(browser, job, watch), watch.lost])
  } catch (error) {
    throw lostOr(error, browser)
  } finally {
    watch.end()
  }
}

async function printWatched(browser: Browser, job: PrintJob, watch: Watch): Promise<Print> {
  watch.alive(pagesByBytes(job))
  const context = await browser.createBrowserContext()
  try {
    const page = await context.newPage()
    watch.over(page)
    const asked = await openFromDisk(page, job)
    await leadIndexOn(page)
    const [facts, fields] = await Promise.all([askDocument(page), placeFields(page)])
    // Printed, read back, and now and then printed again.
    watch.alive(2 * facts.roughPages)
    throwIfUnread(job, asked.missing)
    throwIfAny(job, documentFaults(facts, asked.missing))
    const document = { page, job, facts, asked, fields }
    return facts.targets.length === 0 ? await printPlain(document) : await printNumbered(document)
  } finally {
    await context.close()
  }
}

const BYTES_A_PAGE = 10_000

/** Very roughly, before anything is laid out. */
function pagesByBytes({ root, path }: PrintJob): number {
  const size = statSync(join(root, path), { throwIfNoEntry: false })?.size ?? 0
  return Math.ceil(size / BYTES_A_PAGE)
}

interface OpenDocument {
  readonly page: Page
  readonly job: PrintJob
  readonly facts: DocumentFacts
  readonly asked: Asked
  readonly fields: readonly FormField[]
}

async function printPlain(document: OpenDocument): Promise<Print> {
  const printed = await printFile(document)
  return finished(document, printed, await readBack(document, printed))
}

/** Laid out once, with placeholders that are filled in the finished file; over again where those cannot be filled. */
async function printNumbered(document: OpenDocument): Promise<Print> {
  const { page, facts } = document
  await fillContents(page, placeholders(facts.targets.length))
  const { file: laidOut, sheets } = await printFile(document)
  const numbers = numbersIn(document, destinationsOf(laidOut))
  const contents = pagesLinkingTo(laidOut, facts.targets)
  const file = fillPlaceholders(laidOut, numbersFor(facts, numbers), contents)
  if (file) {
    const filled = { file, sheets }
    const back = await readBack(document, filled)
    if (wrongNumbers(facts.targets, numbers, back.print).length === 0) return finished(document, filled, back)
  }
  return printSettled(document, numbers)
}

/** Prints with the numbers of the last print until they are right. */
async function printSettled(document: OpenDocument, known: ReadonlyMap<string, number>): Promise<Print> {
  const { page, job, facts } = document
  let [numbers, faults]: [ReadonlyMap<string, number>, string[]] = [known, []]
  for (let filling = 1; filling <= FILLINGS; filling += 1) {
    await fillContents(
      page,
      numbersFor(facts, numbers).map(number => (number === undefined ? '' : String(number)))
    )
    const printed = await printFile(document)
    const back = await readBack(document, printed)
    faults = wrongNumbers(facts.targets, numbers, back.print)
    if (faults.length === 0) return finished(document, printed, back)
    numbers = numbersIn(document, back.print.destinations)
  }
  throw notPrinted(job, faults)
}

/** What is printed beside each target, in order; a target may stand more than once. Nothing where an entry of the index has the page already. */
function numbersFor({ targets, entries }: DocumentFacts, numbers: ReadonlyMap<string, number>): (number | undefined)[] {
  const told = new Set<string>()
  return targets.map((id, index) => {
    const [number, entry] = [numbers.get(id), entries[index] ?? -1]
    const place = `${entry} ${number}`
    if (entry >= 0 && told.has(place)) return undefined
    told.add(place)
    return number
  })
}

/** The page of each target. */
function numbersIn({ job, facts }: OpenDocument, destinations: ReadonlyMap<string, number>): Map<string, number> {
  throwIfAny(job, lostTargets(facts.targets, destinations))
  return new Map(facts.targets.map(id => [id, destinations.get(id) ?? 0]))
}

interface Printed {
  readonly file: PdfFile
  /** What is to be bound in. */
  readonly sheets: ReadySheets
}

/** Pages of other files, and the reader of the finished print, are made ready while the browser prints. */
async function printFile({ page, job, facts }: OpenDocument): Promise<Printed> {
  await typeReady(page)
  const printing = printPage(page, SIZES[job.paper])
  const sheets = readySheets(facts.attached, job.root, job.path)
  const [bytes, ready] = await Promise.all([printing, sheets, pdfReader()])
  return { file: knownPdfFile(bytes), sheets: ready }
}

interface ReadBack {
  readonly bytes: Uint8Array
  readonly print: PdfContents
}

async function readBack({ job, facts, fields }: OpenDocument, { file, sheets }: Printed): Promise<ReadBack> {
  const title = job.title ?? facts.title
  const even = normalizePdf(withFields(file, fields), { title, on: job.on, links: linksOf(job) })
  const bytes = writePdfFile(bindSheets(even, sheets))
  const linksTo = facts.targets
  const linksOn = pagesLinkingTo(file, linksTo)
  return { bytes, print: await readPdf(bytes, { sizes: true, bookmarks: true, linksTo, linksOn }) }
}

function finished(
  { job, facts, asked, fields }: OpenDocument,
  { file, sheets }: Printed,
  { bytes, print }: ReadBack
): Print {
  const away = linksToFiles(file, linksOf(job).from).map(
    address => `A link leads to ${address}, above what may be shown.`
  )
  throwIfUnread(job, asked.missing)
  const faults = [...printFaults(print, job, facts), ...lostFields(file, fields)]
  throwIfAny(job, [...faults, ...lacking(asked.missing), ...away])
  return { bytes, pages: print.pages, used: [...asked.used, ...sheets.used].sort() }
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
  const [width, height] = sheetOf(job)
  const odd = print.sizes.findIndex(([w, h]) => !near([w, h], [width, height]) && !near([h, w], [width, height]))
  return [
    ...(print.tagged ? [] : ['The print carries no tags.']),
    ...(print.language === facts.language ? [] : [`The print's language is "${print.language}".`]),
    ...(facts.headings > 0 && print.bookmarks.length === 0 ? ['The print carries no bookmarks.'] : []),
    ...(odd === -1 ? [] : [`Page ${odd + 1} is not ${job.sheetMm ? `${job.sheetMm.join(' × ')} mm` : job.paper}.`])
  ]
}

const POINTS_PER_MM = 72 / 25.4

function sheetOf({ paper, sheetMm }: PrintJob): readonly [number, number] {
  return sheetMm ? [sheetMm[0] * POINTS_PER_MM, sheetMm[1] * POINTS_PER_MM] : SIZES[paper]
}

const lacking = (missing: ReadonlySet<string>): string[] => [...missing].map(path => `${path} is not there.`)

/** Within a point: browsers round a page to whole pixels. */
function near(a: readonly [number, number], b: readonly [number, number]): boolean {
  return Math.abs(a[0] - b[0]) <= 1 && Math.abs(a[1] - b[1]) <= 1
}

/** A browser that is ended fails to read what it shows a moment before it is seen to have ended. */
function throwIfUnread({ root }: PrintJob, missing: ReadonlySet<string>): void {
  if ([...missing].some(path => isReadable(join(root, path)))) throw new BrowserLost('broke')
}

function isReadable(path: string): boolean {
  try {
    accessSync(path, constants.R_OK)
    return statSync(path).isFile()
  } catch {
    return false
  }
}

function throwIfAny(job: PrintJob, faults: readonly string[]): void {
  if (faults.length > 0) throw notPrinted(job, faults)
}

function notPrinted(job: PrintJob, faults: readonly string[]): Error {
  return new Error(`${job.path} could not be printed. ${[...new Set(faults)].join(' ')}`)
}
