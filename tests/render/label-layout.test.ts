import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Page } from 'puppeteer'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { assessFleet } from '../../src/build/assess.ts'
import { contextOf } from '../../src/build/page-context.ts'
import { publicContext } from '../../src/binder/context.ts'
import { PLAIN_LABEL, PLAN_LABEL } from '../../src/binder/label-size.ts'
import { makeLabelSheet } from '../../src/binder/make-labels.ts'
import type { LabelWish } from '../../src/binder/make-labels.ts'
import type { Label, LabelSheet } from '../../src/binder/pages.ts'
import type { OpenBrowser } from '../../src/render/browser.ts'
import { fontCss } from '../../src/render/font-faces.ts'
import { MONO_EM, textEm } from '../../src/render/letter-widths.ts'
import { date } from '../../src/units/date.ts'
import { wordsOf } from '../../src/words/languages.ts'
import { renderPage } from '../look/render-all.ts'
import { roomyLabels } from '../../src/build/label-notes.ts'
import { aBrowser } from './pdf-fixture.ts'

/* Labels as the browser that prints lays them out: what the table of letters promises has to hold there. */

let opened: OpenBrowser
let page: Page
const folder = mkdtempSync(join(tmpdir(), 'underlid-label-layout-'))

beforeAll(async () => {
  opened = await aBrowser()
  page = await opened.browser.newPage()
})
afterAll(async () => {
  await opened.browser.close()
  rmSync(folder, { recursive: true })
})

const contexts = assessFleet('sites', date('2026-05-01'))
  .sites.flatMap(one => contextOf(one, 'HTTPS://EXAMPLE.ORG'))
  .map(publicContext)

/** Every demo label, in a language, and the same with much to say. */
function sheetOf(wish: LabelWish, language: string): LabelSheet {
  const sheets = contexts.map(one => makeLabelSheet({ ...one, words: wordsOf(language) }, wish))
  const labels = sheets.flatMap(one => one.labels.slice(0, 2))
  const all = { ...(sheets[0] as LabelSheet), language, labels: labels.flatMap(one => [one, wordy(one)]) }
  const { sheet } = roomyLabels(all, wordsOf(language))
  // Only wordy ones may be left out, and none of the plain size.
  expect(sheet.labels.length).toBeGreaterThanOrEqual(wish.size === PLAIN_LABEL ? all.labels.length : labels.length)
  return sheet
}

const wordy = (label: Label): Label => ({
  ...label,
  site: `${label.site}, from the old ferry landing to the weigh house`,
  hazardLine: 'LIVE TRAFFIC and reclaimed water: close the lane first, and wash your hands after.',
  shutOff: `${label.shutOff} · pump house behind the sheds, second valve from the left, six turns`,
  stations: Array.from({ length: 18 }, (_, at) => ({
    station: `K12/${at + 1}`,
    waters: at % 3 === 0 ? 'Z1 · herbaceous border along the wall, drip' : `Z${at + 1} · lawn`
  })),
  battery: `${label.battery}, 4 × AA lithium`,
  coil: `${label.coil} · DC latching 3-wire`
})

/** What stands out of its place on a label, in words; run in the page. */
const OVERFLOWS = `[...document.querySelectorAll('.label')].flatMap(label => {
  const face = label.querySelector('.plate-face').getBoundingClientRect()
  const found = []
  for (const one of label.querySelectorAll('p, li, dt, dd, .qr')) {
    const box = one.getBoundingClientRect()
    const over = Math.max(face.left - box.left, face.top - box.top, box.right - face.right, box.bottom - face.bottom)
    if (over > 1) found.push(label.getAttribute('aria-label') + ': ' + (one.textContent || 'code').slice(0, 40) + ' stands out by ' + over.toFixed(1))
  }
  const spans = ['.label-words', '.label-plan > div', '.label-centre'].flatMap(one => [...label.querySelectorAll(one)])
  for (const one of spans) if (one.scrollHeight > one.clientHeight + 1 || one.scrollWidth > one.clientWidth + 1)
    found.push(label.getAttribute('aria-label') + ': ' + one.className + ' holds more than it has room for')
  const blocks = [...label.querySelectorAll('.label-hazard, .label-main, .label-stop, .label-foot, .label-url, .label-plan')]
  for (const [at, one] of blocks.entries()) {
    const next = blocks[at + 1]
    const inner = Math.max(...[...one.querySelectorAll('*')].map(part => part.getBoundingClientRect().bottom))
    if (next && inner > next.getBoundingClientRect().top + 1)
      found.push(label.getAttribute('aria-label') + ': ' + one.className + ' runs into ' + next.className)
  }
  return found
})`

describe('labels in the browser that prints', () => {
  it.each([
    [PLAIN_LABEL, false],
    [PLAN_LABEL, true],
    [{ widthMm: 90, heightMm: 60 }, false],
    [{ widthMm: 127, heightMm: 76.2 }, false],
    [{ widthMm: 100, heightMm: 110 }, true],
    [{ widthMm: 190, heightMm: 120 }, false]
  ])(
    'of %o keep all within their plate, wordy ones and those in Spanish too',
    async (size, planCode) => {
      for (const language of ['en-US', 'es']) {
        const sheet = sheetOf({ size, single: false, planCode }, language)
        const file = join(folder, 'labels.html')
        writeFileSync(file, renderPage('pages/labels.njk', sheet))
        await page.goto(pathToFileURL(file).href)
        await page.evaluate('document.fonts.ready.then(() => true)')
        expect(await page.evaluate(OVERFLOWS)).toEqual([])
        expect(await page.evaluate("document.querySelectorAll('.label').length")).toBe(sheet.labels.length)
      }
    },
    120_000
  )

  it('letters are no wider than the table says', async () => {
    await page.setContent(
      `<style>${fontCss()}</style><p style="font:700 9px 'Atkinson Hyperlegible Next'">x</p><p style="font:400 9px 'Atkinson Hyperlegible Next'">x</p><p style="font:700 9px 'Atkinson Hyperlegible Mono'">x</p>`
    )
    const letters = Array.from({ length: 0xff - 0x20 }, (_, at) => String.fromCharCode(at + 0x20)).filter(
      one => !/[\u007f-\u009f\u00ad\u00b5]/u.test(one)
    )
    const widths = (await page.evaluate(`document.fonts.ready.then(() => {
      const canvas = document.createElement('canvas').getContext('2d')
      return ${JSON.stringify(letters)}.map(letter => ["700 1000px 'Atkinson Hyperlegible Next'", "400 1000px 'Atkinson Hyperlegible Next'", "700 1000px 'Atkinson Hyperlegible Mono'"].map(font => {
        canvas.font = font
        return canvas.measureText(letter).width / 1000
      }))
    })`)) as [number, number, number][]
    for (const [at, [bold, plain, mono]] of widths.entries()) {
      const table = textEm(letters[at] ?? '')
      expect(table, letters[at]).toBeGreaterThanOrEqual(bold - 1e-6)
      expect(table, letters[at]).toBeGreaterThanOrEqual(plain - 0.006)
      expect(table, letters[at]).toBeLessThanOrEqual(Math.max(bold, plain) + 0.021)
      expect(mono).toBeLessThanOrEqual(MONO_EM + 1e-6)
    }
  })
})
