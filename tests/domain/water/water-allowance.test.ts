import { describe, expect, it } from 'vitest'
import { peakAllowanceM3, peakRequirementM3 } from '../../../src/domain/water/water-allowance.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

describe('the allowance of the peak month', () => {
  it('is 70 % of its evapotranspiration on the whole area, in exact volume', () => {
    expect(peakAllowanceM3(0.1, 100)).toBeCloseTo(7, 12)
    expect(calc('water-allowance', { eto: '6.1 in', area: '1000 ft²' })['allowance-us']).toBeCloseTo(
      0.7 * 6.1 * 1000 * 0.62338,
      0
    )
  })

  it('holds a zone that wants no more than 70 % of it without loss', () => {
    const facts = { etoM: 0.1, rainM: 0, areaM2: 100 }
    expect(peakRequirementM3({ ...facts, coefficient: 0.49, lowQuarter: 0.7 })).toBeCloseTo(
      peakAllowanceM3(0.1, 100),
      12
    )
    expect(peakRequirementM3({ ...facts, coefficient: 0.5, lowQuarter: 1, rainM: 0.06 })).toBe(0)
  })

  it('wants coefficient and uniformity together', () => {
    const run = (more: Record<string, string>) =>
      calcOrAbsent('water-allowance', { eto: '6 in', area: '1000 ft²', ...more })
    expect(run({ coefficient: '0.6' })).toBe('coefficient and dulq go together')
    expect(run({ coefficient: '0.6', dulq: '110 %' })).toBe('dulq cannot be more than 100 %')
    expect(run({ coefficient: '0.6', dulq: '0 %' })).toBe('dulq must be more than zero')
  })
})
