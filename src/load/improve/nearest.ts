import { closest, distance } from 'fastest-levenshtein'

/** The known word that was most likely meant: the same letters but for case, hyphens and spaces, or a few typing slips away. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const plain = squeezed(word)
  const same = known.find(one => squeezed(one) === plain) ?? known.find(one => letters(one) === letters(word))
  if (same !== undefined) return same
  if (known.length === 0 || plain === '') return undefined
  const near = closest(
    word.toLowerCase(),
    known.map(one => one.toLowerCase())
  )
  const found = known.find(one => one.toLowerCase() === near)
  return distance(word.toLowerCase(), near) <= slipsAllowed(Math.min(word.length, near.length)) ? found : undefined
}

/** One slip in a word of up to four letters, two up to eight, three beyond. */
function slipsAllowed(length: number): number {
  return length <= 4 ? 1 : length <= 8 ? 2 : 3
}

/** The letters in order, so that two that changed places are seen. */
function letters(word: string): string {
  return [...squeezed(word)].sort().join('')
}

/** True where two words differ at most in case, hyphens and spaces. */
export function isSameWord(one: string, other: string): boolean {
  return squeezed(one) === squeezed(other)
}

function squeezed(word: string): string {
  return word.toLowerCase().replace(/[\s_-]+/gu, '')
}
