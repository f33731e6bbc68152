import { RRule } from 'rrule'
import { describe, expect, it } from 'vitest'
import { parseAddressDays, parseHouseNumber } from '../../src/domain/schedule/address-days.ts'
import { writeDayRule } from '../../src/domain/schedule/text.ts'
import { allowedOn, daysOfRule } from '../../src/domain/schedule/rules.ts'
import type { RuleFacts, TimedRule } from '../../src/domain/schedule/rules.ts'
import { parseClock, parseWindow } from '../../src/units/clock.ts'
import type { Window } from '../../src/units/clock.ts'
import { date, epochDay, fromEpochDay, parseMonthDay } from '../../src/units/date.ts'
import type { MonthDay } from '../../src/units/date.ts'

/** Rules as places have published them. Days and hours are exact: a calendar has no tolerance. */
const address = (groups: Record<string, string>) => {
  const parsed = parseAddressDays(groups)
  if (!parsed) throw new Error('not understood')
  return parsed
}
const windows = (...texts: string[]) => texts.map(text => parseWindow(text) as Window)
const number = (text: string): RuleFacts => ({ houseNumber: parseHouseNumber(text), timeZone: 'America/Chicago' })
const dates = (from: string, to: string) => ({
  from: parseMonthDay(from) as MonthDay,
  to: parseMonthDay(to) as MonthDay
})
const YEARS = [2023, 2024, 2025, 2026, 2027, 2028]

/** Days of a year on which the rule lets water flow at an hour. */
function daysOf(rule: TimedRule, facts: RuleFacts, clock: string, year: number): string[] {
  const days: string[] = []
  for (let day = epochDay(date(`${year}-01-01`)); day <= epochDay(date(`${year}-12-31`)); day += 1)
    if (allowedOn([rule], day, parseClock(clock) ?? 0, facts)) days.push(fromEpochDay(day))
  return days
}

function recurring(year: number, options: ConstructorParameters<typeof RRule>[0]): string[] {
  const [dtstart, until] = [new Date(Date.UTC(year, 0, 1)), new Date(Date.UTC(year, 11, 31))]
  const rule = new RRule({ freq: RRule.DAILY, ...options, dtstart, until })
  return rule.all().map(instant => instant.toISOString().slice(0, 10))
}

describe('Universal City, Texas, stage 1, 2020: days by the last digit, medians on Wednesday, midnight to 10 am or 8 pm to midnight', () => {
  const rule: TimedRule = {
    windows: windows('12:00 am - 10:00 am', '8:00 pm - 12:00 am'),
    daysByAddress: address({ '0-1': 'Mon', '2-3': 'Tue', '4-5': 'Wed', '6-7': 'Thu', '8-9': 'Fri', none: 'Wed' })
  }
  const ROWS = [
    ['1200', 'Mon', RRule.MO],
    ['1201', 'Mon', RRule.MO],
    ['1202', 'Tue', RRule.TU],
    ['1203', 'Tue', RRule.TU],
    ['1204', 'Wed', RRule.WE],
    ['1205', 'Wed', RRule.WE],
    ['6', 'Thu', RRule.TH],
    ['1207b', 'Thu', RRule.TH],
    ['88', 'Fri', RRule.FR],
    ['1209', 'Fri', RRule.FR],
    ['none', 'Wed', RRule.WE]
  ] as const

  it.each(ROWS)('%s waters on %s, in leap and common years as a recurrence library has them', (text, day, weekday) => {
    const days = daysOfRule(rule, number(text))
    expect(days && writeDayRule(days)).toBe(day)
    for (const year of YEARS)
      expect(daysOf(rule, number(text), '09:59', year)).toEqual(recurring(year, { byweekday: [weekday] }))
  })

  it('is over at 10 am, begins again at 8 pm and goes on to midnight', () => {
    const wednesday = epochDay(date('2027-07-07'))
    const at = (clock: string, day = wednesday) => allowedOn([rule], day, parseClock(clock) ?? 0, number('none'))
    expect([at('00:00'), at('09:59'), at('10:00'), at('19:59'), at('20:00'), at('23:59')]).toEqual([
      true,
      true,
      false,
      false,
      true,
      true
    ])
    expect(at('00:00', wednesday + 1)).toBe(false)
  })
})

describe('Lakeville, Minnesota: odd addresses on odd dates, 1 May to 30 September, none from 11 am to 5 pm', () => {
  const rule: TimedRule = {
    windows: [],
    barred: windows('11:00-17:00'),
    daysByAddress: address({ odd: 'odd dates with the 31st', even: 'even dates' }),
    dates: dates('05-01', '09-30')
  }
  const SUMMER = [5, 6, 7, 8, 9]
  const dayNumbers = (parity: number) =>
    Array.from({ length: 31 }, (_, index) => index + 1).filter(n => n % 2 === parity)

  it.each([
    ['1205', 1],
    ['1204', 0]
  ])('house number %s, over leap and common years as a recurrence library has them', (text, parity) => {
    for (const year of YEARS) {
      const summer = daysOf(rule, number(text), '06:00', year).filter(day => SUMMER.includes(Number(day.slice(5, 7))))
      expect(summer).toEqual(recurring(year, { bymonth: SUMMER, bymonthday: dayNumbers(parity) }))
    }
  })

  it('bars nothing out of its dates, and the hot hours within them', () => {
    expect(daysOf(rule, number('1204'), '12:00', 2027).every(day => day < '2027-05-01' || day > '2027-09-30')).toBe(
      true
    )
    expect(daysOf(rule, number('1204'), '12:00', 2027)).toHaveLength(120 + 92)
    expect(daysOf(rule, number('1204'), '17:00', 2027)).toHaveLength(120 + 92 + 75)
  })
})

describe('Fraser, Michigan: even addresses Mon Wed Fri, odd ones Tue Thu Sat, 15 May to 1 October', () => {
  const rule: TimedRule = {
    windows: [],
    daysByAddress: address({ even: 'Mon Wed Fri', odd: 'Tue Thu Sat' }),
    dates: dates('05-15', '10-01')
  }

  it('holds on its first day and its last', () => {
    const facts = number('18')
    const open = (text: string) => allowedOn([rule], epochDay(date(text)), 360, facts)
    expect(open('2026-05-14')).toBe(true)
    expect(open('2026-05-15')).toBe(true)
    expect(open('2026-05-16')).toBe(false)
    expect(open('2026-10-01')).toBe(false)
    expect(open('2026-10-02')).toBe(true)
    expect(open('2026-10-03')).toBe(true)
  })
})

describe('Santa Margarita, California: one day a week from November to March, three from April to October, none 8 am to 6 pm', () => {
  const hours = { windows: [], barred: windows('8:00 am - 6:00 pm') }
  const rules: TimedRule[] = [
    { ...hours, days: { kind: 'weekdays', days: [6] }, dates: dates('11-01', '03-31') },
    { ...hours, days: { kind: 'weekdays', days: [2, 4, 6] }, dates: dates('04-01', '10-31') }
  ]

  it('gives the days of each half, across the end of the year', () => {
    const open = (text: string) => allowedOn(rules, epochDay(date(text)), 360, {})
    for (const year of YEARS) {
      const days: string[] = []
      for (let day = epochDay(date(`${year}-01-01`)); day <= epochDay(date(`${year}-12-31`)); day += 1)
        if (open(fromEpochDay(day))) days.push(fromEpochDay(day))
      const summer = recurring(year, { bymonth: [4, 5, 6, 7, 8, 9, 10], byweekday: [RRule.TU, RRule.TH, RRule.SA] })
      const winter = recurring(year, { bymonth: [11, 12, 1, 2, 3], byweekday: [RRule.SA] })
      expect(days).toEqual([...summer, ...winter].sort())
    }
  })
})
