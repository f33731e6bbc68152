import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addDays,
  addInterval,
  date,
  dayOf,
  daysBetween,
  daysInMonth,
  epochDay,
  fromEpochDay,
  inSeason,
  isLeapYear,
  monthOf,
  parseDate,
  parseInterval,
  parseMonthDay,
  weekdayOf,
  yearOf
} from '../../src/units/date.ts'
import type { MonthDay } from '../../src/units/date.ts'

const anyDay = fc.integer({ min: -20_000, max: 60_000 })

describe('reading a date', () => {
  it.each(['2024-02-29', '2000-02-29', '2026-12-31', '1900-01-01', '2199-12-31'])('%s exists', text => {
    expect(parseDate(text)).toBe(text)
  })

  it.each([
    '2025-02-29',
    '2025-02-30',
    '1900-02-29',
    '2025-04-31',
    '2025-13-01',
    '2025-00-10',
    '2025-01-00',
    '2025-1-5',
    '25-01-05',
    '2025/01/05',
    '2025-01-05T00:00',
    '1899-12-31',
    '2200-01-01',
    '0026-05-01',
    '',
    'today'
  ])('“%s” does not', text => {
    expect(parseDate(text)).toBeUndefined()
  })

  it('throws where the program itself writes an impossible one', () => {
    expect(() => date('2025-02-30')).toThrow('2025-02-30 is not a date')
  })

  it('of every year takes 29 February, since some years have it', () => {
    expect(parseMonthDay('02-29')).toBe('02-29')
    expect(['02-30', '13-01', '4-1', '04-31', ''].map(parseMonthDay)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      undefined
    ])
  })
})

describe('counting days', () => {
  it('counts there and back', () => {
    fc.assert(
      fc.property(anyDay, day => {
        expect(epochDay(fromEpochDay(day))).toBe(day)
      })
    )
  })

  it('knows the weekday of days that people remember', () => {
    expect(weekdayOf(epochDay(date('1970-01-01')))).toBe(4)
    expect(weekdayOf(epochDay(date('1969-07-20')))).toBe(7)
    expect(weekdayOf(epochDay(date('2000-01-01')))).toBe(6)
  })

  it('counts across a leap day and a year’s end, and backwards below zero', () => {
    expect(daysBetween(date('2024-02-28'), date('2024-03-01'))).toBe(2)
    expect(daysBetween(date('2025-12-31'), date('2026-01-01'))).toBe(1)
    expect(daysBetween(date('2026-05-01'), date('2026-04-14'))).toBe(-17)
  })

  it('knows leap years and the lengths of months', () => {
    expect([1900, 2000, 2023, 2024].map(isLeapYear)).toEqual([false, true, false, true])
    expect([daysInMonth(2023, 2), daysInMonth(2024, 2), daysInMonth(2026, 4), daysInMonth(2026, 12)]).toEqual([
      28, 29, 30, 31
    ])
  })

  it('takes a date apart', () => {
    const day = date('2026-04-02')
    expect([yearOf(day), monthOf(day), dayOf(day)]).toEqual([2026, 4, 2])
  })
})

describe('intervals', () => {
  it.each([
    ['12 months', 12, 0],
    ['1 month', 1, 0],
    ['1 year', 12, 0],
    ['3 years', 36, 0],
    ['6 weeks', 0, 42],
    ['90 days', 0, 90],
    ['1 day', 0, 1],
    ['0 days', 0, 0]
  ])('“%s”', (text, months, days) => {
    expect(parseInterval(text)).toEqual({ months, days, text })
  })

  it.each(['12', 'months', '1.5 years', '12 moons', '-1 month', ''])('“%s” is no interval', text => {
    expect(parseInterval(text)).toBeUndefined()
  })

  it('clamp to the end of a month and never run into the next', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 0, max: 48 }), (day, months) => {
        const from = fromEpochDay(day)
        const to = addInterval(from, { months, days: 0 })
        expect((yearOf(to) - yearOf(from)) * 12 + monthOf(to) - monthOf(from)).toBe(months)
        expect(dayOf(to)).toBe(Math.min(dayOf(from), daysInMonth(yearOf(to), monthOf(to))))
      })
    )
  })

  it('in days are plain counting', () => {
    expect(addDays(date('2026-02-02'), 166)).toBe('2026-07-18')
    expect(addDays(date('2024-02-28'), 1)).toBe('2024-02-29')
    expect(addDays(date('2026-01-01'), -1)).toBe('2025-12-31')
  })
})

describe('seasons', () => {
  const season = (from: string, to: string) => ({ from: from as MonthDay, to: to as MonthDay })

  it('hold both of their ends', () => {
    const north = season('04-01', '10-15')
    expect(['03-31', '04-01', '10-15', '10-16'].map(day => inSeason(day, north))).toEqual([false, true, true, false])
  })

  it('run across the year’s end in the south', () => {
    const south = season('10-01', '04-15')
    expect(['09-30', '10-01', '12-31', '01-01', '04-15', '04-16', '07-01'].map(day => inSeason(day, south))).toEqual([
      false,
      true,
      true,
      true,
      true,
      false,
      false
    ])
  })

  it('of one day is that day', () => {
    expect(['02-28', '02-29', '03-01'].map(day => inSeason(day, season('02-29', '02-29')))).toEqual([
      false,
      true,
      false
    ])
  })
})
