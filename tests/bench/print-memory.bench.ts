import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import puppeteer from 'puppeteer'
import { browsersThere } from '../../setup/browser.mjs'
import { startFirst } from '../../setup/browser-start.mjs'
import { printPdf } from '../../src/render/pdf.ts'
import { date } from '../../src/units/date.ts'

/**
 * Run by `node --expose-gc --import tsx tests/bench/print-memory.bench.ts OUT [BINDERS]` after a build of the demo sites into OUT; 200 where no number is given. Prints the binders there
 * in turn, two at once, by one browser, as `print` does, and looks at the memory of this process and of the browser after each. Memory is flat
 * where the middle of the last quarter is no larger than that of the second. What it is after 20, after half and after all of them is the
 * middle of ten.
 */
const out = resolve(process.argv[2] ?? 'dist')
const count = Number(process.argv[3] ?? 200)
const AT_ONCE = 2

const binders = readdirSync(join(out, 'office'))
  .map(site => `office/${site}/binder.html`)
  .filter(path => existsSync(join(out, path)))

/** Of a process and of all below it, in MB. */
function memoryMb(pid: number): number {
  try {
    const own = /VmRSS:\s*(\d+) kB/u.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? '0'
    const children = readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8').trim().split(' ').filter(Boolean)
    return Number(own) / 1024 + children.reduce((total, one) => total + memoryMb(Number(one)), 0)
  } catch {
    return 0
  }
}

/** As the demo site says. */
const paperOf = (path: string): 'A4' | 'Letter' =>
  /^paper: Letter/mu.test(readFileSync(join('sites', path.split('/')[1] ?? '', 'site.md'), 'utf8')) ? 'Letter' : 'A4'

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? NaN

const lastTen = (values: readonly number[]): string => median(values.slice(-10)).toFixed(0)

const { browser } = await startFirst(options => puppeteer.launch(options), browsersThere())
if (!browser) throw new Error('no browser starts')
const own: number[] = []
const browsers: number[] = []
let pages = 0
let next = 0
async function work(): Promise<void> {
  while (next < count && browser) {
    const path = binders[next % binders.length] ?? ''
    next += 1
    const print = await printPdf(browser, {
      root: out,
      path,
      base: 'https://example.org/',
      paper: paperOf(path),
      on: date('2026-05-01')
    })
    pages += print.pages
    globalThis.gc?.()
    own.push(process.memoryUsage().rss / 2 ** 20)
    browsers.push(memoryMb(browser.process()?.pid ?? 0))
    if (own.length % 20 === 0)
      process.stderr.write(`${own.length} of ${count}: ${lastTen(own)} and ${lastTen(browsers)} MB\n`)
  }
}
try {
  await Promise.all(Array.from({ length: AT_ONCE }, work))
} finally {
  await browser.close()
}
const quarter = Math.floor(count / 4)
for (const [name, values] of [
  ['this process', own],
  ['the browser', browsers]
] as const) {
  const [second, last] = [median(values.slice(quarter, 2 * quarter)), median(values.slice(-quarter))]
  const after = [...new Set([20, count >> 1, count])].filter(binder => binder >= 10 && binder <= count)
  const steps = after.map(binder => `${lastTen(values.slice(0, binder))} MB after ${binder}`)
  process.stdout.write(
    `${name}: ${steps.join(', ')}; ${second.toFixed(0)} MB in the second quarter of ${count} binders, ${last.toFixed(0)} MB in the last, ratio ${(last / second).toFixed(2)}, most ${Math.max(...values).toFixed(0)} MB\n`
  )
}
process.stdout.write(`${pages} pages\n`)
