import { describe, expect, it } from 'vitest'
import { spacingAreaM2 } from '../../../src/domain/water/application-rate.ts'
import { calcOrAbsent } from '../../support/calc.ts'

describe('an application rate', () => {
  it('goes by an area or a spacing, and shifted rows lie closer', () => {
    expect(spacingAreaM2(10, 10, 'triangle')).toBeCloseTo(86.6, 2)
    const run = (more: Record<string, string>) => calcOrAbsent('application-rate', { flow: '10 L/min', ...more })
    const square = run({ spacing: '10 m', 'row-spacing': '10 m' })
    expect(square).toMatchObject({ rate: expect.closeTo(6, 9) })
    expect(run({ area: '100 m²' })).toEqual(square)
    expect(run({ spacing: '10 m', 'row-spacing': '10 m', layout: 'triangle' })).toMatchObject({
      rate: expect.closeTo(6.928, 3)
    })
    expect(run({})).toBe('give an area, or spacing and row-spacing')
    expect(run({ spacing: '10 m' })).toBe('give an area, or spacing and row-spacing')
    expect(run({ area: '100 m²', spacing: '10 m' })).toBe('give an area or a spacing, not both')
    expect(run({ area: '0 m²' })).toBe('area must be more than zero')
  })
})
