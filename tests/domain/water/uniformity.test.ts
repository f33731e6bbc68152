import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isPresent } from '../../../src/base/absent.ts'
import { lowestCans, scheduleMultiplier, uniformity } from '../../../src/domain/water/uniformity.ts'
import type { Uniformity } from '../../../src/domain/water/uniformity.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

function of(catches: readonly number[]): Uniformity {
  const found = uniformity(catches)
  if (!isPresent(found)) throw new Error(found.reason)
  return found
}

const can = fc.double({ min: 0, max: 500, noNaN: true })
const row = fc.array(can, { minLength: 4, maxLength: 60 }).filter(cans => cans.some(one => one > 0.001))

describe('a quarter of the cans', () => {
  it('is the nearest whole number, the upper one where both are as near', () => {
    const quarters = [4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16].map(cans => lowestCans(cans, 0.25))
    expect(quarters).toEqual([1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4])
    expect([4, 5, 6, 7, 15].map(cans => lowestCans(cans, 0.5))).toEqual([2, 3, 3, 4, 8])
  })

  it('of 15 is not 3: the fraction dropped would tell 40 % where 50 % was measured', () => {
    const cans = [47, 42, 45, 24, 13, 26, 33, 34, 27, 30, 40, 44, 32, 12, 12]
    const dropped = (12 + 12 + 13) / 3 / (cans.reduce((a, b) => a + b) / 15)
    expect(dropped * 100).toBeCloseTo(40.13, 2)
    expect(of(cans).quarterCans).toBe(4)
    expect(of(cans).lowQuarter * 100).toBeCloseTo(49.62, 2)
  })
})

describe('uniformity', () => {
  it('is whole where all cans hold the same', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 500, noNaN: true }), fc.integer({ min: 4, max: 60 }), (each, count) => {
        const found = of(Array<number>(count).fill(each))
        expect(found.lowQuarter).toBeCloseTo(1, 12)
        expect(found.lowHalf).toBeCloseTo(1, 12)
        expect(found.christiansen).toBeCloseTo(1, 12)
      })
    )
  })

  it('stays the same in any unit and any order, and the quarter is never better than the half', () => {
    fc.assert(
      fc.property(row, fc.double({ min: 0.01, max: 100, noNaN: true }), (cans, scale) => {
        const found = of(cans)
        const other = of(cans.map(one => one * scale).reverse())
        expect(other.lowQuarter).toBeCloseTo(found.lowQuarter, 9)
        expect(other.christiansen).toBeCloseTo(found.christiansen, 9)
        expect(found.lowQuarter).toBeLessThanOrEqual(found.lowHalf + 1e-12)
        expect(found.lowHalf).toBeLessThanOrEqual(1 + 1e-12)
        expect(found.lowQuarter).toBeGreaterThanOrEqual(0)
      })
    )
  })

  it('wants four cans, and some water in them', () => {
    expect(uniformity([1, 1, 1])).toMatchObject({ absent: true, reason: 'a quarter wants 4 cans at least' })
    expect(uniformity([1, 1, 1, 1])).toMatchObject({ lowQuarter: 1 })
    expect(uniformity([0, 0, 0, 0])).toMatchObject({ absent: true })
    expect(uniformity([1, 1, 1, -1])).toMatchObject({ absent: true })
    expect(of([0, 8, 8, 8]).lowQuarter).toBe(0)
  })
})

describe('the multiplier', () => {
  it('is one for a perfect zone, 2.5 for the worst, and never falls as a zone gets worse', () => {
    expect([scheduleMultiplier(1), scheduleMultiplier(0)]).toEqual([1, 2.5])
    const share = fc.double({ min: 0, max: 1, noNaN: true })
    fc.assert(
      fc.property(share, share, (one, other) => {
        const [worse, better] = [Math.min(one, other), Math.max(one, other)]
        expect(scheduleMultiplier(worse)).toBeGreaterThanOrEqual(scheduleMultiplier(better))
      })
    )
  })

  it('is less than what the quarter itself would ask for', () => {
    for (const share of [0.4, 0.6, 0.8]) expect(scheduleMultiplier(share)).toBeLessThan(1 / share)
  })
})

describe('uniformity, as typed', () => {
  const run = (inputs: Record<string, string>) => calcOrAbsent('uniformity', inputs)

  it('reads a row of cans with spaces or commas between, and the unit once', () => {
    const spaced = calc('uniformity', { catches: '47 42 45 24 mL' })
    expect(calc('uniformity', { catches: '47, 42, 45, 24 mL' })).toEqual(spaced)
    expect(calc('uniformity', { catches: ' 47  42 45\t24mL ' })).toEqual(spaced)
    expect(spaced).not.toHaveProperty('rate')
  })

  it('tells the rate from depths and a time, and from volumes with the throat of the cans', () => {
    expect(calc('uniformity', { catches: '5 5 5 5 mm', time: '30 min' })['rate']).toBeCloseTo(10, 9)
    // 100 mL over 100 cm² is 10 mm.
    const cans = { catches: '100 100 100 100 mL', time: '30 min', throat: '100 cm²' }
    expect(calc('uniformity', cans)['rate']).toBeCloseTo(20, 9)
    // 3.66 × mL / (min × in²) gives in/h.
    const inch = calc('uniformity', { catches: '20 20 20 20 mL', time: '10 min', throat: '16 in²' })
    expect(inch['rate-us']).toBeCloseTo((3.6614 * 20) / (10 * 16), 3)
  })

  it('refuses what cannot be read, in words', () => {
    expect(run({ catches: '47 42 45 24' })).toContain('has no unit')
    expect(run({ catches: '4,7 4,2 4,5 2,4 mL' })).toContain('cannot be read')
    expect(run({ catches: '47 42 45 24 furlong' })).toContain('cannot be read')
    expect(run({ catches: '47 mL 42 mL 45 mL 24 mL' })).toContain('cannot be read')
    expect(run({ catches: '5 5 5 5 mm', throat: '100 cm²' })).toContain('throat goes with volumes')
    expect(run({ catches: '5 5 5 5 mL', time: '10 min' })).toContain('needs the throat')
    expect(run({ catches: '5 5 5 5 mm', time: '0 min' })).toBe('time must be more than zero')
  })
})
