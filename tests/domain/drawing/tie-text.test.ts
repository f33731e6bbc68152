import { describe, expect, it } from 'vitest'
import { pointKey, readTie } from '../../../src/domain/drawing/tie-text.ts'

describe('a tie as it is written', () => {
  it.each([
    ['4.2 m from lamp post 7', 4.2, 'lamp post 7'],
    ['9 ft 4 in from the bench end', 112 * 0.0254, 'bench end'],
    [`9' 4" from The Bench  End`, 112 * 0.0254, 'bench end'],
    ['1.5 m from the end from which the wall starts', 1.5, 'end from which the wall starts']
  ])('%s', (written, lengthM, from) => {
    const tie = readTie(written)
    expect(tie?.lengthM).toBeCloseTo(lengthM, 9)
    expect(tie?.from).toBe(from)
  })

  it.each([
    'near the bench',
    '4.2 from lamp post 7',
    '2 m north of lamp post 4',
    '3 kg from the bench',
    '0 m from the bench',
    ''
  ])('is not read where it is no length from something: %s', written => {
    expect(readTie(written)).toBeUndefined()
  })

  it('keeps the amount as it was written, for the drawing', () => {
    expect(readTie('9 ft 4 in from the bench end')?.amount).toBe('9 ft 4 in')
  })

  it('takes a name for the same without article, case and spare spaces', () => {
    expect(pointKey(' The Lamp  Post 7')).toBe(pointKey('lamp post 7'))
  })
})
