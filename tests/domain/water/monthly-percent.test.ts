import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isPresent } from '../../../src/base/absent.ts'
import { monthlyPercents } from '../../../src/domain/water/monthly-percent.ts'
import { ETO_ZONES } from '../../../src/reference/eto-zones.ts'
import { MONTHS, daysInMonth } from '../../../src/units/date.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

describe('percents of the months', () => {
  const amounts = fc.array(fc.double({ min: 0, max: 10, noNaN: true }), { minLength: 12, maxLength: 12 })

  it('are 100 in the month that wants most, and keep the order of the months', () => {
    fc.assert(
      fc.property(
        amounts.filter(all => Math.max(...all) > 1e-6),
        all => {
          const percents = monthlyPercents(all)
          if (!isPresent(percents)) throw new Error(percents.reason)
          expect(percents.shares[percents.peak]).toBe(1)
          expect(percents.shares.every(share => share >= 0 && share <= 1)).toBe(true)
          const ranked = (values: readonly number[]) =>
            values.map((value, index) => [value, index] as const).sort((a, b) => a[0] - b[0])
          expect(ranked(all).map(([, index]) => percents.shares[index])).toEqual(
            ranked(percents.shares).map(([share]) => share)
          )
        }
      )
    )
  })

  it('make no difference between two months that want as much a day, as printed tables of whole months do', () => {
    expect(calc('monthly-percent', { zone: '12' })).toMatchObject({ Jun: expect.closeTo(100, 9), Jul: 100 })
    expect(calc('monthly-percent', { zone: '12', basis: 'month' })['Jun']).toBeCloseTo(96.77, 2)
  })

  it('peak in January in the south', () => {
    const south = '8 7 6 4 3 2 2 3 4 5 6 7 in'
    expect(calc('monthly-percent', { eto: south })['peak']).toBe('Jan')
    expect(calc('monthly-percent', { eto: south })['Jul']).toBeCloseTo(25, 9)
  })

  it('count rain, and give nothing where it is enough', () => {
    const rain = '0 0 0 0 0 0 0 0 0 0 0 100 mm'
    const value = calc('monthly-percent', { eto: '31 28 31 30 31 30 62 31 30 31 30 31 mm', factor: '0.5', rain })
    expect(value).toMatchObject({ peak: 'Jul', Jul: 100, Jan: expect.closeTo(50, 9), Dec: 0 })
  })

  it('want twelve months, a need in one of them, and one source of them', () => {
    const run = (inputs: Record<string, string>) => calcOrAbsent('monthly-percent', inputs)
    expect(run({ eto: '1 2 3 in' })).toBe('3 months are given; twelve are due, January first')
    expect(run({ eto: '0 0 0 0 0 0 0 0 0 0 0 0 in' })).toBe('no month wants any water')
    expect(run({})).toBe('give eto or zone, one of them')
    expect(run({ zone: '12', eto: '1 1 1 1 1 1 1 1 1 1 1 1 in' })).toBe('give eto or zone, one of them')
    expect(run({ zone: '19' })).toContain('they go from 1 to 18')
    expect(run({ zone: '0' })).toContain('they go from 1 to 18')
    expect(monthlyPercents([1, -1])).toMatchObject({ absent: true })
  })
})

describe("California's zones", () => {
  it('are 18, each of twelve months that add up to the total beside them', () => {
    expect(ETO_ZONES.map(one => one.zone)).toEqual([...Array(18).keys()].map(index => index + 1))
    for (const { zone, etoIn, totalIn } of ETO_ZONES) {
      expect(etoIn, `zone ${zone}`).toHaveLength(12)
      expect(
        etoIn.reduce((a, b) => a + b),
        `zone ${zone}`
      ).toBeCloseTo(totalIn, 6)
    }
  })

  it('are whole hundredths of an inch a day, so that no digit slipped', () => {
    for (const { zone, etoIn } of ETO_ZONES)
      for (const [index, month] of etoIn.entries()) {
        const daily = month / daysInMonth(2025, index + 1)
        expect(Math.abs(daily * 100 - Math.round(daily * 100)), `zone ${zone}, ${MONTHS[index]}`).toBeLessThan(1e-6)
      }
  })
})
