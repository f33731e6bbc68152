import { describe, expect, it } from 'vitest'
import { sideShare } from '../../src/render/side-shares.ts'

const letters = (count: number) => 'x'.repeat(count)

describe('two lists beside each other', () => {
  it('share the width as usual where both are short', () => {
    expect(sideShare([letters(20)], [letters(20)])).toBe('do-even')
    expect(sideShare([], [])).toBe('do-even')
  })

  it('give the longer one more, on either side', () => {
    const long = Array.from({ length: 9 }, () => letters(78))
    expect(sideShare(long, [letters(20)])).toBe('do-most')
    expect(sideShare([letters(20)], long)).toBe('do-less')
  })

  it('never get a share that makes the longer side longer than the usual one would', () => {
    const [left, right] = [
      [letters(57), letters(57)],
      [letters(65), letters(65)]
    ]
    expect(sideShare(left, right)).toBe('do-even')
  })
})
