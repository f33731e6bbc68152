import { describe, expect, it } from 'vitest'
import { isPresent } from '../../../src/base/absent.ts'
import { readAmounts } from '../../../src/domain/water/amount-list.ts'

describe('amounts that share a unit', () => {
  const read = (text: string) => readAmounts(text, 'length', '1 2 in')

  it('are read with spaces or commas between, and the unit close or apart', () => {
    expect(read('1 2 3 m')).toEqual([1, 2, 3])
    expect(read('1,  2, 3m')).toEqual([1, 2, 3])
    expect(read('.5 1. m')).toEqual([0.5, 1])
    expect(read('1 m')).toEqual([1])
  })

  it('are refused with the unit missing or twice, or a comma within a number', () => {
    for (const text of ['1 2 3', '1 m 2 m', '1,5 2,5 m', '1;2 m', 'm', '', '1 2 kg'])
      expect(isPresent(read(text)), text).toBe(false)
  })
})
