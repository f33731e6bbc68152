import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { allowanceGal } from '../../../src/domain/water/water-budget.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

const SITE = { eto: '43 in', area: '2453 ft²', 'special-area': '68 ft²', use: 'residential' }
const budget = (more: Record<string, string>) => calcOrAbsent('water-budget', { ...SITE, ...more })

describe('the budget of a year', () => {
  it('counts special areas within the area: left out, the allowance comes to 35,968 gal, as one worksheet had it', () => {
    expect(calc('water-budget', SITE)['allowance-us']).toBeCloseTo(36784.1, 0)
    const slip = calc('water-budget', { ...SITE, area: '2385 ft²', 'special-area': '68 ft²' })['allowance-us'] as number
    expect(slip).toBeLessThan(36784 - 900)
  })

  it('counts a special area in full and the rest by the adjustment', () => {
    const only = (special: string) =>
      calc('water-budget', { ...SITE, area: '1000 ft²', 'special-area': special })['allowance-us'] as number
    expect(only('1000 ft²')).toBeCloseTo(43 * 0.62 * 1000, 6)
    expect(only('0 ft²')).toBeCloseTo(43 * 0.62 * 550, 6)
  })

  it('uses the 0.62 of the ordinance, half a percent under the true figure, and gives cubic meters of those gallons', () => {
    const value = calc('water-budget', { eto: '1 in', area: '1000 ft²', adjustment: '1' })
    expect(value['allowance-us']).toBeCloseTo(620, 9)
    expect((value['allowance'] as number) / 0.003785411784).toBeCloseTo(620, 6)
    expect(620 / 623.377).toBeCloseTo(0.9946, 4)
  })

  it('takes off the rain that counts, never below nothing', () => {
    const facts = { etoM: 1, adjustment: 0.55, areaM2: 100, specialAreaM2: 0 }
    expect(allowanceGal({ ...facts, rainM: 0.25 })).toBeCloseTo(0.75 * allowanceGal({ ...facts, rainM: 0 }), 9)
    expect(allowanceGal({ ...facts, rainM: 1.2 })).toBe(0)
  })

  it('keeps to the allowance exactly at it, and not above', () => {
    const at = { eto: '10 in', area: '1000 ft²', use: 'non-residential' }
    expect(calc('water-budget', { ...at, zones: '0.45, 100 %, 1000 ft²' })['within']).toBe(true)
    expect(calc('water-budget', { ...at, zones: '0.451, 100 %, 1000 ft²' })['within']).toBe(false)
  })

  it('never allows less on more area, nor in a hotter year', () => {
    const amount = fc.double({ min: 0.1, max: 2, noNaN: true })
    fc.assert(
      fc.property(amount, amount, amount, (etoM, areaM2, times) => {
        const facts = { etoM, areaM2: areaM2 * 100, rainM: 0, adjustment: 0.55, specialAreaM2: 0 }
        const more = 1 + times
        expect(allowanceGal({ ...facts, etoM: etoM * more })).toBeGreaterThan(allowanceGal(facts))
        expect(allowanceGal({ ...facts, areaM2: facts.areaM2 * more })).toBeGreaterThan(allowanceGal(facts))
      })
    )
  })

  it('says what contradicts, what is missing and what is no zone', () => {
    expect(budget({ adjustment: '0.5' })).toBe('give use or adjustment, one of them')
    expect(budget({ 'special-area': '2454 ft²' })).toContain('cannot be larger')
    expect(budget({ 'special-area': '2453 ft²' })).toHaveProperty('allowance')
    expect(budget({ zones: '0.5, 81 %, 3000 ft²' })).toContain('larger than the area')
    expect(budget({ zones: '0.5, 81 %' })).toContain('cannot be read')
    expect(budget({ zones: 'half, 81 %, 204 ft²' })).toContain('is not a zone')
    expect(budget({ zones: '0.5, 0 %, 204 ft²' })).toContain('efficiency of a zone')
    expect(budget({ zones: '0.5, 81 %, 0 ft²' })).toContain('area of a zone')
    expect(budget({ zones: ';' })).toContain('no zone is written')
    expect(budget({ zones: '0.5, 0.81, 204 ft²' })).toContain('cannot be read')
  })
})
