import type { Page } from 'puppeteer'
import type { PdfContents } from './pdf-read.ts'

/** What is asked of the laid-out document before it is printed. */
export interface DocumentFacts {
  readonly language: string
  readonly title: string
  readonly headings: number
  /** Ids that a `.page-number` waits to be numbered for, in order. */
  readonly targets: readonly string[]
  /** The entry of the index that each target belongs to, counted from 0; -1 for the contents. */
  readonly entries: readonly number[]
  /** Links within the document that lead nowhere. */
  readonly deadAnchors: readonly string[]
  readonly repeatedIds: readonly string[]
  /** Addresses of links that hold places for pages of other files. */
  readonly attached: readonly string[]
  /** Pages, roughly, for the time limit. */
  readonly roughPages: number
}

/* Runs in the page: it sees the page's document, which the types here do not know. */
const ASK = `(() => {
  const all = (selector) => [...document.querySelectorAll(selector)]
  // On a screen such a place is a link to the file; in print it holds room for a sheet of it.
  for (const place of all('a[data-sheet]'))
    place.href = 'attach:' + encodeURIComponent(place.dataset.file) + '/' + place.dataset.sheet
  const ids = all('[id]').map(element => element.id)
  const known = new Set(ids)
  const seen = new Set()
  const numbered = all('.page-number[data-target]')
  const entryOf = new Map(all('.index li').map((entry, index) => [entry, index]))
  const anchors = all('a[href^="#"]').map(link => decodeURIComponent(link.getAttribute('href').slice(1)))
  return {
    language: document.documentElement.lang,
    title: document.title,
    headings: all('h1, h2, h3, h4, h5, h6').length,
    targets: numbered.map(element => element.dataset.target),
    entries: numbered.map(element => entryOf.get(element.closest('.index li')) ?? -1),
    deadAnchors: [...new Set(anchors.filter(id => id !== '' && !known.has(id)))],
    repeatedIds: [...new Set(ids.filter(id => seen.has(id) || !seen.add(id)))],
    attached: all('a[href^="attach:"]').map(link => link.href),
    roughPages: Math.ceil(document.documentElement.scrollHeight / 900)
  }
})()`

export async function askDocument(page: Page): Promise<DocumentFacts> {
  return (await page.evaluate(ASK)) as DocumentFacts
}

/** Targets of the contents that a print does not hold, in words. */
export function lostTargets(targets: readonly string[], pages: ReadonlyMap<string, number>): string[] {
  return targets
    .filter(id => !pages.has(id))
    .map(id => `The contents name "${id}", which no link leads to or no element has.`)
}

/** Puts a text beside each target, in order. */
export async function fillContents(page: Page, texts: readonly string[]): Promise<void> {
  await page.evaluate(`(() => {
    const texts = ${JSON.stringify(texts)}
    for (const [index, element] of document.querySelectorAll('.page-number[data-target]').entries())
      element.textContent = texts[index]
  })()`)
}

/**
 * In words, what the finished print has wrong about its page numbers; empty where all is right. `filled` is what was put in; the
 * print's own destinations, and the text on the line of the link that leads there, must say the same.
 */
export function wrongNumbers(
  targets: readonly string[],
  filled: ReadonlyMap<string, number>,
  print: Pick<PdfContents, 'destinations' | 'linkedFrom'>
): string[] {
  return [...new Set(targets)].flatMap(id => {
    const [put, is] = [filled.get(id), print.destinations.get(id)]
    if (put !== is) return [`"${id}" is on page ${is}, and the contents say ${put}.`]
    const entries = print.linkedFrom.filter(({ name }) => name === id)
    if (entries.length === 0) return [`Nothing in the contents links to "${id}".`]
    const number = new RegExp(`(^|\\D)${is}(\\D|$)`, 'u')
    return entries.every(({ text }) => number.test(text)) ? [] : [`The contents do not print page ${is} for "${id}".`]
  })
}
