/** The permanent code of a box: six characters drawn at random and a check character. No 0 O, 1 I L: they look alike in mud. */
export const TAG_ALPHABET = '23456789ABCDEFGHJKMNPQRSTUVWXYZ'
export const TAG_LENGTH = 7

const BASE = TAG_ALPHABET.length

/**
 * The check character of a tag's first six: 1 + the sum of position × value, modulo 31. 31 is prime, the weights 1 to 6 and the check
 * character's own (-1) are distinct and none is a multiple of 31, so one wrong character and any two swapped are always seen. The 1 keeps
 * "2222222" from being a tag. Undefined where a character is not of the alphabet or there are not six.
 */
export function tagCheck(body: string): string | undefined {
  if (body.length !== TAG_LENGTH - 1) return undefined
  let total = 1
  for (const [index, character] of [...body].entries()) {
    const value = TAG_ALPHABET.indexOf(character)
    if (value < 0) return undefined
    total += (index + 1) * value
  }
  return TAG_ALPHABET[total % BASE]
}

/** "7KQ3F9X" is one; small letters, spaces and look-alikes are not. */
export function isTag(text: string): boolean {
  return text.length === TAG_LENGTH && tagCheck(text.slice(0, -1)) === text.at(-1)
}

/** A tag from six whole numbers 0 to 30, drawn by the caller. Throws on any others: that is a fault of ours. */
export function makeTag(draw: readonly number[]): string {
  const body = draw.map(value => TAG_ALPHABET[value] ?? '').join('')
  const check = tagCheck(body)
  if (draw.length !== TAG_LENGTH - 1 || check === undefined) throw new Error('a tag is made from six numbers, 0 to 30')
  return body + check
}
