import { BrowserLost } from '../render/browser-lost.ts'
import { isNoBrowser, lendBrowsers } from '../render/browser.ts'
import { printPdf } from '../render/pdf.ts'
import type { Paper, Print, PrintJob } from '../render/pdf.ts'
import type { IsoDate } from '../units/date.ts'
import type { Stage } from './output-stage.ts'
import { gaveUpWords, lostWords } from './lost-words.ts'
import type { LostBrowser } from './lost-words.ts'
import { printKey, printRecord, reuse } from './print-cache.ts'

export interface DocumentToPrint {
  /** Paths below the output folder. */
  readonly html: string
  readonly pdf: string
  readonly paper: Paper
  readonly sheetMm?: readonly [number, number]
  readonly on: IsoDate
  readonly title?: string
}

export interface PrintOptions {
  /** Public address that stands for the output folder in the links of a print. */
  readonly base: string
  /** Told after each document. */
  readonly onDone?: (pdf: string, how: 'printed' | 'reused' | 'failed') => void
}

export interface PrintReport {
  readonly printed: readonly string[]
  /** Not printed again, since nothing that shapes them changed. */
  readonly reused: readonly string[]
  /** The last print of these, where there was one, stays. */
  readonly failed: readonly { readonly pdf: string; readonly reason: string }[]
  /** Where none could be had: the places looked and what helps, line by line. */
  readonly noBrowser?: readonly string[]
}

/** Two tabs: on two cores more gain nothing. */
const AT_ONCE = 2

/** So many browsers lost one after the other, without a print between, and nothing more is tried. */
const MOST_LOST = 3

/**
 * Prints documents of the stage into the stage. One browser for all, started only where something changed, closed whatever happens.
 * One document that cannot be printed does not stop the others. Where the browser ends or gives no answer, the others go on in a fresh
 * one, and what it left undone is tried once more at the end, each alone, so that one document cannot take others along.
 */
export async function printDocuments(
  stage: Stage,
  documents: readonly DocumentToPrint[],
  { base, onDone = () => undefined }: PrintOptions
): Promise<PrintReport> {
  const keys = new Map(documents.map(document => [document, printKey(stage, document, base)]))
  const reused = documents.filter(document => reuse(stage, document.pdf, keys.get(document) ?? ''))
  for (const { pdf } of reused) onDone(pdf, 'reused')
  const open = documents.filter(document => !reused.includes(document))
  const failed: { pdf: string; reason: string }[] = []
  const printed: string[] = []
  const keep = ({ pdf }: DocumentToPrint, print: Print, key: string): void => {
    stage.write({ path: pdf, content: print.bytes })
    stage.recordPrint(pdf, printRecord(stage, key, print.bytes, print.used))
    printed.push(pdf)
    onDone(pdf, 'printed')
  }
  const fail = ({ pdf }: DocumentToPrint, words: (stays: string) => string): void => {
    failed.push({ pdf, reason: words(stage.carry(pdf) ? ' The last print stays.' : '') })
    onDone(pdf, 'failed')
  }
  const browsers = lendBrowsers()
  let lostRunning = 0
  let last: LostBrowser | undefined
  let noBrowser: readonly string[] | undefined
  /** What the browser left undone; undefined where nothing is left to do. */
  const printOne = async (document: DocumentToPrint): Promise<Undone | undefined> => {
    if (last && lostRunning >= MOST_LOST) return { document, lost: last, gaveUp: true }
    const opened = await browsers.borrow()
    if (isNoBrowser(opened)) {
      noBrowser = opened.told
      stage.carry(document.pdf)
      return undefined
    }
    const print = await tried(printPdf(opened.browser, jobFor(stage, document, base)))
    if (print instanceof BrowserLost) {
      if (browsers.lose(opened)) lostRunning += 1
      last = { path: opened.path, reason: print }
      return { document, lost: last, gaveUp: false }
    }
    lostRunning = 0
    if (print instanceof Error) fail(document, () => print.message)
    else keep(document, print, keys.get(document) ?? '')
    return undefined
  }
  try {
    const undone = await inTurn(open, AT_ONCE, printOne)
    const still = await inTurn(
      undone.map(one => one.document),
      1,
      printOne
    )
    for (const { document, lost, gaveUp } of still)
      fail(document, stays => (gaveUp ? gaveUpWords : lostWords)(lost, stays))
  } finally {
    await browsers.giveBack()
  }
  return {
    printed: printed.sort(),
    reused: reused.map(({ pdf }) => pdf).sort(),
    failed: failed.sort((a, b) => (a.pdf < b.pdf ? -1 : 1)),
    ...(noBrowser ? { noBrowser } : {})
  }
}

interface Undone {
  readonly document: DocumentToPrint
  readonly lost: LostBrowser
  /** It was not even tried. */
  readonly gaveUp: boolean
}

function jobFor(stage: Stage, { html, paper, sheetMm, on, title }: DocumentToPrint, base: string): PrintJob {
  return {
    root: stage.folder,
    path: html,
    base,
    paper,
    on,
    ...(sheetMm ? { sheetMm } : {}),
    ...(title === undefined ? {} : { title })
  }
}

async function tried<T>(work: Promise<T>): Promise<T | Error> {
  try {
    return await work
  } catch (error) {
    return error instanceof Error ? error : new Error(String(error))
  }
}

/** Works through the items in order, so many at a time; gives what they leave. */
async function inTurn<T, U>(
  items: readonly T[],
  atOnce: number,
  work: (item: T) => Promise<U | undefined>
): Promise<U[]> {
  const [rest, left]: [T[], U[]] = [[...items], []]
  const worker = async (): Promise<void> => {
    for (let item = rest.shift(); item !== undefined; item = rest.shift()) {
      const result = await work(item)
      if (result !== undefined) left.push(result)
    }
  }
  await Promise.all(Array.from({ length: Math.min(atOnce, items.length) }, worker))
  return left
}
