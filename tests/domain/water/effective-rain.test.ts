import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isPresent } from '../../../src/base/absent.ts'
import { effectiveRainM, rainMethodOf, storageFactor } from '../../../src/domain/water/effective-rain.ts'
import type { RainFacts } from '../../../src/domain/water/effective-rain.ts'
import { RAIN_METHODS } from '../../../src/reference/effective-rain.ts'
import type { RainMethod } from '../../../src/reference/effective-rain.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

function counted(method: RainMethod, facts: RainFacts): number {
  const value = effectiveRainM(method, { useM: 0.15, storageM: 0.0762, ...facts })
  if (!isPresent(value)) throw new Error(value.reason)
  return value
}

const anyMethod = fc.constantFrom(...RAIN_METHODS)
const anyRain = fc.double({ min: 0, max: 0.6, noNaN: true })

describe('rain that counts', () => {
  it('is never less than nothing nor more than fell, by any method', () => {
    fc.assert(
      fc.property(anyMethod, anyRain, (method, rainM) => {
        const value = counted(method, { rainM })
        expect(value).toBeGreaterThanOrEqual(0)
        expect(value).toBeLessThanOrEqual(rainM + 1e-12)
      })
    )
  })

  it('never falls when more rain falls, by any method', () => {
    fc.assert(
      fc.property(anyMethod, anyRain, anyRain, (method, one, other) => {
        const [less, more] = [Math.min(one, other), Math.max(one, other)]
        expect(counted(method, { rainM: more })).toBeGreaterThanOrEqual(counted(method, { rainM: less }) - 1e-12)
      })
    )
  })

  it('has no step at the breaks of the methods', () => {
    const near = (method: RainMethod, breakM: number) =>
      Math.abs(counted(method, { rainM: breakM + 1e-9 }) - counted(method, { rainM: breakM }))
    expect(near('scs-monthly', 0.25)).toBeLessThan(1e-6)
    expect(near('fao-manual-3', 0.075)).toBeLessThan(1e-6)
    for (const inches of [0.1, 1, 2]) expect(near('per-event', inches * 0.0254)).toBeLessThan(1e-6)
  })

  it('is nothing under 0.11 in by the storage method, and never more than the plants use', () => {
    expect(counted('tr-21', { rainM: 0.1 * 0.0254 })).toBe(0)
    expect(counted('tr-21', { rainM: 0 })).toBe(0)
    expect(counted('tr-21', { rainM: 0.3, useM: 0.02 })).toBe(0.02)
    expect(counted('tr-21', { rainM: 0.3, useM: 0 })).toBe(0)
  })

  it('rises with the storage of the soil', () => {
    const storage = fc.double({ min: 0.01, max: 12, noNaN: true })
    fc.assert(
      fc.property(storage, storage, (one, other) => {
        expect(storageFactor(Math.max(one, other))).toBeGreaterThanOrEqual(storageFactor(Math.min(one, other)) - 1e-12)
      })
    )
  })

  it('takes the storage method in inches and the others in millimeters: 2 in and 50.8 mm are the same rain', () => {
    const typed = (rain: string) => calc('effective-rain', { method: 'scs-monthly', rain })['effective'] as number
    expect(typed('2 in')).toBeCloseTo(typed('50.8 mm'), 9)
    const storage = (rain: string, use: string, held: string) =>
      calc('effective-rain', { method: 'tr-21', rain, use, storage: held })['effective-us'] as number
    expect(storage('2 in', '4 in', '3 in')).toBeCloseTo(storage('50.8 mm', '101.6 mm', '76.2 mm'), 9)
    expect(storage('2 in', '4 in', '3 in')).toBeCloseTo(1.426, 2)
  })

  it('asks for what its method needs, and refuses rain below zero', () => {
    expect(effectiveRainM('tr-21', { rainM: 0.05 })).toMatchObject({ absent: true })
    expect(effectiveRainM('tr-21', { rainM: 0.05, useM: 0.1, storageM: 0 })).toMatchObject({ absent: true })
    expect(effectiveRainM('none', { rainM: -0.01 })).toMatchObject({ absent: true })
    expect(calcOrAbsent('effective-rain', { method: 'guess', rain: '1 in' })).toContain('is not one of')
  })

  it('is named in a site file by its method', () => {
    expect(rainMethodOf('none')).toBe('none')
    expect(rainMethodOf(' TR-21 ')).toBe('tr-21')
    expect(rainMethodOf('half of it')).toMatchObject({ absent: true })
  })
})
