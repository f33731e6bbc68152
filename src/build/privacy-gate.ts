import { findNeedle, privateNeedles } from '../domain/privacy/needles.ts'
import type { Site } from '../model/site.ts'

/** A public page with a private word in it. */
export interface Leak {
  readonly path: string
  readonly site: string
  /** Key under which the word is kept, never the word itself. */
  readonly label: string
}

/**
 * Reads every public page once more as it would be hosted and looks for the private words of every site. The checks look at facts; this
 * looks at what was really rendered, so that a new page or a new field cannot slip past them.
 */
export function findLeaks(
  pages: readonly { readonly path: string; readonly html: string }[],
  sites: readonly Site[]
): Leak[] {
  const words = sites.flatMap(site =>
    site.privateWords.map(word => ({ site: site.id, label: word.label, needles: privateNeedles(word.text) }))
  )
  return pages
    .filter(page => page.path.startsWith('public/'))
    .flatMap(page => {
      const text = visibleText(page.html)
      return words
        .filter(word => findNeedle(text, word.needles) !== undefined)
        .map(({ site, label }) => ({ path: page.path, site, label }))
    })
}

/** Text and attribute values without drawings and style, where numbers stand for shapes. */
function visibleText(html: string): string {
  return html
    .replace(/<style[^>]*>.*?<\/style>/gsu, ' ')
    .replace(/\s(?:d|points|viewBox|transform|x|y|x1|y1|x2|y2|cx|cy|r|width|height)="[^"]*"/gu, ' ')
}
