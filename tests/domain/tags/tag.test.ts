import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { TAG_ALPHABET, isTag, makeTag, tagCheck } from '../../../src/domain/tags/tag.ts'
import { readTag, tagProblem } from '../../../src/domain/tags/tag-problem.ts'

const draws = fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 6, maxLength: 6 })
const SAMPLE = [
  [0, 0, 0, 0, 0, 0],
  [30, 30, 30, 30, 30, 30],
  [5, 17, 21, 1, 13, 7],
  [0, 1, 2, 3, 4, 5],
  [30, 0, 30, 0, 30, 0]
]

const swapped = (tag: string, i: number, j: number) => {
  const letters = [...tag]
  ;[letters[i], letters[j]] = [letters[j] ?? '', letters[i] ?? '']
  return letters.join('')
}

describe('a tag', () => {
  it('has an alphabet of 31 characters without look-alikes', () => {
    expect(new Set(TAG_ALPHABET).size).toBe(31)
    expect(TAG_ALPHABET).not.toMatch(/[01OIL]/u)
  })

  it('worked by hand: 7KQ3F9 sums to 1 + 5 + 34 + 63 + 4 + 65 + 42 = 214, 28 over six times 31, which is X', () => {
    expect(tagCheck('7KQ3F9')).toBe('X')
    expect(isTag('7KQ3F9X')).toBe(true)
    expect(makeTag([5, 17, 21, 1, 13, 7])).toBe('7KQ3F9X')
  })

  it('is refused with any one character wrong: each place, each other character, over a sample', () => {
    for (const draw of SAMPLE) {
      const tag = makeTag(draw)
      for (let place = 0; place < 7; place += 1)
        for (const other of TAG_ALPHABET) {
          const wrong = tag.slice(0, place) + other + tag.slice(place + 1)
          expect(isTag(wrong)).toBe(other === tag[place])
        }
    }
  })

  it('is refused with any two different characters swapped, the check character among them', () => {
    for (const draw of SAMPLE) {
      const tag = makeTag(draw)
      for (let i = 0; i < 7; i += 1)
        for (let j = i + 1; j < 7; j += 1) expect(isTag(swapped(tag, i, j))).toBe(tag[i] === tag[j])
    }
  })

  it('is seen to be wrong whatever tag was drawn', () => {
    const place = fc.integer({ min: 0, max: 6 })
    const character = fc.integer({ min: 0, max: 30 })
    fc.assert(
      fc.property(draws, place, character, place, (draw, at, to, with_) => {
        const tag = makeTag(draw)
        const other = TAG_ALPHABET[to] ?? ''
        const changed = tag.slice(0, at) + other + tag.slice(at + 1)
        return (
          isTag(tag) &&
          isTag(changed) === (changed === tag) &&
          isTag(swapped(tag, at, with_)) === (swapped(tag, at, with_) === tag)
        )
      }),
      { numRuns: 2000 }
    )
  })

  it('is refused when a character is missing, doubled or not of the alphabet', () => {
    for (const text of ['', '7KQ3F9', '7KQ3F9XX', '7KQ3F9x', 'OKQ3F9X', '2222222', ' 7KQ3F9X'])
      expect(isTag(text)).toBe(false)
    expect(tagCheck('7KQ3F')).toBeUndefined()
    expect(tagCheck('7KQ3F0')).toBeUndefined()
  })

  it('is not made from too few numbers or numbers out of range', () => {
    for (const draw of [[], [1, 2, 3, 4, 5], [1, 2, 3, 4, 5, 6, 7], [1, 2, 3, 4, 5, 31], [1, 2, 3, 4, 5, 0.5]])
      expect(() => makeTag(draw)).toThrow()
  })
})

describe('what is wrong with a tag', () => {
  it('is told by kind', () => {
    expect(tagProblem('7KQ3F9X')).toBeUndefined()
    expect(tagProblem('7kq3f9x')).toEqual({ kind: 'small-letters', perhaps: '7KQ3F9X' })
    expect(tagProblem('7KQ3F0X')).toEqual({ kind: 'character', character: '0', perhaps: 'DQ' })
    expect(tagProblem('7KQ-F9X')).toEqual({ kind: 'character', character: '-', perhaps: '' })
    expect(tagProblem('7KQ3F9')).toEqual({ kind: 'length', length: 6 })
    expect(tagProblem('7KQ3F9Y')).toEqual({ kind: 'check' })
  })

  it('is forgiven where a person types it with small letters, spaces or dashes', () => {
    expect(readTag(' 7kq-3f9x ')).toBe('7KQ3F9X')
    expect(readTag('7KQ 3F9X')).toBe('7KQ3F9X')
    expect(readTag('7KQ 3F9Y')).toBeUndefined()
    expect(readTag('')).toBeUndefined()
  })
})
