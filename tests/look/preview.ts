/* Renders the invented pages to a folder, prints them and takes pictures, to be looked at: npx tsx tests/look/preview.ts FOLDER [name…] */
import { execFileSync } from 'node:child_process'
import { mkdirSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import type { Browser } from 'puppeteer'
import { isNoBrowser, openBrowser } from '../../src/render/browser.ts'
import { printPdf } from '../../src/render/pdf.ts'
import { date } from '../../src/units/date.ts'
import { PAGES, renderPage } from './render-all.ts'

const [folder = join(tmpdir(), 'look'), ...wanted] = process.argv.slice(2)
const out = resolve(folder)
mkdirSync(out, { recursive: true })

const opened = await openBrowser()
if (isNoBrowser(opened)) throw new Error(opened.told.join('\n'))
const { browser } = opened
try {
  for (const page of PAGES) {
    if (wanted.length > 0 && !wanted.includes(page.name)) continue
    const html = renderPage(page.template, page.view)
    writeFileSync(join(out, `${page.name}.html`), html)
    if (page.kind === 'print') await print(browser, page.name, page.view.paper)
    else await pictures(browser, page.name, page.kind === 'box' ? [320, 360] : [360, 1200])
  }
} finally {
  await browser.close()
}

async function print(browser: Browser, name: string, paper: 'A4' | 'Letter'): Promise<void> {
  const job = { root: out, path: `${name}.html`, base: 'https://example.org/', paper, on: date('2026-05-01') }
  const { bytes } = await printPdf(browser, job)
  writeFileSync(join(out, `${name}.pdf`), bytes)
  execFileSync('pdftoppm', ['-r', '70', '-png', join(out, `${name}.pdf`), join(out, name)])
}

async function pictures(browser: Browser, name: string, widths: readonly number[]): Promise<void> {
  const page = await browser.newPage()
  for (const width of widths) {
    await page.setViewport({ width, height: 640, deviceScaleFactor: width < 500 ? 2 : 1 })
    await page.goto(`file://${join(out, `${name}.html`)}`)
    const path = (part: string) => join(out, `${name}-${width}${part}.png`) as `${string}.png`
    const wide = await page.evaluate('document.documentElement.scrollWidth')
    if (Number(wide) > width) process.stdout.write(`${name} is ${wide} px wide at ${width} px\n`)
    await page.screenshot({ path: path('-first') })
    await page.screenshot({ path: path(''), fullPage: true })
  }
  await page.pdf({ path: join(out, `${name}.pdf`), printBackground: true, preferCSSPageSize: true })
  await page.close()
}
