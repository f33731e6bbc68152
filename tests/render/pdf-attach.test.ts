import { createHash } from 'node:crypto'
import { rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { PDFiumLibrary } from '@hyzyla/pdfium'
import { PDFDocument, degrees } from 'pdf-lib'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { OpenBrowser } from '../../src/render/browser.ts'
import { printPdf } from '../../src/render/pdf.ts'
import type { Print } from '../../src/render/pdf.ts'
import { readPdf } from '../../src/render/pdf-read.ts'
import { aBrowser, htmlPage, printFolder, printJob } from './pdf-fixture.ts'

let opened: OpenBrowser
let root = ''
beforeAll(async () => {
  opened = await aBrowser()
  root = printFolder()
  writeFileSync(join(root, 'two sheets.pdf'), await twoSheets())
})
afterAll(async () => {
  await opened.browser.close()
  rmSync(root, { recursive: true })
})

/** An upright sheet and a turned one, each with a word of its own. */
async function twoSheets(): Promise<Uint8Array> {
  const sheets = await PDFDocument.create()
  sheets.addPage([595, 842]).drawText('FIRSTSHEET', { x: 80, y: 700, size: 30 })
  sheets.addPage([1190, 842]).drawText('SECONDSHEET', { x: 80, y: 500, size: 30, rotate: degrees(20) })
  return sheets.save()
}

const STYLE = '<style>a.place { display: block; height: 200mm; break-before: page }</style>'
const place = (file: string, page: number): string =>
  `<a class="place" href="attach:${encodeURIComponent(file)}/${page}" aria-label="Sheet ${page}"></a>`
const binder = (...places: readonly string[]): string =>
  htmlPage(`<h1>Before</h1>${places.join('')}<h1 style="break-before: page" id="end">After</h1>`, STYLE)
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

  it('that lie outside the folder stop the print', async () => {
    await expect(printing(binder(place('../../etc/hosts.pdf', 1)))).rejects.toThrow('outside what may be shown')
  })
})
