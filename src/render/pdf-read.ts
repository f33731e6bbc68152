import type * as Reader from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { groupBy } from '../base/collections.ts'

export interface Bookmark {
  readonly title: string
  /** From 1. */
  readonly page: number
  readonly depth: number
}

/** What a finished PDF says of itself. */
export interface PdfContents {
  readonly pages: number
  readonly title: string
  readonly language: string
  readonly tagged: boolean
  readonly bookmarks: readonly Bookmark[]
  /** Page, from 1, of every named destination. */
  readonly destinations: ReadonlyMap<string, number>
  /** Width and height of each page, in points (1/72 in). */
  readonly sizes: readonly (readonly [number, number])[]
  /** For each name asked for and each page that links to it: the text on the lines of those links. */
  readonly linkedFrom: readonly { readonly page: number; readonly name: string; readonly text: string }[]
}

export interface ReadWish {
  readonly sizes?: boolean
  readonly bookmarks?: boolean
  /** Names of destinations: pages are read for links to them and the text beside. */
  readonly linksTo?: readonly string[]
  /** Pages, from 1, that are read for such links; all where nothing is said. */
  readonly linksOn?: readonly number[]
}

/** The program that reads, with its helper. They are slow to read in: whoever will want them may ask for them while it waits. */
export async function pdfReader(): Promise<typeof Reader> {
  const [reader] = await Promise.all([
    import('pdfjs-dist/legacy/build/pdf.mjs'),
    import('pdfjs-dist/legacy/build/pdf.worker.mjs')
  ])
  return reader
}

/** Reads a PDF with another program than the one that wrote it. */
export async function readPdf(bytes: Uint8Array, wish: ReadWish = {}): Promise<PdfContents> {
  const { getDocument, VerbosityLevel } = await pdfReader()
  const task = getDocument({
    data: bytes.slice(),
    verbosity: VerbosityLevel.ERRORS,
    useSystemFonts: false,
    disableFontFace: true
  })
  try {
    const document = await task.promise
    const { info } = await document.getMetadata()
    const facts = info as { Title?: string; Language?: string | null }
    return {
      pages: document.numPages,
      title: facts.Title ?? '',
      language: facts.Language ?? '',
      tagged: (await document.getMarkInfo())?.Marked === true,
      bookmarks: wish.bookmarks ? await bookmarksOf(document) : [],
      destinations: await destinationsOf(document),
      sizes: wish.sizes ? await sizesOf(document) : [],
      linkedFrom: wish.linksTo ? await linkedFrom(document, wish.linksTo, wish.linksOn) : []
    }
  } finally {
    await task.destroy()
  }
}

type Destination = readonly unknown[]

async function destinationsOf(document: PDFDocumentProxy): Promise<Map<string, number>> {
  const named = (await document.getDestinations()) as Record<string, Destination>
  const pages = new Map<string, number>()
  for (const [name, destination] of Object.entries(named)) {
    const page = await pageOf(document, destination)
    if (page !== undefined) pages.set(name, page)
  }
  return pages
}

async function pageOf(document: PDFDocumentProxy, destination: Destination | null): Promise<number | undefined> {
  const target = destination?.[0]
  if (typeof target !== 'object' || target === null) return undefined
  return (await document.getPageIndex(target as { num: number; gen: number })) + 1
}

interface OutlineItem {
  readonly title: string
  readonly dest: string | Destination | null
  readonly items: readonly OutlineItem[]
}

async function bookmarksOf(document: PDFDocumentProxy): Promise<Bookmark[]> {
  const found: Bookmark[] = []
  const walk = async (items: readonly OutlineItem[], depth: number): Promise<void> => {
    for (const { title, dest, items: below } of items) {
      const destination = typeof dest === 'string' ? await document.getDestination(dest) : dest
      found.push({ title, page: (await pageOf(document, destination)) ?? 0, depth })
      await walk(below, depth + 1)
    }
  }
  await walk(((await document.getOutline()) ?? []) as unknown as readonly OutlineItem[], 0)
  return found
}

async function sizesOf(document: PDFDocumentProxy): Promise<(readonly [number, number])[]> {
  const sizes: (readonly [number, number])[] = []
  for (let number = 1; number <= document.numPages; number += 1) {
    const [left = 0, bottom = 0, right = 0, top = 0] = (await document.getPage(number)).view
    sizes.push([right - left, top - bottom])
  }
  return sizes
}

interface Link {
  readonly dest?: unknown
  readonly rect: readonly number[]
}

async function linkedFrom(
  document: PDFDocumentProxy,
  names: readonly string[],
  pages: readonly number[] = Array.from({ length: document.numPages }, (_, index) => index + 1)
): Promise<PdfContents['linkedFrom']> {
  const wanted = new Set<unknown>(names)
  const found: { page: number; name: string; text: string }[] = []
  for (const number of pages) {
    const page = await document.getPage(number)
    const links = ((await page.getAnnotations()) as Link[]).filter(({ dest }) => wanted.has(dest))
    if (links.length === 0) continue
    const { items } = await page.getTextContent()
    const words = items.filter(item => 'str' in item)
    for (const [name, own] of groupBy(links, ({ dest }) => String(dest)))
      found.push({
        page: number,
        name,
        text: textBeside(
          words,
          own.map(({ rect }) => rect)
        )
      })
  }
  return found
}

interface Word {
  readonly str: string
  readonly width: number
  /** The last two are where it starts: across and up. */
  readonly transform: readonly number[]
}

/** Text whose baseline lies within the height of one of the rectangles; a gap of more than a point is a blank. */
function textBeside(words: readonly Word[], rects: readonly (readonly number[])[]): string {
  let [text, end] = ['', 0]
  for (const { str, width, transform } of words) {
    const [x = 0, y = 0] = transform.slice(4)
    if (!rects.some(([, bottom = 0, , top = 0]) => y >= bottom && y <= top)) continue
    text += Math.abs(x - end) > 1 ? ` ${str}` : str
    end = x + width
  }
  return text
}
