import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { depthOnAreaM, meteredM3 } from '../../../src/domain/water/meter-units.ts'
import { volumeM3 } from '../../../src/domain/water/water-allowance.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

describe('a meter', () => {
  it('gives the water between two readings, in the units of bills', () => {
    const value = calc('meter-units', { reading: '1300 m³', earlier: '1284 m³', days: '8', area: '160 m²' })
    expect(value).toMatchObject({ volume: 16, liters: 16_000, 'per-day': 2, depth: 100 })
    expect(value['gallons']).toBeCloseTo(4226.75, 2)
  })

  it('reads HCF and CCF alike, and US readings against metric ones', () => {
    expect(calc('meter-units', { reading: '42 HCF' })).toEqual(calc('meter-units', { reading: '42 CCF' }))
    expect(calc('meter-units', { reading: '748.05 gal' })['hundred-cubic-feet']).toBeCloseTo(1, 4)
  })

  it('that reads lower than before is told, and one that stands still used nothing', () => {
    expect(meteredM3(1300, 1284)).toMatchObject({ absent: true })
    expect(meteredM3(1284, 1284)).toBe(0)
    expect(calcOrAbsent('meter-units', { reading: '5 m³', days: '0' })).toBe('days must be more than zero')
  })

  it('turns a depth on an area into a volume and back', () => {
    const amount = fc.double({ min: 0.0001, max: 10, noNaN: true })
    fc.assert(
      fc.property(amount, amount, (depth, area) => {
        expect(depthOnAreaM(volumeM3(depth, area), area)).toBeCloseTo(depth, 9)
      })
    )
  })
})
