import { findNeedle, findSpelled, plain, privateNeedles } from './needles.ts'

/** Thousands of private words, made ready to be looked for in thousands of texts. */
export interface NeedleIndex {
  /** Positions, in the list it was made from, of the words that stand in a text, in order. */
  readonly wordsIn: (text: string, wanted: (needle: string) => boolean) => number[]
}

/** Needles are found by their first letters and figures, other signs left out, so that every spelling of them is. */
const LONG = 8
const SHORT = 4

interface Needle {
  readonly text: string
  readonly squeezed: string
  readonly words: number[]
}

/**
 * Looks for the same as `findNeedle` and `findSpelled` do word by word, in one pass over the text: a needle can only stand where its letters and
 * figures follow each other with other signs left out, so only those that do are looked at closely.
 */
export function needleIndex(words: readonly string[]): NeedleIndex {
  const needles = new Map<string, Needle>()
  for (const [index, word] of words.entries())
    for (const text of privateNeedles(word)) {
      const known = needles.get(text)
      if (known) known.words.push(index)
      else needles.set(text, { text, squeezed: squeezed(text), words: [index] })
    }
  const all = [...needles.values()]
  const tiny = all.filter(one => one.squeezed.length < SHORT)
  const tables = [
    startTable(
      all.filter(one => one.squeezed.length >= LONG),
      LONG
    ),
    startTable(
      all.filter(one => one.squeezed.length >= SHORT && one.squeezed.length < LONG),
      SHORT
    )
  ]
  return {
    wordsIn: (text, wanted) => {
      const hay = squeezed(text)
      const near = new Set([...tiny, ...tables.flatMap(table => table(hay))])
      const found = [...near].filter(
        one => wanted(one.text) && (findNeedle(text, [one.text]) ?? findSpelled(text, [one.text])) !== undefined
      )
      return [...new Set(found.flatMap(one => one.words))].sort((a, b) => a - b)
    }
  }
}

/** Letters and figures alone, in small letters. */
function squeezed(text: string): string {
  return plain(text).replace(/[^\p{L}\p{N}]+/gu, '')
}

const TABLE_BITS = 16

/** The needles that may start somewhere in a text, by a table of their first signs: one look for each place of the text. */
function startTable(needles: readonly Needle[], length: number): (hay: string) => Needle[] {
  const starts = new Map<string, Needle[]>()
  const marks = new Uint8Array(1 << TABLE_BITS)
  for (const needle of needles) {
    const start = needle.squeezed.slice(0, length)
    const known = starts.get(start)
    if (known) known.push(needle)
    else starts.set(start, [needle])
    marks[slot(start, 0, length)] = 1
  }
  return hay => {
    const found: Needle[] = []
    if (starts.size === 0) return found
    for (let at = 0; at + length <= hay.length; at += 1) {
      if (marks[slot(hay, at, length)] !== 1) continue
      for (const needle of starts.get(hay.slice(at, at + length)) ?? [])
        if (hay.startsWith(needle.squeezed, at)) found.push(needle)
    }
    return found
  }
}

function slot(text: string, at: number, length: number): number {
  let mixed = 0
  for (let index = at; index < at + length; index += 1) mixed = (Math.imul(mixed, 31) + text.charCodeAt(index)) | 0
  return (mixed ^ (mixed >>> TABLE_BITS)) & ((1 << TABLE_BITS) - 1)
}
