import type { Page } from 'puppeteer'
import type { PdfContents } from './pdf-read.ts'

/** What is asked of the laid-out document before it is printed. */
export interface DocumentFacts {
  readonly language: string
  readonly title: string
  readonly headings: number
  /** Ids that a `.page-number` waits to be numbered for, in order. */
  readonly targets: readonly string[]
  /** Links within the document that lead nowhere. */
  readonly deadAnchors: readonly string[]
  readonly repeatedIds: readonly string[]
  /** Pages, roughly, for the time limit. */
  readonly roughPages: number
}

/* Runs in the page: it sees the page's document, which the types here do not know. */
const ASK = `(() => {
  const all = (selector) => [...document.querySelectorAll(selector)]
  const ids = all('[id]').map(element => element.id)
  const known = new Set(ids)
  const anchors = all('a[href^="#"]').map(link => decodeURIComponent(link.getAttribute('href').slice(1)))
  return {
    language: document.documentElement.lang,
    title: document.title,
    headings: all('h1, h2, h3, h4, h5, h6').length,
    targets: all('.page-number[data-target]').map(element => element.dataset.target),
    deadAnchors: [...new Set(anchors.filter(id => id !== '' && !known.has(id)))],
    repeatedIds: [...new Set(ids.filter((id, index) => ids.indexOf(id) !== index))],
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

/** Puts a text beside each target of the contents, in order. */
export async function fillContents(page: Page, targets: readonly string[], texts: readonly string[]): Promise<void> {
  const byTarget = JSON.stringify(Object.fromEntries(targets.map((id, index) => [id, texts[index] ?? ''])))
  await page.evaluate(`(() => {
    const texts = ${byTarget}
    for (const element of document.querySelectorAll('.page-number[data-target]'))
      element.textContent = texts[element.dataset.target]
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
  return targets.flatMap(id => {
    const [put, is] = [filled.get(id), print.destinations.get(id)]
    if (put !== is) return [`"${id}" is on page ${is}, and the contents say ${put}.`]
    const entry = print.linkedFrom.find(({ name }) => name === id)
    if (!entry) return [`Nothing in the contents links to "${id}".`]
    const printed = new RegExp(`(^|\\D)${is}(\\D|$)`, 'u').test(entry.text)
    return printed ? [] : [`The contents do not print page ${is} for "${id}".`]
  })
}
