/** A token with a digit in it and this long is taken for a code; shorter ones ("14") would be found everywhere. */
const LEAST_CODE_LENGTH = 4
/** A phrase this long is worth looking for as it stands. */
const LEAST_PHRASE_LENGTH = 6

/**
 * What to look for so that a private text is found even where only part of it was copied: the whole, its parts between
 * commas and semicolons, and every token that looks like a code. "depot locker 14, code 7719" gives
 * "depot locker 14, code 7719", "depot locker 14", "code 7719", "7719". Lower case, single spaces.
 */
export function privateNeedles(text: string): readonly string[] {
  const whole = plain(text)
  const parts = whole.split(/[,;]\s*/u)
  const codes = whole.split(/[\s,;:]+/u).filter(token => token.length >= LEAST_CODE_LENGTH && /\d/u.test(token))
  const phrases = [whole, ...parts].filter(part => part.length >= LEAST_PHRASE_LENGTH)
  return [...new Set([...phrases, ...codes])]
}

/** The first needle that stands in `text`, or undefined. Word borders count, so that 7719 is not found in 177190. */
export function findNeedle(text: string, needles: readonly string[]): string | undefined {
  const hay = plain(text)
  return needles.find(needle => standsAlone(hay, needle))
}

/** Small letters without accents, other forms of letters and figures as the usual ones, single spaces. */
export function plain(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[\s\u00a0\u2009\u202f]+/gu, ' ')
    .trim()
}

/**
 * The first needle that stands in `text` in another spelling: its figures or letters spaced or hyphenated, other marks between its words.
 * "7719" is found in "7 7 1 9" and "77-19", not in "7.719"; a telephone number of seven figures and more by its figures alone.
 */
export function findSpelled(text: string, needles: readonly string[]): string | undefined {
  const hay = plain(text)
  return needles.find(needle => spelling(needle).test(hay))
}

const LEAST_PHONE_FIGURES = 7
/** More of a text need not be there to know it by, and an expression cannot be of any length. */
const MOST_LETTERS = 200

function spelling(needle: string): RegExp {
  const all = [...needle].filter(letter => /[\p{L}\p{N}]/u.test(letter))
  const letters = all.slice(0, MOST_LETTERS)
  const figures = letters.filter(letter => /\d/u.test(letter)).length
  const isPhone = figures >= LEAST_PHONE_FIGURES && figures === letters.length
  const between = isPhone
    ? '[\\s().,/_\\-\u2010-\u2014]{0,3}'
    : figures === letters.length
      ? '[\\s\\-_\u2010-\u2014]?'
      : '[^\\p{L}\\p{N}]{0,2}'
  const end = all.length > MOST_LETTERS ? '' : '(?![\\p{L}\\p{N}])'
  return new RegExp(`(?<![\\p{L}\\p{N}])${letters.join(between)}${end}`, 'u')
}

function standsAlone(hay: string, needle: string): boolean {
  for (let from = hay.indexOf(needle); from >= 0; from = hay.indexOf(needle, from + 1)) {
    const [before, after] = [hay[from - 1] ?? ' ', hay[from + needle.length] ?? ' ']
    if (!/[\p{L}\p{N}]/u.test(before) && !/[\p{L}\p{N}]/u.test(after)) return true
  }
  return false
}
