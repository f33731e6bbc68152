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
      const { items } = await (await document.getPage(number)).getTextContent()
      texts.push(squeezed(items.map(item => ('str' in item ? item.str : '')).join(' ')))
    }
    return texts
  } finally {
    await task.destroy()
  }
}
