import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { needleIndex } from '../domain/privacy/needle-index.ts'
import type { NeedleIndex } from '../domain/privacy/needle-index.ts'
import type { Site } from '../model/site.ts'
import { markupWords } from './markup-words.ts'
import { pdfWords } from './pdf-words.ts'
import { pictureWords } from './picture-words.ts'

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
export async function findLeaksAt(
  folder: string,
  paths: readonly string[],
  words: readonly PrivateWordOf[]
): Promise<Leak[]> {
  const leaks: Leak[] = []
  for (const path of paths) {
    const bytes = readFileSync(join(folder, path))
    leaks.push(...leaksIn(path, path.endsWith('.pdf') ? await pdfWords(bytes) : readableText(path, bytes), words))
  }
  return leaks
}

export function findLeaks(files: readonly PublicFile[], sites: readonly Pick<Site, 'id' | 'privateWords'>[]): Leak[] {
  const words = sites.flatMap(site => site.privateWords.map(({ label, text }) => ({ site: site.id, label, text })))
  return files.flatMap(({ path, bytes }) => leaksIn(path, readableText(path, bytes), words))
}

const indexes = new WeakMap<readonly PrivateWordOf[], NeedleIndex>()

function indexOf(words: readonly PrivateWordOf[]): NeedleIndex {
  const index = indexes.get(words) ?? needleIndex(words.map(word => word.text))
  indexes.set(words, index)
  return index
}

function leaksIn(path: string, text: string, words: readonly PrivateWordOf[]): Leak[] {
  const isScript = path.endsWith('.js')
  // Numbers of a script are its own; it is the same for every site.
  const wanted = (needle: string) => !isScript || /\p{L}/u.test(needle)
  return indexOf(words)
    .wordsIn(text, wanted)
    .flatMap(position => words[position] ?? [])
    .map(({ site, label }) => ({ path, site, label }))
}

function readableText(path: string, bytes: Uint8Array): string {
  if (/\.(?:html|svg)$/u.test(path)) return markupWords(Buffer.from(bytes).toString('utf8'))
  if (/\.(?:js|json|css|txt)$/u.test(path)) return Buffer.from(bytes).toString('utf8')
  return pictureWords(bytes)
}
