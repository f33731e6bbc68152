import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isPresent } from '../../../src/base/absent.ts'
import { soilWater } from '../../../src/domain/water/soil-lookup.ts'
import { longestIntervalDays } from '../../../src/domain/water/soil-reservoir.ts'
import { SOIL_INTAKES, SOIL_TEXTURES, SOIL_WATERS } from '../../../src/reference/soil.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

const run = (inputs: Record<string, string>) => calcOrAbsent('soil-reservoir', inputs)

describe('what the root zone holds', () => {
  it('is 8 mm of the 16 mm that 80 mm of substrate hold, taken up in 21.6 min at 22.2 mm/h', () => {
    const stated = calc('soil-reservoir', { 'available-water': '16 mm', depletion: '50 %', rate: '22.222 mm/h' })
    expect(stated['allowed']).toBeCloseTo(8, 9)
    expect(stated['longest-run']).toBeCloseTo(21.6, 2)
    const perDepth = calc('soil-reservoir', { depth: '80 mm', capacity: '20 %', rate: '22.222 mm/h' })
    expect(perDepth['longest-run']).toBeCloseTo(21.6, 2)
  })

  it('lasts whole days, the last of them only if it is whole', () => {
    expect(longestIntervalDays(0.008, 0.0016)).toBe(5)
    expect(longestIntervalDays(0.008, 0.00161)).toBe(4)
    expect(longestIntervalDays(0.008, 0.009)).toBe(0)
    expect(longestIntervalDays(0.3, 0.1)).toBe(3)
  })

  it('sets no interval where nothing is needed', () => {
    expect(longestIntervalDays(0.008, 0)).toMatchObject({ absent: true })
    expect(run({ 'available-water': '16 mm', need: '0 mm/d' })).toContain('nothing is needed')
  })

  it('never lasts longer at a higher need, nor shorter with more water', () => {
    const amount = fc.double({ min: 0.001, max: 0.2, noNaN: true })
    const need = fc.double({ min: 0.0005, max: 0.01, noNaN: true })
    fc.assert(
      fc.property(amount, need, fc.double({ min: 1, max: 3, noNaN: true }), (held, used, times) => {
        const days = longestIntervalDays(held, used) as number
        expect(longestIntervalDays(held, used * times) as number).toBeLessThanOrEqual(days)
        expect(longestIntervalDays(held * times, used) as number).toBeGreaterThanOrEqual(days)
      })
    )
  })
})

describe('the table of available water', () => {
  it('has every texture once, the low end under the high, and all textures of the table of intake', () => {
    expect(new Set(SOIL_TEXTURES).size).toBe(SOIL_TEXTURES.length)
    for (const row of SOIL_WATERS) expect(row.leastInPerFt).toBeLessThan(row.mostInPerFt)
    for (const { texture } of SOIL_INTAKES) expect(isPresent(soilWater(texture)), texture).toBe(true)
  })

  it('is read at its low end: loam holds 1.5 in in a foot, 12.5 % of its depth', () => {
    expect(soilWater('loam')).toBeCloseTo(0.125, 12)
    expect(calc('soil-reservoir', { depth: '12 in', texture: 'loam' })['available-us']).toBeCloseTo(1.5, 9)
  })

  it('has no substrate', () => {
    expect(soilWater('substrate')).toMatchObject({ absent: true })
  })
})

describe('soil-reservoir, as typed', () => {
  it('says what contradicts and what is missing', () => {
    expect(run({})).toBe('give available-water, or depth with capacity or texture')
    expect(run({ depth: '80 mm' })).toBe('give capacity or texture, one of them')
    expect(run({ depth: '80 mm', capacity: '20 %', texture: 'loam' })).toBe('give capacity or texture, one of them')
    expect(run({ 'available-water': '16 mm', texture: 'loam' })).toContain('available-water stands for')
    expect(run({ 'available-water': '0 mm' })).toBe('available water must be more than zero')
    expect(run({ 'available-water': '16 mm', depletion: '101 %' })).toBe('depletion cannot be more than 100 %')
    expect(run({ 'available-water': '16 mm', depletion: '100 %' })).toHaveProperty('allowed', 16)
  })
})
