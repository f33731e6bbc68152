import { RRule, RRuleSet } from 'rrule'
import { describe, expect, it } from 'vitest'
import { datesOf } from '../../../src/domain/schedule/days.ts'
import { expandYear } from '../../../src/domain/schedule/expand-year.ts'
import type { DayRule } from '../../../src/domain/schedule/program.ts'
import { date, epochDay, fromEpochDay } from '../../../src/units/date.ts'

/** The recurrence rules of RFC 5545 as another library works them out, over leap and common years. */
const FROM = new Date(Date.UTC(2023, 0, 1))
const UNTIL = new Date(Date.UTC(2028, 11, 31))
const YEARS = [2023, 2024, 2025, 2026, 2027, 2028]
const BYDAY = [RRule.MO, RRule.TU, RRule.WE, RRule.TH, RRule.FR, RRule.SA, RRule.SU]

const odds = (last: number) => Array.from({ length: 31 }, (_, index) => index + 1).filter(n => n % 2 === 1 && n <= last)
const evens = Array.from({ length: 15 }, (_, index) => 2 * index + 2)
const NOT_FEBRUARY = [1, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]
type Options = ConstructorParameters<typeof RRule>[0]

function recurring(...rules: Options[]): string[] {
  const set = new RRuleSet()
  for (const options of rules) set.rrule(new RRule({ freq: RRule.DAILY, dtstart: FROM, until: UNTIL, ...options }))
  return set.all().map(instant => instant.toISOString().slice(0, 10))
}

const interval = (every: number, from: string) => ({
  title: `every ${every} days from ${from}`,
  rule: { kind: 'every-n-days', every, from: date(from) } as DayRule,
  other: () => recurring({ interval: every, dtstart: new Date(`${from}T00:00:00Z`) })
})

const weekdays = (...days: number[]) => ({
  title: `weekdays ${days.join()}`,
  rule: { kind: 'weekdays', days } as DayRule,
  other: () => recurring({ byweekday: days.map(day => BYDAY[day - 1] ?? RRule.MO) })
})

const CASES = [
  { title: 'every day', rule: { kind: 'every-day' } as DayRule, other: () => recurring({}) },
  weekdays(3),
  weekdays(1, 3, 5),
  weekdays(2, 4, 6, 7),
  weekdays(1, 2, 3, 4, 5, 6, 7),
  {
    title: 'odd dates without the 31st and 29 February',
    rule: { kind: 'odd-dates', withTurnover: false } as DayRule,
    other: () => recurring({ bymonth: NOT_FEBRUARY, bymonthday: odds(29) }, { bymonth: [2], bymonthday: odds(27) })
  },
  {
    title: 'odd dates with the 31st',
    rule: { kind: 'odd-dates', withTurnover: true } as DayRule,
    other: () => recurring({ bymonthday: odds(31) })
  },
  { title: 'even dates', rule: { kind: 'even-dates' } as DayRule, other: () => recurring({ bymonthday: evens }) },
  interval(1, '2023-01-01'),
  interval(2, '2023-01-01'),
  interval(2, '2024-02-29'),
  interval(3, '2023-12-31'),
  interval(4, '2026-07-02'),
  interval(7, '2024-02-28'),
  interval(14, '2025-08-31'),
  interval(30, '2027-01-31')
]

describe.each(CASES)('$title, 2023 to 2028', ({ rule, other }) => {
  const expected = other()

  it('names the same dates as the recurrence library', () => {
    const ours = datesOf(rule, epochDay(date('2023-01-01')), epochDay(date('2028-12-31'))).map(fromEpochDay)
    expect(ours).toEqual(expected)
    expect(ours.length).toBeGreaterThan(20)
  })

  it('waters on those dates and no others when a year is expanded', () => {
    const stations = [{ number: 1, runTime: { cycles: 2, cycleS: 300, soakS: 600 } }]
    const controller = { programs: [{ id: 'A', days: rule, starts: [1380], stations }], delayS: 0, stepS: 60 }
    const watered = YEARS.flatMap(year => expandYear(controller, year).map(run => fromEpochDay(run.day)))
    expect([...new Set(watered)]).toEqual(expected)
    expect(watered).toHaveLength(2 * expected.length)
  })
})
