import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'

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
  /** For each page the names its links lead to, and its text. Read only for the pages asked for. */
  readonly linkedFrom: readonly { readonly page: number; readonly names: readonly string[]; readonly text: string }[]
}

export interface ReadWish {
  readonly sizes?: boolean
  readonly bookmarks?: boolean
  /** Names of destinations: pages that link to one of them are read for links and text, from the front until all are met. */
  readonly linksTo?: readonly string[]
}

/** Reads a PDF with another program than the one that wrote it. */
export async function readPdf(bytes: Uint8Array, wish: ReadWish = {}): Promise<PdfContents> {
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
      linkedFrom: wish.linksTo ? await linkedFrom(document, wish.linksTo) : []
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

async function linkedFrom(document: PDFDocumentProxy, wanted: readonly string[]): Promise<PdfContents['linkedFrom']> {
  const open = new Set(wanted)
  const pages: { page: number; names: string[]; text: string }[] = []
  for (let number = 1; number <= document.numPages && open.size > 0; number += 1) {
    const page = await document.getPage(number)
    const annotations = (await page.getAnnotations()) as { dest?: unknown }[]
    const names = annotations.map(({ dest }) => dest).filter(dest => typeof dest === 'string')
    if (!names.some(name => open.has(name))) continue
    const { items } = await page.getTextContent()
    pages.push({ page: number, names, text: items.map(item => ('str' in item ? item.str : '')).join('\n') })
    for (const name of names) open.delete(name)
  }
  return pages
}
