import { describe, expect, it } from 'vitest'
import { landscapeCoefficient } from '../../../src/domain/water/landscape-coefficient.ts'
import { PLANT_FACTORS } from '../../../src/reference/plant-factors.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

describe('the share of evapotranspiration that plants want', () => {
  it('is the product of species, density and microclimate', () => {
    expect(landscapeCoefficient(0.5, 1.1, 1.3)).toBeCloseTo(0.715, 12)
    expect(calc('landscape-coefficient', { species: '0.5' })['coefficient']).toBe(0.5)
    expect(calc('landscape-coefficient', { factor: '0.8', eto: '6.1 in' })['use-us']).toBeCloseTo(4.88, 9)
  })

  it('is given once, and a plant factor is not multiplied again', () => {
    const run = (inputs: Record<string, string>) => calcOrAbsent('landscape-coefficient', inputs)
    expect(run({})).toBe('give one of species, factor and kind')
    expect(run({ species: '0.5', factor: '0.5' })).toBe('give one of species, factor and kind')
    expect(run({ factor: '0.5', density: '1.1' })).toContain('a plant factor has them in it')
    expect(run({ kind: 'cool-season turf', microclimate: '1.2' })).toContain('a plant factor has them in it')
    expect(run({ species: '-0.1' })).toBe('species must not be below zero')
    expect(run({ species: '0' })).toHaveProperty('coefficient', 0)
  })

  it('lies in its range, for every kind of the table', () => {
    for (const { kind, least, most, factor } of PLANT_FACTORS) {
      expect(factor, kind).toBeGreaterThanOrEqual(least)
      expect(factor, kind).toBeLessThanOrEqual(most)
      expect(calc('landscape-coefficient', { kind })['coefficient'], kind).toBe(factor)
    }
  })
})
