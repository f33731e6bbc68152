import { readFileSync, rmSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page, Protocol } from 'puppeteer'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { OpenBrowser } from '../../src/render/browser.ts'
import { knownPdfFile } from '../../src/render/pdf-file.ts'
import type { PdfFile } from '../../src/render/pdf-file.ts'
import { fillPlaceholders, placeholders } from '../../src/render/pdf-fill.ts'
import { normalizePdf } from '../../src/render/pdf-normal.ts'
import { printPdf } from '../../src/render/pdf.ts'
import { readPdf } from '../../src/render/pdf-read.ts'
import { writePdfFile } from '../../src/render/pdf-write.ts'
import { date } from '../../src/units/date.ts'
import { aBrowser, binderHtml, htmlPage, printFolder, printJob } from './pdf-fixture.ts'

/** Figures and blank of one width, as in the binders. */
const MONO = '@fontsource/atkinson-hyperlegible-mono/files/atkinson-hyperlegible-mono-latin-700-normal.woff2'
const TYPE = readFileSync(createRequire(import.meta.url).resolve(MONO)).toString('base64')
const FIGURES = `<style>@font-face { font-family: Figures; font-weight: 700; src: url(data:font/woff2;base64,${TYPE}) }
.page-number { font: 700 12pt Figures; white-space: pre }</style>`
const facts = { title: 'x', on: date('2026-05-01') }

let opened: OpenBrowser
let root = ''
beforeAll(async () => {
  opened = await aBrowser()
  root = printFolder()
})
afterAll(async () => {
  await opened.browser.close()
  rmSync(root, { recursive: true })
})

/** Prints links with their placeholders, as they are laid out. */
async function laidOut(count: number, style = FIGURES, texts = placeholders(count)): Promise<PdfFile> {
  const page = await opened.browser.newPage()
  const links = texts.map(
    (text, index) => `<p><a href="#s${index}">To <span class="page-number">${text}</span></a></p>`
  )
  const places = texts.map((_, index) => `<h1 id="s${index}">Here</h1>`)
  try {
    await page.setContent(htmlPage(links.join('') + places.join(''), style))
    return knownPdfFile(await page.pdf({ tagged: true }))
  } finally {
    await page.close()
  }
}

async function textsOf(file: PdfFile, count: number): Promise<string[]> {
  const linksTo = Array.from({ length: count }, (_, index) => `s${index}`)
  const { linkedFrom } = await readPdf(writePdfFile(normalizePdf(file, facts)), { linksTo })
  return linkedFrom.map(({ text }) => text.replace(/[\s\u00a0]+/gu, ' ').trim())
}

describe('page numbers put into a finished print', () => {
  it('stand where the placeholders stood, whatever their length', async () => {
    const numbers = [1, 9, 10, 99, 100, 999, 7]
    const filled = fillPlaceholders(await laidOut(numbers.length), numbers)
    if (!filled) throw new Error('not filled')
    expect(await textsOf(filled, numbers.length)).toEqual(numbers.map(number => `To ${number}`))
  })

  it.each([
    ['a number is too long', [1, 2, 3, 1000], FIGURES, undefined],
    ['there are too few to have all figures among them', [1, 2, 3], FIGURES, undefined],
    ['something else was printed', [1, 2, 3, 4], FIGURES, ['012', '345', '678', 'xyz']],
    [
      'the figures and the blank are of several widths',
      [1, 2, 3, 4],
      '<style>.page-number { font-family: sans-serif; white-space: pre }</style>',
      undefined
    ]
  ])('are left to a second layout where %s', async (_, numbers, style, texts) => {
    expect(
      fillPlaceholders(await laidOut(numbers.length, style, texts ?? placeholders(numbers.length)), numbers)
    ).toBeUndefined()
  })
})

/** A function of the browser has to be called as its own. */
const ofItsOwn = (browser: object, value: unknown): unknown =>
  typeof value === 'function' ? (value.bind(browser) as unknown) : value

describe('a document with page numbers', () => {
  const printings = async (html: string): Promise<number> => {
    let count = 0
    const counting = new Proxy(opened.browser, {
      get: (browser, key) =>
        key === 'createBrowserContext'
          ? async () => {
              const context = await browser.createBrowserContext()
              const newPage = context.newPage.bind(context)
              context.newPage = async (): Promise<Page> => {
                const page = await newPage()
                const createSession = page.createCDPSession.bind(page)
                page.createCDPSession = async () => {
                  const session = await createSession()
                  const send = session.send.bind(session)
                  session.send = ((method: 'Page.printToPDF', params: Protocol.Page.PrintToPDFRequest) => {
                    if (method === 'Page.printToPDF') count += 1
                    return send(method, params)
                  }) as typeof session.send
                  return session
                }
                return page
              }
              return context
            }
          : ofItsOwn(browser, Reflect.get(browser, key))
    })
    await printPdf(counting, printJob(root, html))
    return count
  }

  it('is laid out once where its figures are of one width', async () => {
    expect(await printings(binderHtml([1, 3, 1, 12, 2, 1], FIGURES))).toBe(1)
  })

  it('is laid out twice where there are too few numbers to know every figure by', async () => {
    expect(await printings(binderHtml([1, 3], FIGURES))).toBe(2)
  })
})
