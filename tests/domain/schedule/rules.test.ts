import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { daysByNumber, parseAddressDays, parseHouseNumber } from '../../../src/domain/schedule/address-days.ts'
import type { HouseNumber } from '../../../src/domain/schedule/address-days.ts'
import { dailyOpenS } from '../../../src/domain/schedule/daily-open.ts'
import { runsOn } from '../../../src/domain/schedule/days.ts'
import { yearRuns } from '../../../src/domain/schedule/expand-year.ts'
import { PARTS, allowedOn, barredBy, daysOfRule, hoursAllowed, inForce } from '../../../src/domain/schedule/rules.ts'
import type { RuleFacts, TimedRule } from '../../../src/domain/schedule/rules.ts'
import { outside } from '../../../src/domain/schedule/windows.ts'
import { parseClock, parseWindow } from '../../../src/units/clock.ts'
import type { Window } from '../../../src/units/clock.ts'
import { date, epochDay, fromEpochDay, parseMonthDay } from '../../../src/units/date.ts'
import type { MonthDay } from '../../../src/units/date.ts'
import { controllers, dayRules } from './arbitrary.ts'

const day = (text: string) => epochDay(date(text))
const window = (text: string) => parseWindow(text) as Window
const dates = (from: string, to: string) => ({
  from: parseMonthDay(from) as MonthDay,
  to: parseMonthDay(to) as MonthDay
})
const rule = (more: Partial<TimedRule>): TimedRule => ({ windows: [], ...more })
const at = (rules: TimedRule[], on: string, clock: string, facts: RuleFacts = {}) =>
  allowedOn(rules, day(on), parseClock(clock) ?? 0, facts)
const address = (groups: Record<string, string>) => {
  const parsed = parseAddressDays(groups)
  if (!parsed) throw new Error('not understood')
  return parsed
}

describe('a house number', () => {
  it('is read with a letter after it, and none is a place without one', () => {
    expect(parseHouseNumber('1204')).toBe(1204)
    expect(parseHouseNumber('14b')).toBe(14)
    expect(parseHouseNumber('0')).toBe(0)
    expect(parseHouseNumber('No street address')).toBe('none')
    expect(parseHouseNumber('twelve')).toBeUndefined()
    expect(parseHouseNumber('-3')).toBeUndefined()
  })

  it('belongs to the group of its last digit', () => {
    const groups = address({ '0-1': 'Mon', '2, 4': 'Tue', '3': 'Wed', '5-9': 'Thu' })
    const days = (number: HouseNumber) => daysByNumber(groups, number)
    expect(days(1200)).toEqual({ kind: 'weekdays', days: [1] })
    expect(days(1204)).toEqual({ kind: 'weekdays', days: [2] })
    expect(days(3)).toEqual({ kind: 'weekdays', days: [3] })
    expect(days(99)).toEqual({ kind: 'weekdays', days: [4] })
    expect(days('none')).toBeUndefined()
  })

  it('is not read in groups that name no digit, or days that are no rule', () => {
    expect(parseAddressDays({ '1-0': 'Mon' })).toBeUndefined()
    expect(parseAddressDays({ north: 'Mon' })).toBeUndefined()
    expect(parseAddressDays({ even: 'sometimes' })).toBeUndefined()
  })
})

describe('a rule for a range of dates', () => {
  it('holds on its first and last day and on none beyond', () => {
    const summer = rule({ windows: [window('22:00-06:00')], dates: dates('05-01', '09-30') })
    expect(at([summer], '2026-04-30', '12:00')).toBe(true)
    expect(at([summer], '2026-05-01', '12:00')).toBe(false)
    expect(at([summer], '2026-09-30', '12:00')).toBe(false)
    expect(at([summer], '2026-10-01', '12:00')).toBe(true)
  })

  it('may run across the end of the year, 29 February among it', () => {
    const winter = rule({ days: { kind: 'weekdays', days: [6] }, dates: dates('11-01', '02-29') })
    expect(at([winter], '2028-02-29', '02:00')).toBe(false)
    expect(at([winter], '2028-03-01', '02:00')).toBe(true)
    expect(at([winter], '2026-12-31', '02:00')).toBe(false)
    expect(at([winter], '2027-01-01', '02:00')).toBe(false)
    expect(at([winter], '2027-01-02', '02:00')).toBe(true)
  })
})

describe('a rule by daylight saving', () => {
  const holds = (when: 'daylight-saving' | 'standard', on: string, timeZone?: string) =>
    inForce({ when }, { timeZone })(day(on))

  it('holds from the day the legal clock is moved to the day it is moved back', () => {
    expect(holds('daylight-saving', '2026-03-07', 'America/Denver')).toBe(false)
    expect(holds('daylight-saving', '2026-03-08', 'America/Denver')).toBe(true)
    expect(holds('daylight-saving', '2026-10-31', 'America/Denver')).toBe(true)
    expect(holds('daylight-saving', '2026-11-01', 'America/Denver')).toBe(false)
  })

  it('holds in the southern summer in the south', () => {
    expect(holds('daylight-saving', '2026-01-15', 'Australia/Sydney')).toBe(true)
    expect(holds('daylight-saving', '2026-07-15', 'Australia/Sydney')).toBe(false)
    expect(holds('daylight-saving', '2026-04-04', 'Australia/Sydney')).toBe(true)
    expect(holds('daylight-saving', '2026-04-05', 'Australia/Sydney')).toBe(false)
    expect(holds('daylight-saving', '2026-10-03', 'Australia/Sydney')).toBe(false)
    expect(holds('daylight-saving', '2026-10-04', 'Australia/Sydney')).toBe(true)
  })

  it('of standard time holds all year where no daylight saving is kept, and the other never', () => {
    for (const on of ['2026-01-15', '2026-07-15']) {
      expect(holds('standard', on, 'America/Phoenix')).toBe(true)
      expect(holds('daylight-saving', on, 'America/Phoenix')).toBe(false)
    }
  })

  it('is in force in one half of the year and the other rule in the other, and never both', () => {
    for (let on = day('2026-01-01'); on <= day('2026-12-31'); on += 1) {
      const both = (['daylight-saving', 'standard'] as const).map(when =>
        inForce({ when }, { timeZone: 'Europe/London' })(on)
      )
      expect(both.filter(Boolean)).toHaveLength(1)
    }
  })

  it('is not judged without a time zone', () => {
    expect(holds('standard', '2026-01-15')).toBe(false)
    expect(holds('daylight-saving', '2026-07-15')).toBe(false)
  })
})

describe('several rules', () => {
  const state = rule({ windows: [window('20:00-10:00')] })
  const city = rule({ windows: [window('22:00-06:00')], days: { kind: 'even-dates' } })

  it('must all be kept: the stricter wins', () => {
    expect(at([state, city], '2026-07-02', '21:00')).toBe(false)
    expect(at([state, city], '2026-07-02', '22:00')).toBe(true)
    expect(at([state, city], '2026-07-02', '06:00')).toBe(false)
    expect(at([state, city], '2026-07-03', '23:00')).toBe(false)
  })

  it('leave the hours that all of them allow', () => {
    const hours = hoursAllowed([state, city, rule({ barred: [window('00:00-01:00')] })], {})(day('2026-07-02'))
    expect(hours).toEqual([window('01:00-06:00'), window('22:00-00:00')])
  })

  it('that none are in force leave the whole day', () => {
    expect(hoursAllowed([], {})(0)).toEqual([window('00:00-00:00')])
    expect(hoursAllowed([rule({ windows: [window('01:00-02:00')], when: 'standard' })], {})(0)).toEqual([
      window('00:00-00:00')
    ])
  })
})

const clocks = fc.integer({ min: 0, max: 1439 })
const windows = fc.record({ from: clocks, to: clocks })
const monthDays = fc
  .integer({ min: 0, max: 364 })
  .map(offset => fromEpochDay(day('2026-01-01') + offset).slice(5) as MonthDay)
const groups = fc.record({ digits: fc.subarray([0, 1, 2, 3, 4, 5, 6, 7, 8, 9]), days: dayRules })
const rules: fc.Arbitrary<TimedRule> = fc.record(
  {
    windows: fc.array(windows, { maxLength: 3 }),
    barred: fc.array(windows, { maxLength: 2 }),
    days: dayRules,
    daysByAddress: fc.record({ groups: fc.array(groups, { maxLength: 3 }) }),
    dates: fc.record({ from: monthDays, to: monthDays }),
    when: fc.constantFrom('daylight-saving' as const, 'standard' as const)
  },
  { requiredKeys: ['windows'] }
)
const facts: fc.Arbitrary<RuleFacts> = fc.record({
  houseNumber: fc.option(fc.oneof(fc.nat(9999), fc.constant('none' as const)), { nil: undefined }),
  timeZone: fc.constantFrom(undefined, 'Europe/London', 'Australia/Sydney', 'America/Phoenix')
})
const anyDay = fc.integer({ min: day('2024-01-01'), max: day('2028-12-31') })
const outsideMinutes = (year: ReturnType<typeof yearRuns>, one: TimedRule, its: RuleFacts) =>
  PARTS.flatMap(part => outside(year, barredBy(one, part, its), () => true))
    .flatMap(({ runs }) => runs.map(run => run.outsideMinutes))
    .reduce((a, b) => a + b, 0)

describe('whatever the rule', () => {
  it('a minute is allowed exactly where no barred stretch holds it', () => {
    fc.assert(
      fc.property(fc.array(rules, { maxLength: 3 }), facts, anyDay, clocks, (all, its, on, minute) => {
        const plain = all.every(one => {
          if (!inForce(one, its)(on)) return true
          const days = daysOfRule(one, its)
          const within = ({ from, to }: Window) =>
            to > from ? minute >= from && minute < to : minute >= from || minute < to
          const inWindow = one.windows.length === 0 || one.windows.some(within)
          return (days === undefined || runsOn(days, on)) && inWindow && !(one.barred ?? []).some(within)
        })
        expect(allowedOn(all, on, minute, its)).toBe(plain)
      })
    )
  })

  it('another rule never allows what was barred', () => {
    fc.assert(
      fc.property(fc.array(rules, { maxLength: 2 }), rules, facts, anyDay, clocks, (all, more, its, on, minute) => {
        if (allowedOn([...all, more], on, minute, its)) expect(allowedOn(all, on, minute, its)).toBe(true)
      })
    )
  })

  it('a part of it bars at most two kinds of days, and each kind is one list', () => {
    fc.assert(
      fc.property(rules, facts, fc.constantFrom(...PARTS), (one, its, part) => {
        const barred = barredBy(one, part, its)
        const lists = new Set(Array.from({ length: 366 }, (_, offset) => barred(day('2028-01-01') + offset)))
        expect(lists.size).toBeLessThanOrEqual(2)
      }),
      { numRuns: 30 }
    )
  })
})

describe('a looser rule never makes a fitting program unfit', () => {
  const looser: readonly ((one: TimedRule, window: Window) => TimedRule)[] = [
    (one, more) => ({ ...one, windows: one.windows.length === 0 ? [] : [...one.windows, more] }),
    one => ({ ...one, windows: [] }),
    ({ barred: _, ...one }) => one,
    ({ days: _, daysByAddress: __, ...one }) => one,
    one => (one.days?.kind === 'weekdays' ? { ...one, days: { kind: 'weekdays', days: [1, 2, 3, 4, 5, 6, 7] } } : one),
    one => (one.days?.kind === 'odd-dates' ? { ...one, days: { kind: 'odd-dates', withTurnover: true } } : one)
  ]

  it('by a wider window, more days, fewer forbidden hours', () => {
    fc.assert(
      fc.property(
        controllers,
        rules,
        facts,
        windows,
        fc.nat(looser.length - 1),
        (controller, one, its, more, index) => {
          const year = yearRuns(controller, 2028)
          const loose = looser[index]?.(one, more) ?? one
          expect(outsideMinutes(year, loose, its)).toBeLessThanOrEqual(outsideMinutes(year, one, its) + 1e-6)
        }
      ),
      { numRuns: 60 }
    )
  })

  it('by a higher cap: no day holds more than the day that holds most', () => {
    fc.assert(
      fc.property(controllers, fc.nat(600), fc.nat(600), (controller, capMin, more) => {
        const over = (minutes: number) =>
          [...dailyOpenS(yearRuns(controller, 2028)).values()].flatMap(open =>
            [...open.values()].filter(s => s > minutes * 60)
          )
        expect(over(capMin + more).length).toBeLessThanOrEqual(over(capMin).length)
      }),
      { numRuns: 40 }
    )
  })
})

describe('minutes by calendar day', () => {
  it('are in all what the year opens, cut at midnight', () => {
    fc.assert(
      fc.property(controllers, controller => {
        const year = yearRuns(controller, 2028)
        const all = year.flatMap(({ pattern }) => pattern.map(run => run.durationS)).reduce((a, b) => a + b, 0)
        const byDay = [...dailyOpenS(year).values()].flatMap(open => [...open.values()]).reduce((a, b) => a + b, 0)
        expect(byDay).toBeCloseTo(all, 3)
      }),
      { numRuns: 40 }
    )
  })
})
