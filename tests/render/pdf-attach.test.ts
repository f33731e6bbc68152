import { createHash } from 'node:crypto'
import { rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { PDFiumLibrary } from '@hyzyla/pdfium'
import { PDFDocument, degrees } from 'pdf-lib'
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { OpenBrowser } from '../../src/render/browser.ts'
import { printPdf } from '../../src/render/pdf.ts'
import type { Print } from '../../src/render/pdf.ts'
import { readPdf } from '../../src/render/pdf-read.ts'
import { aBrowser, htmlPage, pdfObjects, printFolder, printJob } from './pdf-fixture.ts'

let opened: OpenBrowser
let root = ''
beforeAll(async () => {
  opened = await aBrowser()
  root = printFolder()
  writeFileSync(join(root, 'two sheets.pdf'), await twoSheets())
  writeFileSync(join(root, 'turned (scan).pdf'), await turnedSheets())
})
afterAll(async () => {
  await opened.browser.close()
  rmSync(root, { recursive: true })
})

/** An upright sheet and a turned one, each with a word of its own. */
async function twoSheets(): Promise<Uint8Array> {
  const sheets = await PDFDocument.create()
  const font = await sheets.embedFont('Helvetica')
  sheets.addPage([595, 842]).drawText('FIRSTSHEET', { x: 80, y: 700, size: 30, font })
  sheets.addPage([1190, 842]).drawText('SECONDSHEET', { x: 80, y: 500, size: 30, font, rotate: degrees(20) })
  return sheets.save()
}

/** Sheets that say how far they are to be turned, each with its word written so that it reads upright then; and an empty one. */
async function turnedSheets(): Promise<Uint8Array> {
  const sheets = await PDFDocument.create()
  for (const turn of TURNS) {
    const sheet = sheets.addPage([500, 300])
    sheet.drawText(`TURN${turn}`, { x: 250, y: 150, size: 20, rotate: degrees(turn) })
    sheet.setRotation(degrees(turn))
  }
  sheets.addPage([500, 300])
  return sheets.save()
}
const TURNS = [0, 90, 180, 270]

const STYLE = '<style>a.place { display: block; height: 200mm; break-before: page }</style>'
const place = (file: string, page: number): string =>
  `<a class="place" href="attach:${encodeURIComponent(file)}/${page}" aria-label="Sheet ${page}"></a>`
const binder = (...places: readonly string[]): string =>
  htmlPage(`<h1>Before</h1>${places.join('')}<h1 style="break-before: page" id="end">After</h1>`, STYLE)
const near = (value = NaN): number => Math.abs(Math.round(value * 1000))
const printing = (html: string): Promise<Print> => printPdf(opened.browser, printJob(root, html))

async function pageTexts(bytes: Uint8Array): Promise<string[]> {
  const library = await PDFiumLibrary.init()
  const document = await library.loadDocument(bytes)
  const texts = [...document.pages()].map(page => page.getText())
  document.destroy()
  library.destroy()
  return texts
}

describe('sheets that are bound in', () => {
  it('stand on their own pages, in their order, as text and lines and not as pictures', async () => {
    const { bytes, used } = await printing(binder(place('two sheets.pdf', 1), place('two sheets.pdf', 2)))
    const texts = await pageTexts(bytes)
    expect(texts).toHaveLength(4)
    expect(texts[1]).toContain('FIRSTSHEET')
    expect(texts[2]).toContain('SECONDSHEET')
    expect(used).toContain('two sheets.pdf')
  })

  it('leave the document tagged, with its bookmarks and the pages after them', async () => {
    const { bytes } = await printing(binder(place('two sheets.pdf', 1)))
    const { tagged, bookmarks, destinations: _ } = await readPdf(bytes, { bookmarks: true })
    expect(tagged).toBe(true)
    expect(bookmarks.map(({ title, page }) => [title, page])).toEqual([
      ['Before', 1],
      ['After', 3]
    ])
  })

  it('leave no link that leads nowhere', async () => {
    const { bytes } = await printing(binder(place('two sheets.pdf', 1)))
    const text = Buffer.from((await PDFDocument.load(bytes)).context.enumerateIndirectObjects().join('\n')).toString()
    expect(text).not.toContain('attach:')
  })

  it('give the same bytes twice', async () => {
    const html = binder(place('two sheets.pdf', 2))
    const job = printJob(root, html)
    const [one, two] = [await printPdf(opened.browser, job), await printPdf(opened.browser, job)]
    const hash = ({ bytes }: Print) => createHash('sha256').update(bytes).digest('hex')
    expect(hash(one)).toBe(hash(two))
  })

  it('are turned as their files say', async () => {
    const { bytes } = await printing(binder(...TURNS.map((_, index) => place('turned (scan).pdf', index + 1))))
    const task = getDocument({ data: bytes.slice(), verbosity: VerbosityLevel.ERRORS })
    const document = await task.promise
    for (const [index, turn] of TURNS.entries()) {
      const { items } = await (await document.getPage(index + 2)).getTextContent()
      const word = items.flatMap(item => ('str' in item && item.str === `TURN${turn}` ? [item] : []))[0]
      const [across = 0, rise, lean, up = 0, x = 0] = (word?.transform ?? []) as number[]
      expect([across > 0, up > 0, near(rise), near(lean)]).toEqual([true, true, 0, 0])
      // The word starts in the middle of its sheet, and the sheet lies in the middle of the page (A4 is 595 points wide).
      expect(Math.abs(x - 297.6)).toBeLessThan(1)
    }
    await task.destroy()
  })

  it('may be empty, may stand twice, and share what their file shares', async () => {
    const places = [place('turned (scan).pdf', 5), place('two sheets.pdf', 1), place('two sheets.pdf', 1)]
    const { bytes, pages } = await printing(binder(...places, place('two sheets.pdf', 2)))
    expect(pages).toBe(6)
    const texts = await pageTexts(bytes)
    expect(texts.map(text => /FIRST|SECOND/u.exec(text)?.[0] ?? '')).toEqual(['', '', 'FIRST', 'FIRST', 'SECOND', ''])
    expect(pdfObjects(bytes).match(/\/BaseFont \/Helvetica\b/gu)).toHaveLength(1)
  })

  it('that their file does not have stop the print', async () => {
    await expect(printing(binder(place('two sheets.pdf', 3)))).rejects.toThrow('two sheets.pdf has no page 3.')
  })

  it('that lie outside the folder stop the print', async () => {
    await expect(printing(binder(place('../../etc/hosts.pdf', 1)))).rejects.toThrow('outside what may be shown')
  })
})
