import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { needleIndex } from '../domain/privacy/needle-index.ts'
import type { NeedleIndex } from '../domain/privacy/needle-index.ts'
import type { Site } from '../model/site.ts'

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

/** A private word and whose it is. */
export interface PrivateWordOf {
  readonly site: string
  readonly label: string
  readonly text: string
}

/**
 * Reads public files once more as they would be hosted, and looks for the private words of every site. The pages are made from what holds nothing
 * private; this looks at what really stands there, pictures and what is written inside them included, so that a slip of ours cannot get past.
 */
export function findLeaksAt(folder: string, paths: readonly string[], words: readonly PrivateWordOf[]): Leak[] {
  return paths.flatMap(path => findLeaksOf([{ path, bytes: readFileSync(join(folder, path)) }], words))
}

export function findLeaks(files: readonly PublicFile[], sites: readonly Pick<Site, 'id' | 'privateWords'>[]): Leak[] {
  return findLeaksOf(
    files,
    sites.flatMap(site => site.privateWords.map(({ label, text }) => ({ site: site.id, label, text })))
  )
}

const indexes = new WeakMap<readonly PrivateWordOf[], NeedleIndex>()

function indexOf(words: readonly PrivateWordOf[]): NeedleIndex {
  const index = indexes.get(words) ?? needleIndex(words.map(word => word.text))
  indexes.set(words, index)
  return index
}

function findLeaksOf(files: readonly PublicFile[], words: readonly PrivateWordOf[]): Leak[] {
  const index = indexOf(words)
  return files.flatMap(({ path, bytes }) => {
    const isScript = path.endsWith('.js')
    // Numbers of a script are its own; it is the same for every site.
    const wanted = (needle: string) => !isScript || /\p{L}/u.test(needle)
    return index
      .wordsIn(readableText(path, bytes), wanted)
      .flatMap(position => words[position] ?? [])
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
