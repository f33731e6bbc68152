import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isPresent } from '../../../src/base/absent.ts'
import { nextMonthDay, winterizeBy } from '../../../src/domain/climate/winterize-by.ts'
import { date, daysBetween } from '../../../src/units/date.ts'
import type { MonthDay } from '../../../src/units/date.ts'
import { calcOrAbsent } from '../../support/calc.ts'

const day = (text: string) => text as MonthDay
function by(facts: Parameters<typeof winterizeBy>[0]): string {
  const worked = winterizeBy(facts)
  return isPresent(worked) ? worked.value : worked.reason
}

describe('the day to winterize by', () => {
  it('is the day by which one year in ten has frozen, whatever the median is', () => {
    expect(by({ tenPercent: day('10-14') })).toBe('10-14')
    expect(by({ tenPercent: day('10-14'), median: day('10-20') })).toBe('10-14')
  })

  it('is 14 days before the median where only that is known, across the end of a month and of a year', () => {
    expect(by({ median: day('10-28') })).toBe('10-14')
    expect(by({ median: day('10-10') })).toBe('09-26')
    expect(by({ median: day('01-05') })).toBe('12-22')
    expect(by({ median: day('05-12') })).toBe('04-28')
  })

  it('counts in a year of 365 days, so that the day is never too late: 10 March is 24 February', () => {
    expect(by({ median: day('03-10') })).toBe('02-24')
    expect(by({ median: day('02-29') })).toBe('02-14')
  })

  it('is none where it does not freeze, and is not known where nothing is', () => {
    expect(by({ none: true })).toBe('none')
    expect(by({})).toBe('no day of first freeze is known')
    expect(by({ none: true, median: day('11-01') })).toContain('and that it does not freeze')
  })

  it('comes next on or after a date, on that date itself, and in the new year', () => {
    expect(nextMonthDay(day('10-14'), date('2026-10-14'))).toBe('2026-10-14')
    expect(nextMonthDay(day('10-14'), date('2026-10-15'))).toBe('2027-10-14')
    expect(nextMonthDay(day('02-29'), date('2028-02-01'))).toBe('2028-02-28')
    expect(nextMonthDay(day('01-01'), date('2026-12-31'))).toBe('2027-01-01')
  })

  it('is never more than a year away', () => {
    const anyDay = fc.tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 28 }))
    const two = (number: number) => String(number).padStart(2, '0')
    fc.assert(
      fc.property(anyDay, anyDay, fc.integer({ min: 2020, max: 2040 }), ([m, d], [month, dayIn], year) => {
        const from = date(`${year}-${two(month)}-${two(dayIn)}`)
        const away = daysBetween(from, nextMonthDay(day(`${two(m)}-${two(d)}`), from))
        expect(away).toBeGreaterThanOrEqual(0)
        expect(away).toBeLessThanOrEqual(366)
      })
    )
  })

  it('refuses what is no month and day', () => {
    expect(calcOrAbsent('winterize-by', { median: '2-30' })).toBe(
      'median is a month and a day of the calendar, like 10-14'
    )
    expect(calcOrAbsent('winterize-by', { 'ten-percent': '02-30' })).toContain('ten-percent is a month and a day')
    expect(calcOrAbsent('winterize-by', { freeze: 'none' })).toEqual({ by: 'none' })
  })
})
