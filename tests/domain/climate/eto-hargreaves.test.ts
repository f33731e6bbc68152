import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAbsent, isPresent } from '../../../src/base/absent.ts'
import {
  HARGREAVES_UNCERTAINTY,
  hargreaves,
  hargreavesMm,
  hargreavesMonthM
} from '../../../src/domain/climate/eto-hargreaves.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

const mm = (maxC: number, minC: number, mj: number) => {
  const value = hargreavesMm({ maxC, minC }, mj)
  if (!isPresent(value)) throw new Error(value.reason)
  return value
}

describe('reference evapotranspiration from temperatures', () => {
  it('turns radiation into water: 25 and 19 °C at 32 MJ/m² a day give 2.93 mm, not the 7.18 of a slip with the unit', () => {
    expect(mm(25, 19, 32)).toBeCloseTo(2.93, 2)
    expect(mm(25, 19, 32)).not.toBeCloseTo(7.175241, 1)
  })

  it('never asks for less in a hotter month, nor where only the days get hotter', () => {
    const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map(value => value / 10)
    fc.assert(
      fc.property(tenths(-10, 40), tenths(0, 25), tenths(0, 10), tenths(0, 45), (minC, wide, warmer, mj) => {
        const before = mm(minC + wide, minC, mj)
        // A range of nothing comes out of binary as one of almost nothing, and its root is larger: a millionth of a millimeter.
        expect(mm(minC + wide + warmer, minC + warmer, mj)).toBeGreaterThanOrEqual(before - 1e-6)
        expect(mm(minC + wide + warmer, minC, mj)).toBeGreaterThanOrEqual(before - 1e-6)
      })
    )
  })

  it('asks for nothing in polar night, without a range of temperature, and in a frost that the formula was not made for', () => {
    expect([mm(5, -5, 0), mm(10, 10, 30), mm(-20, -30, 10)]).toEqual([0, 0, 0])
  })

  it('takes a mean that is given, and the middle of both where none is', () => {
    const given = hargreavesMm({ maxC: 30, minC: 10, meanC: 20 }, 40)
    expect(given).toBe(mm(30, 10, 40))
    expect(hargreavesMm({ maxC: 30, minC: 10, meanC: 18 }, 40)).toBeLessThan(given as number)
  })

  it('says so where the maximum is below the minimum', () => {
    expect(isAbsent(hargreavesMm({ maxC: 10, minC: 10.1 }, 30))).toBe(true)
  })

  it('states how far it may be off, wider than the 12 % it was seen to be', () => {
    const worked = hargreaves({ maxC: 26.6, minC: 14.8 }, { latitudeDeg: 45.72, dayOfYear: 196, words: 'day 196' })
    if (!isPresent(worked)) throw new Error(worked.reason)
    expect(HARGREAVES_UNCERTAINTY).toBeGreaterThan(0.12)
    expect(worked.value.leastMm).toBeCloseTo(worked.value.etoMm * 0.8, 12)
    expect(worked.value.mostMm).toBeCloseTo(worked.value.etoMm * 1.2, 12)
    expect(worked.steps.at(-1)).toContain('give or take 20 %')
  })

  it('gives a month its own days: February has 28, and January is summer in the south', () => {
    const month = (place: number, number: number) => {
      const worked = hargreavesMonthM(place, number, { maxC: 30, minC: 16 })
      if (!isPresent(worked)) throw new Error(worked.reason)
      return worked.value
    }
    const february = calc('eto-hargreaves', { latitude: '-34', month: 'Feb', max: '30 °C', min: '16 °C' })
    expect(month(-34, 2) * 1000).toBeCloseTo((february['eto'] as number) * 28, 9)
    expect(month(-34, 1)).toBeGreaterThan(month(-34, 7))
    expect(month(34, 1)).toBeLessThan(month(34, 7))
  })

  it('reads degrees Fahrenheit alike', () => {
    const typed = (max: string, min: string) =>
      calc('eto-hargreaves', { latitude: '40', month: 'Jul', max, min })['eto'] as number
    expect(typed('86 °F', '59 °F')).toBeCloseTo(typed('30 °C', '15 °C'), 9)
    expect(calcOrAbsent('eto-hargreaves', { latitude: '40', month: 'Jul', max: '15 °C', min: '30 °C' })).toContain(
      'below the minimum'
    )
  })
})
