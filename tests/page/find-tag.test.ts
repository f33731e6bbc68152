import { describe, expect, it } from 'vitest'
import { findTag } from '../../src/page/find-tag.ts'

const TAGS = ['7KQ3F9X', 'M4WT8CE', 'ZR62HNA']

describe('a tag typed by hand', () => {
  it.each(['7KQ3F9X', '7kq3f9x', ' 7kq3 f9x ', '7KQ-3F9X', '7KQ3F9X/'])('%j is found', typed => {
    expect(findTag(typed, TAGS)).toBe('7KQ3F9X')
  })

  it('a look-alike is understood where only one tag fits', () => {
    expect(findTag('7KO3F9X', TAGS)).toBe('7KQ3F9X')
    expect(findTag('7K03F9X', TAGS)).toBe('7KQ3F9X')
  })

  it.each(['', '   ', '7KQ3F9', '7KQ3F9XX', 'AAAAAAA'])('%j is not guessed at', typed => {
    expect(findTag(typed, TAGS)).toBeUndefined()
  })

  it('two tags that fit are one too many', () => {
    expect(findTag('7KO', ['7KQ', '7K0'])).toBeUndefined()
    expect(findTag('7KQ', ['7KQ', '7K0'])).toBe('7KQ')
  })
})
