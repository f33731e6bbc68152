import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Binder } from '../../src/binder/blocks.ts'
import type { LabelSheet } from '../../src/binder/pages.ts'
import type { OpenBrowser } from '../../src/render/browser.ts'
import { knownPdfFile } from '../../src/render/pdf-file.ts'
import { printPage } from '../../src/render/pdf-page.ts'
import { printPdf } from '../../src/render/pdf.ts'
import { readPdf } from '../../src/render/pdf-read.ts'
import { unpacked } from '../../src/render/pdf-streams.ts'
import { date } from '../../src/units/date.ts'
import { BINDER_METRIC } from '../look/binder-metric.ts'
import { BINDER_US } from '../look/binder-us.ts'
import { renderPage } from '../look/render-all.ts'
import { LABELS_METRIC, LABELS_US } from '../look/sheets.ts'
import { byZxing, photocopy, picturesOf } from '../support/read-codes.ts'
import { aBrowser } from './pdf-fixture.ts'

/** What elements of a page have; their own types are not known here. */
interface Styled {
  readonly style: { marginLeft: string }
}

let opened: OpenBrowser
let folder = ''

beforeAll(async () => {
  opened = await aBrowser()
  folder = mkdtempSync(join(tmpdir(), 'underlid-labels-'))
})
afterAll(async () => {
  await opened.browser.close()
  rmSync(folder, { recursive: true })
})

async function print(template: string, view: Binder | LabelSheet): Promise<Uint8Array> {
  writeFileSync(join(folder, 'page.html'), renderPage(template, view))
  const job = {
    root: folder,
    path: 'page.html',
    base: 'https://example.org/',
    paper: view.paper,
    on: date('2026-05-01')
  }
  return (await printPdf(opened.browser, job)).bytes
}

/** As paper.css has them; a hole reaches 16.3 mm from the edge. */
const HOLE_MARGIN_MM = { inner: 23, outer: 17, reach: 16.3 } as const

interface TextEdges {
  readonly number: number
  readonly turned: boolean
  readonly leftMm: number
  readonly rightMm: number
  readonly topMm: number
  readonly bottomMm: number
  /** From the page number to the nearer edge. */
  readonly numberMm: number
}

/** How near text comes to each edge of each page, as another program reads it. */
async function textEdges(data: Uint8Array): Promise<TextEdges[]> {
  const task = getDocument({
    data: data.slice(),
    verbosity: VerbosityLevel.ERRORS,
    useSystemFonts: false,
    disableFontFace: true
  })
  try {
    const document = await task.promise
    return await Promise.all(
      Array.from({ length: document.numPages }, async (_, index) => {
        const page = await document.getPage(index + 1)
        const [, , width = 0, height = 0] = page.view
        const { items } = await page.getTextContent()
        const texts = items.flatMap(item => ('str' in item && item.str.trim() !== '' ? [item] : []))
        const mm = (points: number): number => (points * 25.4) / 72
        const lefts = texts.map(one => Number(one.transform[4]))
        const rights = texts.map(one => Number(one.transform[4]) + one.width)
        const bases = texts.map(one => Number(one.transform[5]))
        const number = texts.find(one => one.str.trim() === String(index + 1) && Number(one.transform[5]) < 60)
        const at = Number(number?.transform[4] ?? Number.NaN)
        return {
          number: index + 1,
          turned: width > height,
          leftMm: mm(Math.min(...lefts)),
          rightMm: mm(width - Math.max(...rights)),
          topMm: mm(height - Math.max(...texts.map(one => Number(one.transform[5]) + one.height * 0.8))),
          bottomMm: mm(Math.min(...bases)),
          numberMm: mm(Math.min(at, width - at))
        }
      })
    )
  } finally {
    await task.destroy()
  }
}

describe('printed labels', () => {
  it('hold each code twice, apart, and both are read from the sheet and from its photocopy', async () => {
    const sheet: LabelSheet = { ...LABELS_METRIC, labels: LABELS_METRIC.labels.slice(0, 3) }
    const file = join(folder, 'labels.pdf')
    writeFileSync(file, await print('pages/labels.njk', sheet))
    const pictures = await picturesOf(file, 200)
    const expected = sheet.labels.flatMap(label => [label.qr.text, label.qr.text]).sort()
    const read = await Promise.all(pictures.map(byZxing))
    expect(read.flat().sort()).toEqual(expected)
    const copied = await Promise.all(pictures.map(picture => byZxing(photocopy(picture))))
    expect(copied.flat().sort()).toEqual(expected)
  })

  it.each([LABELS_METRIC, LABELS_US])('stand three on a sheet of $paper', async sheet => {
    const [label] = sheet.labels
    const seven = { ...sheet, labels: Array.from({ length: 8 }, () => label) } as LabelSheet
    // The first sheet has its heading and two, the others three.
    expect((await readPdf(await print('pages/labels.njk', seven))).pages).toBe(3)
  })
})

describe('printed binders', () => {
  it.each([BINDER_METRIC, BINDER_US])(
    'of $paper have a cover of one page, a bookmark for each section and the page it stands on',
    async binder => {
      const pdf = await readPdf(await print('pages/binder.njk', binder), {
        sizes: true,
        bookmarks: true,
        linksTo: binder.sections.map(section => section.id)
      })
      expect(pdf.linkedFrom.at(0)?.page).toBe(2)
      expect(pdf.title).toBe(`${binder.title} · ${binder.subtitle}`)
      const titles = pdf.bookmarks.map(bookmark => bookmark.title)
      for (const section of binder.sections) expect(titles.some(title => title.includes(section.title))).toBe(true)
      expect(pdf.sizes.some(([width, height]) => width > height)).toBe(binder === BINDER_METRIC)
    }
  )

  it.each([BINDER_METRIC, BINDER_US])(
    'of $paper keep text off the holes: their margin is on the left of odd pages, on the right of even ones, and clear on turned ones',
    async binder => {
      const pages = await textEdges(await print('pages/binder.njk', binder))
      const upright = pages.filter(({ turned }) => !turned)
      expect(new Set(upright.map(({ number }) => number % 2)).size).toBe(2)
      for (const { number, leftMm, rightMm } of upright) {
        const [inner, outer] = number % 2 === 1 ? [leftMm, rightMm] : [rightMm, leftMm]
        // A label of a drawing may stand out by its last letter.
        expect(inner, `page ${number}`).toBeGreaterThan(HOLE_MARGIN_MM.inner - 2)
        expect(outer, `page ${number}`).toBeGreaterThan(HOLE_MARGIN_MM.outer - 2)
      }
      for (const { number, topMm, bottomMm } of pages.filter(({ turned }) => turned))
        expect(Math.min(topMm, bottomMm), `page ${number}`).toBeGreaterThan(HOLE_MARGIN_MM.reach)
      for (const { number, numberMm } of upright.filter(one => one.number > 1))
        expect(numberMm, `page ${number}`).toBeLessThan(HOLE_MARGIN_MM.outer + 25)
    }
  )

  it('a wide table begins on the sheet of its section\u2019s title, never after a sheet that holds the title alone', async () => {
    const sections = BINDER_METRIC.sections.filter(section => ['wires', 'schedule'].includes(section.id))
    const pdf = await readPdf(await print('pages/binder.njk', { ...BINDER_METRIC, sections }), { sizes: true })
    const turned = pdf.sizes.flatMap(([width, height], index) => (width > height ? [index + 1] : []))
    expect(turned).toContain(pdf.destinations.get('wires'))
    expect(turned).toContain(pdf.destinations.get('schedule'))
  })

  it('put each letter at one height, whether the browser has come to keep a box of its own for what it stands in or not', async () => {
    writeFileSync(join(folder, 'page.html'), renderPage('pages/binder.njk', BINDER_METRIC))
    const heights = async (boxed: string): Promise<string[]> => {
      const page = await opened.browser.newPage()
      await page.goto(pathToFileURL(join(folder, 'page.html')).href)
      // The least margin that counts makes it keep one.
      await page.$$eval(boxed, all => {
        for (const one of all) (one as typeof one & Styled).style.marginLeft = '0.017px'
      })
      const file = knownPdfFile(await printPage(page, [595.28, 841.89]))
      await page.close()
      return [...file.objects.values()].flatMap(object =>
        [...(unpacked(object)?.toString('latin1') ?? '').matchAll(/^1 0 0 -1 \S+ (\S+) Tm$/gmu)].map(([, y]) => y ?? '')
      )
    }
    const free = await heights('sup.none')
    expect(free.length).toBeGreaterThan(1000)
    expect(await heights('sup, i, b, code, em, strong, a, span')).toEqual(free)
  })
})
