import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { findNeedle, findSpelled, privateNeedles } from '../domain/privacy/needles.ts'
import type { Site } from '../model/site.ts'
import { filesBelow } from './output-files.ts'

/** A public file with a private word in it. */
export interface Leak {
  readonly path: string
  readonly site: string
  /** Key under which the word is kept, never the word itself. */
  readonly label: string
}

interface PublicFile {
  readonly path: string
  readonly bytes: Uint8Array
}

/**
 * Reads everything below public/ once more as it would be hosted, pages of earlier builds among it, and looks for the private words of every
 * site. The pages are made from what holds nothing private; this looks at what really stands there, pictures and what is written inside them
 * included, so that a slip of ours cannot get past.
 */
export function leaksBelow(folder: string, sites: readonly Site[]): Leak[] {
  const paths = filesBelow(folder).filter(path => path.startsWith('public/'))
  return findLeaks(
    paths.map(path => ({ path, bytes: readFileSync(join(folder, path)) })),
    sites
  )
}

export function findLeaks(files: readonly PublicFile[], sites: readonly Site[]): Leak[] {
  const words = sites.flatMap(site =>
    site.privateWords.map(word => ({ site: site.id, label: word.label, needles: privateNeedles(word.text) }))
  )
  return files.flatMap(({ path, bytes }) => {
    const text = readableText(path, bytes)
    const isScript = path.endsWith('.js')
    return words
      .filter(({ needles }) => {
        // Numbers of a script are its own; it is the same for every site.
        const sought = isScript ? needles.filter(needle => /\p{L}/u.test(needle)) : needles
        return (findNeedle(text, sought) ?? findSpelled(text, sought)) !== undefined
      })
      .map(({ site, label }) => ({ path, site, label }))
  })
}

function readableText(path: string, bytes: Uint8Array): string {
  if (/\.(?:html|svg)$/u.test(path)) return visibleText(Buffer.from(bytes).toString('utf8'))
  if (/\.(?:js|json|css|txt)$/u.test(path)) return Buffer.from(bytes).toString('utf8')
  // What a camera or a program wrote into a picture stands between its pixels, in one or in two bytes a letter.
  return Buffer.from(bytes).toString('latin1').replaceAll('\0', '')
}

/** Text, data and attribute values, without what only looks like words: drawings, styles, scripts and their hashes. */
function visibleText(markup: string): string {
  return markup
    .replace(/<style[^>]*>.*?<\/style>/gsu, ' ')
    .replace(/<script>.*?<\/script>/gsu, ' ')
    .replace(/'sha256-[^']*'/gu, ' ')
    .replace(/\s(?:d|points|viewBox|transform|x|y|x1|y1|x2|y2|cx|cy|r|width|height)="[^"]*"/gu, ' ')
}
