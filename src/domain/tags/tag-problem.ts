import { TAG_ALPHABET, TAG_LENGTH, tagCheck } from './tag.ts'

export type TagProblem =
  | { readonly kind: 'length'; readonly length: number }
  /** A character that no tag has; `perhaps` are those it is easily taken for, none for a mark or a space. */
  | { readonly kind: 'character'; readonly character: string; readonly perhaps: string }
  | { readonly kind: 'small-letters'; readonly perhaps: string }
  /** Each character may stand, but not together: one is wrong or two are swapped. */
  | { readonly kind: 'check' }

/** What a character outside the alphabet is easily taken for. From memory. */
const LOOKS_LIKE: Readonly<Record<string, string>> = { '0': 'DQ', O: 'DQ', '1': '7', I: 'T7', L: 'E' }

/** Why a text is no tag; undefined where it is one. */
export function tagProblem(text: string): TagProblem | undefined {
  if (text !== text.toUpperCase()) return { kind: 'small-letters', perhaps: text.toUpperCase() }
  const stranger = [...text].find(character => !TAG_ALPHABET.includes(character))
  if (stranger !== undefined) return { kind: 'character', character: stranger, perhaps: LOOKS_LIKE[stranger] ?? '' }
  if (text.length !== TAG_LENGTH) return { kind: 'length', length: text.length }
  return tagCheck(text.slice(0, -1)) === text.at(-1) ? undefined : { kind: 'check' }
}

/** A tag as typed by hand at the lid: small letters, spaces and dashes are taken out of the way. Undefined where it is still none. */
export function readTag(typed: string): string | undefined {
  const text = typed.replace(/[\s\u2010-\u2015-]+/gu, '').toUpperCase()
  return tagProblem(text) === undefined ? text : undefined
}
