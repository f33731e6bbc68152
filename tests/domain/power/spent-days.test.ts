import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { coldShare, yearlyLoss } from '../../../src/domain/power/cell-climate.ts'
import { lifeDays } from '../../../src/domain/power/life.ts'
import { pulsesByMonth } from '../../../src/domain/power/pulse-counts.ts'
import { LONGEST_DAYS, daysUntilSpent } from '../../../src/domain/power/spent-days.ts'
import { addDays, date, epochDay } from '../../../src/units/date.ts'

const even = (mah: number) => Array.from({ length: 12 }, () => mah)
const months = fc.array(fc.double({ min: 0.01, max: 5, noNaN: true }), { minLength: 12, maxLength: 12 })
const usable = fc.double({ min: 1, max: 2000, noNaN: true })
const fitted = fc.integer({ min: 0, max: 4000 }).map(days => addDays(date('2020-01-01'), days))

describe('days until a set is spent', () => {
  it('at the same draw all year are those of the plain division', () => {
    expect(daysUntilSpent(396, even(0.9), date('2026-02-02'))).toBe(440)
    fc.assert(
      fc.property(usable, fc.double({ min: 0.2, max: 5, noNaN: true }), fitted, (usableMah, mah, from) => {
        const plain = lifeDays({ capacityMah: usableMah, usable: 1, drawnMahPerDay: mah, yearlyLoss: 0 })
        expect(daysUntilSpent(usableMah, even(mah), from)).toBe(Math.min(LONGEST_DAYS, Math.floor(plain + 1e-9)))
      })
    )
  })

  it('count each month at its own draw, through 29 February, the 31st and the year’s end', () => {
    const winter = [1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1]
    expect(daysUntilSpent(32, winter, date('2023-12-31'))).toBe(32)
    expect(daysUntilSpent(60.5, winter, date('2023-12-31'))).toBe(60)
    expect(daysUntilSpent(61, winter, date('2023-12-31'))).toBe(61 + 275)
    expect(daysUntilSpent(60, winter, date('2024-01-01'))).toBe(60 + 275)
    expect(daysUntilSpent(59, winter, date('2023-01-01'))).toBe(59 + 275)
  })

  it('are none where the first day takes more than there is, and 20 years where nothing is drawn', () => {
    expect(daysUntilSpent(1, even(2), date('2026-05-01'))).toBe(0)
    expect(daysUntilSpent(0, even(0), date('2026-05-01'))).toBe(LONGEST_DAYS)
  })

  it('a set fitted later is never gone earlier', () => {
    fc.assert(
      fc.property(usable, months, fitted, fc.integer({ min: 0, max: 800 }), (usableMah, draw, from, later) => {
        const goneOn = (day: typeof from) => addDays(day, daysUntilSpent(usableMah, draw, day))
        expect(goneOn(addDays(from, later)) >= goneOn(from)).toBe(true)
      })
    )
  })

  it('more drawn in any month never lasts longer, and less charge neither', () => {
    fc.assert(
      fc.property(
        usable,
        months,
        fitted,
        fc.nat(11),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (usableMah, draw, from, month, more) => {
          const days = daysUntilSpent(usableMah, draw, from)
          const heavier = draw.map((mah, index) => (index === month ? mah + more : mah))
          expect(daysUntilSpent(usableMah, heavier, from)).toBeLessThanOrEqual(days)
          expect(daysUntilSpent(usableMah / (1 + more), draw, from)).toBeLessThanOrEqual(days)
        }
      )
    )
  })
})

describe('cells and the weather', () => {
  it('colder never gives more charge, with a point of the sheet or without', () => {
    const celsius = fc.double({ min: -40, max: 60, noNaN: true })
    const point = fc.option(
      fc.record({
        atC: fc.double({ min: -40, max: 15, noNaN: true }),
        share: fc.double({ min: 0.01, max: 1, noNaN: true })
      }),
      { nil: undefined }
    )
    fc.assert(
      fc.property(celsius, celsius, point, (one, other, stated) => {
        expect(coldShare(Math.min(one, other), stated)).toBeLessThanOrEqual(
          coldShare(Math.max(one, other), stated) + 1e-12
        )
      })
    )
  })

  it('is half below 0 °C and whole at it, a straight line to a point of the sheet, and no less below that', () => {
    expect([coldShare(0), coldShare(-0.01), coldShare(40)]).toEqual([1, 0.5, 1])
    const point = { atC: -20, share: 0.6 }
    expect([20, 0, -20, -30].map(celsius => coldShare(celsius, point))).toEqual([1, 0.8, 0.6, 0.6])
  })

  it('heat adds to what is lost by itself, and cold is given no credit', () => {
    expect(yearlyLoss(0.03, even(5))).toBeCloseTo(0.03, 12)
    expect(yearlyLoss(0.03, even(35))).toBeCloseTo(0.06, 12)
    expect(yearlyLoss(0.03, [...even(5).slice(6), ...even(35).slice(6)])).toBeCloseTo(0.045, 12)
    expect(yearlyLoss(0.03, [])).toBe(0.03)
  })
})

describe('pulses of a simulated year', () => {
  const run = (station: number, programStartS: number) => ({
    program: 'A',
    programStartS,
    station,
    cycle: 1,
    startS: programStartS,
    durationS: 60
  })
  const pattern = [run(1, 3600), run(2, 3600), run(1, 7200)]

  it('are two for each opening, and two for each start of what follows the program', () => {
    const days = ['2026-01-31', '2026-02-01', '2026-12-31'].map(day => ({ day: epochDay(date(day)), pattern }))
    expect(pulsesByMonth(days, 0)).toEqual([6, 6, 0, 0, 0, 0, 0, 0, 0, 0, 0, 6])
    expect(pulsesByMonth(days, 2)).toEqual([14, 14, 0, 0, 0, 0, 0, 0, 0, 0, 0, 14])
    expect(pulsesByMonth([], 1)).toEqual(even(0))
  })
})
