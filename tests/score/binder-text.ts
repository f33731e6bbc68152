import { readFileSync } from 'node:fs'
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { readPdf } from '../../src/render/pdf-read.ts'

/** The text of a finished binder, section by section, as a program that did not write it reads it. */
export interface BinderText {
  /** One for each page. */
  readonly pageTexts: readonly string[]
  /** By title, small letters and no spaces. */
  readonly sections: ReadonlyMap<string, string>
  readonly whole: string
}

/** Small letters, no blanks, no soft hyphens: line ends and columns do not matter. */
export const squeezed = (text: string): string => text.toLowerCase().replace(/[\s\u00ad]+/gu, '')

export async function binderText(path: string): Promise<BinderText> {
  const bytes = new Uint8Array(readFileSync(path))
  const { bookmarks } = await readPdf(bytes, { bookmarks: true })
  const pages = await textsOf(bytes)
  const heads = bookmarks
    .filter(one => one.depth === 0)
    .map(one => ({ ...one, title: one.title.replace(/^\d+\s+/u, '') }))
  const sections = new Map<string, string>()
  heads.forEach(({ title, page }, index) => {
    const last = heads[index + 1]?.page ?? pages.length
    const text = pages.slice(page - 1, last).join('')
    const from = Math.max(0, text.indexOf(squeezed(title)))
    const next = heads[index + 1]
    const to = next ? text.lastIndexOf(squeezed(next.title)) : -1
    sections.set(title, to > from ? text.slice(from, to) : text.slice(from))
  })
  return { pageTexts: pages, sections, whole: pages.join('') }
}

/** Room of the running head, points: the upper margins of paper.css and binder-parts.ts, 20 and 23 mm. */
const UPRIGHT_HEAD = 56.6
const TURNED_HEAD = 65.1

async function textsOf(data: Uint8Array): Promise<string[]> {
  const task = getDocument({
    data: data.slice(),
    verbosity: VerbosityLevel.ERRORS,
    useSystemFonts: false,
    disableFontFace: true
  })
  try {
    const document = await task.promise
    const texts: string[] = []
    for (let number = 1; number <= document.numPages; number += 1) {
      const page = await document.getPage(number)
      const [, , width = 0, height = 0] = page.view
      const head = height - (width > height ? TURNED_HEAD : UPRIGHT_HEAD)
      const { items } = await page.getTextContent()
      // A running head names sections that do not begin here.
      const own = items.flatMap(item => ('str' in item && Number(item.transform[5]) < head ? [item.str] : []))
      texts.push(squeezed(own.join(' ')))
    }
    return texts
  } finally {
    await task.destroy()
  }
}
