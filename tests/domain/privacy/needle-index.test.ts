import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { needleIndex } from '../../../src/domain/privacy/needle-index.ts'
import { findNeedle, findSpelled, privateNeedles } from '../../../src/domain/privacy/needles.ts'

/** Word by word, as the plain search does it. */
const plainly = (words: readonly string[], text: string): number[] =>
  words.flatMap((word, index) => {
    const needles = privateNeedles(word)
    return (findNeedle(text, needles) ?? findSpelled(text, needles)) === undefined ? [] : [index]
  })
const indexed = (words: readonly string[], text: string): number[] => needleIndex(words).wordsIn(text, () => true)

const WORDS = [
  'depot locker 14, code 7719',
  'roof door C4471#, alarm zone 3',
  '01632 960199',
  'cabinet 3391',
  'a1b2',
  'Schlüsselkasten'
]

describe('many private words looked for in one pass', () => {
  it.each([
    ['whole', 'see depot locker 14, code 7719 there', [0]],
    ['a part, in capitals', 'BEHIND DEPOT LOCKER 14', [0]],
    ['a code alone', '7719', [0]],
    ['spaced and hyphenated', '7 7 1 9 and 33-91', [0, 3]],
    ['a telephone number otherwise parted', '+44 (0)1632/960-199', [2]],
    ['at the very end', 'door c4471', [1]],
    ['a short code with letters', 'A1-B2', [4]],
    ['letters beyond English', 'im SCHLÜSSELKASTEN', [5]],
    ['within a longer number: not it', '177190 3391000', []],
    ['nothing', '', []]
  ])('%s', (_, text, found) => {
    expect(indexed(WORDS, text)).toEqual(found)
    expect(plainly(WORDS, text)).toEqual(found)
  })

  it('finds what the plain search finds, in any text that words, codes and marks make', () => {
    const piece = fc.constantFrom(
      ...WORDS,
      ...WORDS.flatMap(privateNeedles),
      '7719',
      '77',
      '19',
      ' ',
      '-',
      '.',
      ', ',
      'x',
      '0'
    )
    const text = fc.array(piece, { maxLength: 14 }).map(pieces => pieces.join(''))
    fc.assert(
      fc.property(text, fc.subarray(WORDS), (one, words) => {
        expect(indexed(words, one)).toEqual(plainly(words, one))
      }),
      { numRuns: 400 }
    )
  })

  it('asks for no needle that is not wanted, and tells a word that two sites share of both', () => {
    expect(needleIndex(['code 7719']).wordsIn('7719', needle => /\p{L}/u.test(needle))).toEqual([])
    expect(indexed(['code 7719', 'gate 7719'], '7719')).toEqual([0, 1])
  })
})
