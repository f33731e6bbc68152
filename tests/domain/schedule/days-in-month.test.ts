import { describe, expect, it } from 'vitest'
import { daysInMonthByRule } from '../../../src/domain/schedule/days-in-month.ts'
import type { DayRule } from '../../../src/domain/schedule/program.ts'
import { date } from '../../../src/units/date.ts'

const EVERY_DAY: DayRule = { kind: 'every-day' }
const MWF: DayRule = { kind: 'weekdays', days: [1, 3, 5] }
const SECOND_DAY: DayRule = { kind: 'every-n-days', every: 2, from: date('2020-01-01') }

describe('days in a month', () => {
  it('go by days in month × days a week / 7, whatever weekday the month begins on', () => {
    expect(daysInMonthByRule(EVERY_DAY, 2026, 4)).toBe(30)
    expect(daysInMonthByRule(MWF, 2026, 4)).toBeCloseTo((30 * 3) / 7, 12)
    expect(daysInMonthByRule(MWF, 2027, 3)).toBe(daysInMonthByRule(MWF, 2026, 12))
    expect(daysInMonthByRule(SECOND_DAY, 2026, 7)).toBe(15.5)
    expect(daysInMonthByRule({ ...SECOND_DAY, every: 3 } as DayRule, 2026, 4)).toBe(10)
  })

  it('give February 28 or 29 days', () => {
    expect(daysInMonthByRule(EVERY_DAY, 2023, 2)).toBe(28)
    expect(daysInMonthByRule(EVERY_DAY, 2024, 2)).toBe(29)
    expect(daysInMonthByRule({ kind: 'weekdays', days: [3] }, 2023, 2)).toBe(4)
  })

  it('are the exact count for odd and even dates', () => {
    const odd: DayRule = { kind: 'odd-dates', withTurnover: false }
    const oddWith: DayRule = { kind: 'odd-dates', withTurnover: true }
    expect([1, 2, 4].map(month => daysInMonthByRule(odd, 2024, month))).toEqual([15, 14, 15])
    expect([1, 2, 4].map(month => daysInMonthByRule(oddWith, 2024, month))).toEqual([16, 15, 15])
    expect([1, 2, 4].map(month => daysInMonthByRule({ kind: 'even-dates' }, 2024, month))).toEqual([15, 14, 15])
  })

  it('do not count before the first day of an interval', () => {
    const rule: DayRule = { kind: 'every-n-days', every: 2, from: date('2026-07-02') }
    expect(daysInMonthByRule(rule, 2026, 6)).toBe(0)
    expect(daysInMonthByRule(rule, 2026, 7)).toBe(15)
    expect(daysInMonthByRule(rule, 2026, 8)).toBe(15.5)
  })

  it('count the share of a month that is active', () => {
    const fromThe16th = ({ iso }: { iso: string }) => iso >= '2026-04-16'
    expect(daysInMonthByRule(MWF, 2026, 4, fromThe16th)).toBeCloseTo((15 * 3) / 7, 12)
    expect(daysInMonthByRule({ kind: 'even-dates' }, 2026, 4, fromThe16th)).toBe(8)
    expect(daysInMonthByRule(MWF, 2026, 3, fromThe16th)).toBe(0)
  })
})
