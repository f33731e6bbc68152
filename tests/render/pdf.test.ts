import { createHash } from 'node:crypto'
import { rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'
import { PDFiumLibrary } from '@hyzyla/pdfium'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { OpenBrowser } from '../../src/render/browser.ts'
import { printPdf } from '../../src/render/pdf.ts'
import type { Print } from '../../src/render/pdf.ts'
import { readPdf } from '../../src/render/pdf-read.ts'
import type { PdfContents } from '../../src/render/pdf-read.ts'
import { aBrowser, binderHtml, htmlPage, pdfObjectMap, pdfObjects, printFolder, printJob } from './pdf-fixture.ts'

let opened: OpenBrowser
let root = ''
let print: Print
let contents: PdfContents
const LENGTHS = [1, 3, 1, 12, 2, 1]
/** Page of each section: one page of contents comes before. */
const PAGES = [2, 3, 6, 7, 19, 21]
const LINKS =
  '<p><a href="B/7KQ3F9X/">box page</a> <a href="office/(a)/">parentheses</a> <a href="HTTPS://EXAMPLE.ORG/B/VB2">whole</a></p>'

beforeAll(async () => {
  opened = await aBrowser()
  root = printFolder()
  print = await printPdf(opened.browser, printJob(root, binderHtml(LENGTHS, LINKS)))
  contents = await readPdf(print.bytes, {
    sizes: true,
    bookmarks: true,
    linksTo: LENGTHS.map((_, index) => `s${index}`)
  })
})
afterAll(async () => {
  await opened.browser.close()
  rmSync(root, { recursive: true })
})

const printing = (html: string, changes = {}): Promise<Print> => printPdf(opened.browser, printJob(root, html, changes))
const hash = ({ bytes }: Print): string => createHash('sha256').update(bytes).digest('hex')

describe('a finished print', () => {
  it('carries title, language, tags, and the day it was told', () => {
    expect(contents).toMatchObject({ title: 'Kestrel Cross (binder) – Ω', language: 'en-US', tagged: true })
    const objects = pdfObjects(print.bytes)
    expect(objects).toContain('/CreationDate (D:20260501000000Z)')
    expect(objects).toContain('/Producer (Underlid)')
    expect(objects).not.toMatch(/Mozilla|Skia/u)
  })

  it('has as many pages as it says, all of the paper asked for', () => {
    expect(contents.pages).toBe(21)
    expect(print.pages).toBe(21)
    for (const [width, height] of contents.sizes) {
      expect(Math.abs(width - 595.28)).toBeLessThan(1)
      expect(Math.abs(height - 841.89)).toBeLessThan(1)
    }
  })

  it('has a bookmark for each heading, on its page', () => {
    expect(contents.bookmarks.map(({ title, page }) => [title, page])).toEqual([
      ['Contents', 1],
      ...PAGES.map((page, index) => [`Section ${index} with Ω`, page])
    ])
  })

  it('prints in the contents the page where each section is', () => {
    expect(LENGTHS.map((_, index) => contents.destinations.get(`s${index}`))).toEqual(PAGES)
    expect(contents.linkedFrom.map(({ text }) => text.replace(/\s+/gu, ' ').trim())).toEqual(
      PAGES.map((page, index) => `${index + 1}. Section ${index} ${page}`)
    )
  })

  it('has its type inside: every font of the document, ours among them', () => {
    const objects = pdfObjectMap(print.bytes)
    const fonts = [...objects.values()].filter(object => /\/FontDescriptor \d/u.test(object))
    expect(fonts.some(font => font.includes('AtkinsonHyperlegibleNext'))).toBe(true)
    // A Type 3 font is made of drawings, which stand in the document by their nature.
    for (const font of fonts.filter(object => !object.includes('/Subtype /Type3'))) {
      const descriptor = objects.get(Number(/\/FontDescriptor (\d+)/u.exec(font)?.[1]))
      expect(descriptor).toMatch(/\/FontFile[23]? \d/u)
    }
  })

  it('leads to public addresses, never to a file of the machine that made it', () => {
    const addresses = [...pdfObjects(print.bytes).matchAll(/\/URI \(((?:[^)\\]|\\.)*)\)/gu)].map(match => match[1])
    expect(addresses).toEqual([
      'https://example.org/B/7KQ3F9X/',
      String.raw`https://example.org/office/\(a\)/`,
      'https://example.org/B/VB2'
    ])
    expect(pdfObjects(print.bytes)).not.toContain('file:')
  })

  it('names what it showed', () => {
    expect(print.used).toEqual(['print.css', 'type.woff2'])
  })

  it('is read by another reader too, which finds the same pages and words', async () => {
    const library = await PDFiumLibrary.init()
    const document = await library.loadDocument(print.bytes)
    expect(document.getPageCount()).toBe(21)
    expect(document.getPage(6).getText()).toContain('Section 3 with Ω')
    document.destroy()
    library.destroy()
  })

  it('is packed: tags of a long table take little room', async () => {
    const rows = Array.from({ length: 400 }, (_, row) => `<tr><th scope="row">${row}</th><td>4.4 Ω</td></tr>`)
    const table = `<table><thead><tr><th scope="col">No.</th><th scope="col">Loop</th></tr></thead>${rows.join('')}</table>`
    const { bytes } = await printing(htmlPage(table))
    expect(pdfObjects(bytes).length).toBeGreaterThan(3 * bytes.byteLength)
  })
})

describe('the same document', () => {
  it('gives the same bytes, alone and beside others, and whatever the browser did before', async () => {
    const other = binderHtml([2, 2], '<table><tr><th scope="col">a</th></tr><tr><td>b</td></tr></table>')
    const html = binderHtml(LENGTHS, LINKS)
    await printing(other)
    const together = await Promise.all([printing(html), printing(other), printing(html)])
    const fresh = await aBrowser()
    const elsewhere = await printPdf(fresh.browser, printJob(root, html)).finally(() => fresh.browser.close())
    const hashes = [print, together[0], together[2], elsewhere].map(hash)
    expect(new Set(hashes).size).toBe(1)
    expect(hash(together[1])).not.toBe(hashes[0])
  })

  it('taken to be made on another day differs', async () => {
    const html = htmlPage('<h1>One</h1>')
    const days = [printing(html), printing(html, { on: '2026-05-02' })]
    const [first, second] = await Promise.all(days)
    expect(first && second && hash(first) !== hash(second)).toBe(true)
  })
})

describe('page numbers', () => {
  it('settle where the numbers themselves move what follows', async () => {
    const start = '<a href="#end">End <span class="page-number" data-target="end"></span></a>'
    // As soon as it is filled in, the number is a block that pushes the end onto the next page.
    const style = '<style>.page-number:not(:empty) { display: block; height: 200mm }</style>'
    const html = htmlPage(`${start}<div style="height: 60mm"></div><h1 id="end">End</h1>`, style)
    const { bytes } = await printing(html)
    const { destinations, linkedFrom } = await readPdf(bytes, { linksTo: ['end'] })
    expect(destinations.get('end')).toBe(2)
    expect(linkedFrom[0]?.text).toMatch(/\b2$/u)
  })

  it('for a place that is not there stop the print, which says so', async () => {
    const html = htmlPage('<h1>One</h1><span class="page-number" data-target="gone"></span>')
    await expect(printing(html)).rejects.toThrow(/^binder-\d+\.html could not be printed\. The contents name "gone"/u)
  })

  it('that the contents do not show stop the print', async () => {
    const hidden = '<style>.page-number { display: none }</style>'
    const html = htmlPage(
      '<a href="#end">End</a><span class="page-number" data-target="end"></span><h1 id="end" style="break-before: page">End</h1>',
      hidden
    )
    await expect(printing(html)).rejects.toThrow('do not print page 2 for "end"')
  })
})

describe('a document that is not whole is not printed, and the message names what is wrong', () => {
  it.each([
    ['a picture that is not there', htmlPage('<h1>One</h1><img src="photo.jpg" alt="">'), 'photo.jpg is not there.'],
    ['a link to nowhere', htmlPage('<h1>One</h1><a href="#nowhere">x</a>'), '"#nowhere", which is not there.'],
    ['an id twice', htmlPage('<h1 id="a">One</h1><p id="a">x</p>'), 'The id "a" stands more than once.'],
    ['no language', htmlPage('<h1>One</h1>', '', ''), 'does not say its language'],
    [
      'a page of another size',
      htmlPage('<h1>One</h1>', '<style>@page { size: 100mm 100mm }</style>'),
      'Page 1 is not A4.'
    ],
    [
      'a file above the root',
      htmlPage('<h1>One</h1><img src="%2e%2e%2f%2e%2e%2fetc/hostname" alt="">'),
      'is not there.'
    ],
    ['a link above the root', htmlPage('<h1>One</h1><a href="../x.html">x</a>'), 'above what may be shown.']
  ])('%s', async (_, html, words) => {
    await expect(printing(html)).rejects.toThrow(words)
  })

  it('a document that is not there', async () => {
    await expect(printPdf(opened.browser, printJob(root, '', { path: 'gone.html' }))).rejects.toThrow()
  })
})

describe('while printing', () => {
  it('nothing is hung on the browser that would keep the print as long as the browser lasts', async () => {
    const waiting = (): number => opened.browser.listenerCount('disconnected')
    const before = waiting()
    await printing(htmlPage('<h1>One</h1>'))
    expect(waiting()).toBe(before)
  })

  it('nothing is fetched from a network', async () => {
    let asked = 0
    const server = createServer((_, response) => {
      asked += 1
      response.end()
    })
    await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve))
    const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/x.png`
    await expect(printing(htmlPage(`<h1>One</h1><img src="${address}" alt="">`))).rejects.toThrow(
      `${address} is not there.`
    )
    server.close()
    expect(asked).toBe(0)
  })

  it('no script of the document runs', async () => {
    const script = '<script>document.body.innerHTML = "<h1>Changed</h1>"</script>'
    const { bytes } = await printing(htmlPage(`<h1>As written</h1>${script}`))
    expect((await readPdf(bytes, { bookmarks: true })).bookmarks.map(({ title }) => title)).toEqual(['As written'])
  })

  it('a picture inside the document and one beside it are shown', async () => {
    writeFileSync(
      join(root, 'plan.svg'),
      '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><path d="M0 0h9v9z"/></svg>'
    )
    const dot = 'data:image/svg+xml,%3Csvg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/%3E'
    const { used } = await printing(htmlPage(`<h1>One</h1><img src="plan.svg" alt="Plan"><img src='${dot}' alt="Dot">`))
    expect(used).toContain('plan.svg')
  })

  it('a sideways page of the same paper, and US Letter, are as good', async () => {
    const wide = htmlPage(
      '<h1>One</h1><div style="page: wide">Wide</div>',
      '<style>@page wide { size: A4 landscape }</style>'
    )
    expect((await printing(wide)).pages).toBe(2)
    const letter = htmlPage('<h1>One</h1>', '<style>@page { size: Letter }</style>')
    expect((await printing(letter, { paper: 'Letter' })).pages).toBe(1)
  })
})
