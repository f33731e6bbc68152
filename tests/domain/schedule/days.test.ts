import { describe, expect, it } from 'vitest'
import { datesOf, runsOn } from '../../../src/domain/schedule/days.ts'
import type { DayRule } from '../../../src/domain/schedule/program.ts'
import { date, epochDay, fromEpochDay } from '../../../src/units/date.ts'

const day = (text: string) => epochDay(date(text))
const on = (rule: DayRule, text: string) => runsOn(rule, day(text))
const ODD: DayRule = { kind: 'odd-dates', withTurnover: false }
const ODD_WITH: DayRule = { kind: 'odd-dates', withTurnover: true }

describe('odd dates', () => {
  it.each(['2026-01-31', '2026-03-31', '2026-12-31', '2024-02-29'])('leave out %s, which an odd date follows', text => {
    expect(on(ODD, text)).toBe(false)
    expect(on(ODD_WITH, text)).toBe(true)
  })

  it.each(['2026-01-29', '2026-02-27', '2024-02-27', '2026-04-29', '2026-12-29', '2027-01-01'])('keep %s', text => {
    expect(on(ODD, text)).toBe(true)
  })

  it('never water two days running unless the turnover is asked for', () => {
    const days = datesOf(ODD, day('2023-01-01'), day('2028-12-31'))
    const gaps = days.slice(1).map((each, index) => each - (days[index] ?? 0))
    expect(Math.min(...gaps)).toBe(2)
    const turnover = datesOf(ODD_WITH, day('2024-02-27'), day('2024-03-03')).map(fromEpochDay)
    expect(turnover).toEqual(['2024-02-27', '2024-02-29', '2024-03-01', '2024-03-03'])
  })
})

describe('even dates', () => {
  it('wait three days from the 30th to the 2nd where a month has 31 days', () => {
    const days = datesOf({ kind: 'even-dates' }, day('2026-07-29'), day('2026-08-03')).map(fromEpochDay)
    expect(days).toEqual(['2026-07-30', '2026-08-02'])
  })

  it('water on the 28th of February and not on the 29th', () => {
    expect(on({ kind: 'even-dates' }, '2024-02-28')).toBe(true)
    expect(on({ kind: 'even-dates' }, '2024-02-29')).toBe(false)
  })
})

describe('every N days', () => {
  const rule: DayRule = { kind: 'every-n-days', every: 2, from: date('2026-07-02') }

  it('does not run before its first day and runs on it', () => {
    expect(on(rule, '2026-06-30')).toBe(false)
    expect(on(rule, '2026-07-01')).toBe(false)
    expect(on(rule, '2026-07-02')).toBe(true)
  })

  it('turns from even to odd dates after a month of 31 days', () => {
    const days = datesOf(rule, day('2026-07-28'), day('2026-08-05')).map(fromEpochDay)
    expect(days).toEqual(['2026-07-28', '2026-07-30', '2026-08-01', '2026-08-03', '2026-08-05'])
  })

  it('runs on through the year’s end and 29 February', () => {
    const weekly: DayRule = { kind: 'every-n-days', every: 7, from: date('2023-12-28') }
    const days = datesOf(weekly, day('2023-12-20'), day('2024-03-10')).map(fromEpochDay)
    expect(days.slice(0, 3)).toEqual(['2023-12-28', '2024-01-04', '2024-01-11'])
    expect(days.slice(-2)).toEqual(['2024-02-29', '2024-03-07'])
  })

  it('is every day where N is 1', () => {
    expect(
      datesOf({ kind: 'every-n-days', every: 1, from: date('2026-05-01') }, day('2026-04-28'), day('2026-05-03'))
    ).toHaveLength(3)
  })
})

describe('weekdays', () => {
  it('count Monday as 1 and Sunday as 7', () => {
    expect(on({ kind: 'weekdays', days: [1] }, '2026-06-01')).toBe(true)
    expect(on({ kind: 'weekdays', days: [7] }, '2026-05-31')).toBe(true)
    expect(on({ kind: 'weekdays', days: [7] }, '2026-06-01')).toBe(false)
  })

  it('hold before 1970 too', () => {
    expect(on({ kind: 'weekdays', days: [3] }, '1969-12-31')).toBe(true)
  })
})

it('a stretch that ends before it begins has no dates, and one day has at most one', () => {
  expect(datesOf({ kind: 'every-day' }, day('2026-05-02'), day('2026-05-01'))).toEqual([])
  expect(datesOf({ kind: 'every-day' }, day('2026-05-01'), day('2026-05-01'))).toEqual([day('2026-05-01')])
})
