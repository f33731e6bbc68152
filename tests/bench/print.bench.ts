import { mkdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import puppeteer from 'puppeteer'
import type { Browser } from 'puppeteer'
import { browsersThere } from '../../setup/browser.mjs'
import { startFirst } from '../../setup/browser-start.mjs'
import { printPdf } from '../../src/render/pdf.ts'
import type { Paper } from '../../src/render/pdf.ts'
import { date } from '../../src/units/date.ts'

/**
 * Run by `npx tsx tests/bench/print.bench.ts OUT [ROUNDS]` after a build into OUT. Binders, and labels, which have no page
 * numbers to fill in, are printed as the tool does it (tags,
 * bookmarks, page numbers in the contents, read back, normalized) and, in turn with it, bare: the same finished page opened and printed by the same
 * browser, tagged, with no work of ours. Only the ratio says something; times depend on the machine.
 */
const out = resolve(process.argv[2] ?? 'dist')
const rounds = Number(process.argv[3] ?? 7)
const documents: readonly (readonly [string, Paper])[] = [
  ['kestrel-cross/binder', 'A4'],
  ['harbour-steps/binder', 'Letter'],
  ['mercer-row/labels', 'A4']
]

const milliseconds = async (work: () => Promise<unknown>): Promise<number> => {
  const began = performance.now()
  await work()
  return performance.now() - began
}

const median = (times: readonly number[]): number => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0

async function bare(browser: Browser, file: string, paper: Paper): Promise<void> {
  const context = await browser.createBrowserContext()
  const page = await context.newPage()
  await page.setJavaScriptEnabled(false)
  await page.goto(pathToFileURL(file).href, { waitUntil: 'load' })
  await page.pdf({ format: paper, preferCSSPageSize: true, printBackground: true, tagged: true })
  await context.close()
}

mkdirSync(out, { recursive: true })
const places = process.env['UNDERLID_BENCH_BROWSER']
  ? browsersThere().filter(({ path }) => path.includes(process.env['UNDERLID_BENCH_BROWSER'] ?? ''))
  : browsersThere()
const { browser } = await startFirst(options => puppeteer.launch(options), places)
if (!browser) throw new Error('no browser starts')
try {
  process.stdout.write(`${await browser.version()}\n`)
  for (const [name, paper] of documents) {
    const path = `office/${name}.html`
    const [ours, plain]: [number[], number[]] = [[], []]
    let pages = 0
    for (let round = 0; round <= rounds; round += 1) {
      const print = async () => {
        pages = (
          await printPdf(browser, { root: out, path, base: 'https://example.org/', paper, on: date('2026-05-01') })
        ).pages
      }
      const [a, b] = [await milliseconds(print), await milliseconds(() => bare(browser, join(out, path), paper))]
      if (round === 0) continue
      ours.push(a)
      plain.push(b)
    }
    const ratio = median(ours) / median(plain)
    const perPage = (1000 * pages) / median(ours)
    process.stdout.write(
      `${name}: ${pages} pages, ours ${median(ours).toFixed(0)} ms, bare ${median(plain).toFixed(0)} ms, ratio ${ratio.toFixed(2)}, ${perPage.toFixed(0)} pages a second\n`
    )
  }
} finally {
  await browser.close()
}
