import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dayOfYear, midMonthDay } from '../../../src/domain/climate/day-of-year.ts'
import { solarDay } from '../../../src/domain/climate/solar-geometry.ts'
import { date } from '../../../src/units/date.ts'
import { calcOrAbsent } from '../../support/calc.ts'

const latitude = fc.double({ min: -90, max: 90, noNaN: true })
const day = fc.integer({ min: 1, max: 366 })

describe('the sun over a place', () => {
  it('does not set in summer and does not rise in winter beyond the polar circles, on both sides', () => {
    expect(solarDay(70, 182).sunsetAngleRad).toBe(Math.PI)
    expect(solarDay(-70, 182).sunsetAngleRad).toBe(0)
    expect(solarDay(68, 1).extraterrestrialMj).toBe(0)
    expect(solarDay(80, 55).extraterrestrialMj).toBe(0)
    expect(solarDay(70, 182).daylightH).toBe(24)
    expect(solarDay(-70, 182).daylightH).toBe(0)
  })

  it('has numbers at the poles themselves', () => {
    for (const pole of [90, -90])
      for (const one of [1, 80, 172, 266, 366])
        expect(Object.values(solarDay(pole, one)).every(Number.isFinite), `${pole} on day ${one}`).toBe(true)
  })

  it('never gives less than no radiation, nor a day of more than 24 h', () => {
    fc.assert(
      fc.property(latitude, day, (place, one) => {
        const sun = solarDay(place, one)
        expect(sun.extraterrestrialMj).toBeGreaterThanOrEqual(-1e-9)
        expect(sun.daylightH).toBeGreaterThanOrEqual(0)
        expect(sun.daylightH).toBeLessThanOrEqual(24)
      })
    )
  })

  it('gives day and night of two mirrored places 24 h together', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 60, noNaN: true }), day, (place, one) => {
        expect(solarDay(place, one).daylightH + solarDay(-place, one).daylightH).toBeCloseTo(24, 9)
      })
    )
  })

  it('has its longest day in June in the north and in December in the south', () => {
    const longest = (place: number) =>
      [...Array(12).keys()].reduce(
        (best, month) =>
          solarDay(place, midMonthDay(month + 1)).daylightH > solarDay(place, midMonthDay(best + 1)).daylightH
            ? month
            : best,
        0
      ) + 1
    expect([longest(45), longest(-45)]).toEqual([6, 12])
  })

  it('counts the days as the calendar has them: 1 March is day 60 or 61, and the last day 365 or 366', () => {
    expect(
      ['2025-03-01', '2024-03-01', '2025-12-31', '2024-12-31', '2024-02-29'].map(text => dayOfYear(date(text)))
    ).toEqual([60, 61, 365, 366, 60])
    expect([...Array(12).keys()].map(month => midMonthDay(month + 1))).toEqual([
      15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349
    ])
  })
})

describe('solar-geometry, as typed', () => {
  it('wants one of month, date and day, and a place on the globe', () => {
    const run = (inputs: Record<string, string>) => calcOrAbsent('solar-geometry', inputs)
    expect(run({ latitude: '40' })).toBe('give one of month, date and day-of-year')
    expect(run({ latitude: '40', month: 'Jul', date: '2026-07-15' })).toBe('give one of month, date and day-of-year')
    expect(run({ latitude: '90.1', month: 'Jul' })).toContain('latitude must be')
    expect(run({ latitude: '-90', month: 'jul' })).toHaveProperty('day-length', 0)
    expect(run({ latitude: '0', 'day-of-year': '367' })).toContain('from 1 to 366')
    expect(run({ latitude: '0', 'day-of-year': '0' })).toContain('from 1 to 366')
    expect(run({ latitude: '0', 'day-of-year': '366' })).toHaveProperty('radiation')
  })
})
