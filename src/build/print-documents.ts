import type { Browser } from 'puppeteer'
import { isNoBrowser, withBrowser } from '../render/browser.ts'
import { printPdf } from '../render/pdf.ts'
import type { Paper, PrintJob } from '../render/pdf.ts'
import type { IsoDate } from '../units/date.ts'
import type { Stage } from './output-stage.ts'
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

/**
 * Prints documents of the stage into the stage. One browser for all, started only where something changed, closed whatever happens.
 * One document that cannot be printed does not stop the others.
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
  const printOne = async (browser: Browser, document: DocumentToPrint): Promise<void> => {
    const { pdf } = document
    const print = await tried(printPdf(browser, jobFor(stage, document, base)))
    if (print instanceof Error) {
      failed.push({ pdf, reason: print.message })
      stage.carry(pdf)
      return onDone(pdf, 'failed')
    }
    stage.write({ path: pdf, content: print.bytes })
    stage.recordPrint(pdf, printRecord(stage, keys.get(document) ?? '', print.bytes, print.used))
    printed.push(pdf)
    onDone(pdf, 'printed')
  }
  const outcome =
    open.length === 0
      ? undefined
      : await withBrowser(({ browser }) => inTurn(open, AT_ONCE, document => printOne(browser, document)))
  if (isNoBrowser(outcome)) for (const { pdf } of open) stage.carry(pdf)
  return {
    printed: printed.sort(),
    reused: reused.map(({ pdf }) => pdf).sort(),
    failed: failed.sort((a, b) => (a.pdf < b.pdf ? -1 : 1)),
    ...(isNoBrowser(outcome) ? { noBrowser: outcome.told } : {})
  }
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

/** Works through the items in order, so many at a time. */
async function inTurn<T>(items: readonly T[], atOnce: number, work: (item: T) => Promise<void>): Promise<void> {
  const rest = [...items]
  const worker = async (): Promise<void> => {
    for (let item = rest.shift(); item !== undefined; item = rest.shift()) await work(item)
  }
  await Promise.all(Array.from({ length: Math.min(atOnce, items.length) }, worker))
}
