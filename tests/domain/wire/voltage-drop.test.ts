import { describe, expect, it } from 'vitest'
import { calc, calcOrAbsent } from '../../support/calc.ts'

describe('voltage-drop', () => {
  it('takes the ohms from the size where none are stated', () => {
    expect(calc('voltage-drop', { size: '2.5 mm²', length: '50 m', current: '2 A' })['drop']).toBeCloseTo(1.482, 9)
  })

  it('takes stated ohms over the size, whatever the size is', () => {
    const drop = calc('voltage-drop', { size: '2.5 mm²', resistance: '10 ohm/km', length: '50 m', current: '2 A' })
    expect(drop['drop']).toBeCloseTo(2, 9)
  })

  it('tells no percentage without a supply', () => {
    const drop = calc('voltage-drop', { size: '12 AWG', length: '50 ft', current: '2 A' })
    expect(Object.keys(drop)).toEqual(['drop', 'loop'])
  })

  it('asks for a size or for ohms where neither is given', () => {
    expect(calcOrAbsent('voltage-drop', { length: '50 ft', current: '2 A' })).toBe(
      'give the size of the wire, or its resistance for a length'
    )
  })

  it('is nothing for no current', () => {
    expect(calc('voltage-drop', { size: '12 AWG', length: '50 ft', current: '0 A' })['drop']).toBe(0)
  })
})
