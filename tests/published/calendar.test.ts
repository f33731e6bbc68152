import { describe, expect, it } from 'vitest'
import { sum } from '../../src/base/collections.ts'
import { adjustedCycleS } from '../../src/domain/schedule/adjust.ts'
import { daysInMonthByRule } from '../../src/domain/schedule/days-in-month.ts'
import { datesOf, runsOn } from '../../src/domain/schedule/days.ts'
import { yearRuns } from '../../src/domain/schedule/expand-year.ts'
import { sequenceEndS, sequenceProgram } from '../../src/domain/schedule/sequence.ts'
import { parseDayRule, parseRunTime } from '../../src/domain/schedule/text.ts'
import { barredBy } from '../../src/domain/schedule/rules.ts'
import { outside } from '../../src/domain/schedule/windows.ts'
import { parseWindow } from '../../src/units/clock.ts'
import type { Window } from '../../src/units/clock.ts'
import { date, daysInMonth, epochDay, weekdayOf } from '../../src/units/date.ts'

/** Counts are exact: a calendar has no tolerance. Where a figure is rounded in print, its tolerance is half the last digit. */
const MONTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]
const rule = (text: string) => {
  const parsed = parseDayRule(text)
  if (!parsed) throw new Error(text)
  return parsed
}
const time = (text: string) => {
  const parsed = parseRunTime(text)
  if (!parsed.ok) throw new Error(text)
  return parsed.value
}
const countIn = (text: string, year: number, month: number) => {
  const first = epochDay(date(`${year}-${String(month).padStart(2, '0')}-01`))
  return datesOf(rule(text), first, first + daysInMonth(year, month) - 1).length
}

describe('weekdays', () => {
  it.each([
    ['2000-01-01', 6, 'ISO 8601:2004, 3.2.1 and annex: 1 January 2000 is a Saturday (from memory)'],
    ['1970-01-01', 4, 'IEEE Std 1003.1, 4.16, seconds since the epoch, a Thursday by ISO 8601 (from memory)'],
    ['2024-02-29', 4, 'Gregorian calendar: 29 February 2024 is a Thursday (from memory)'],
    ['2027-01-01', 5, 'Gregorian calendar: 2027 begins on a Friday (from memory)']
  ])('%s is ISO weekday %i', (day, weekday) => {
    expect(weekdayOf(epochDay(date(day)))).toBe(weekday)
    expect(runsOn({ kind: 'weekdays', days: [weekday] }, epochDay(date(day)))).toBe(true)
  })
})

describe('watering on odd and even dates', () => {
  it('leaves out the 31st with odd dates: City of Cottage Grove, Minnesota, city code 8-1-9', () => {
    for (const month of [1, 3, 5, 7, 8, 10, 12]) {
      const last = epochDay(date(`2027-${String(month).padStart(2, '0')}-31`))
      expect(runsOn(rule('odd dates'), last)).toBe(false)
      expect(runsOn(rule('odd dates'), last + 1)).toBe(true)
    }
  })

  it('gives 186 odd dates in 2027, 179 without the 31sts, 179 even ones: counted in the calendar', () => {
    const year = (text: string) => sum(MONTHS.map(month => countIn(text, 2027, month)))
    expect([year('odd dates with the 31st'), year('odd dates'), year('even dates')]).toEqual([186, 179, 179])
    expect(sum(MONTHS.map(month => daysInMonthByRule(rule('odd dates'), 2027, month)))).toBe(179)
  })
})

describe('every N days from 1 January 2027: counted in the calendar', () => {
  it.each([
    [2, [16, 14, 15, 15, 16, 15, 15, 16, 15, 15, 15, 16]],
    [3, [11, 9, 10, 10, 11, 10, 10, 10, 10, 11, 10, 10]],
    [4, [8, 7, 8, 7, 8, 8, 7, 8, 8, 7, 8, 8]]
  ])('every %i days', (every, counts) => {
    expect(MONTHS.map(month => countIn(`every ${every} days from 2027-01-01`, 2027, month))).toEqual(counts)
  })
})

describe('Wednesdays of 2027, the day on which Universal City, Texas, stage 1 (2020), has medians water', () => {
  /** Minutes a month of a zone that needs more in June than in May; composed from the state's monthly figures for zone 12. */
  const need = [117.4, 185.6, 322.9, 483.0, 645.8, 738.6, 763.3, 675.2, 511.4, 352.3, 170.5, 88.1]

  it('fall four or five times a month', () => {
    expect(MONTHS.map(month => countIn('Wed', 2027, month))).toEqual([4, 4, 5, 4, 4, 5, 4, 4, 5, 4, 4, 5])
  })

  it('count as days in month / 7, so that a June that needs more is not given less than May', () => {
    const perEvent = need.map((minutes, index) => minutes / daysInMonthByRule(rule('Wed'), 2027, index + 1))
    const printed = [26.5, 46.4, 72.9, 112.7, 145.8, 172.3, 172.3, 152.5, 119.3, 79.5, 39.8, 19.9]
    /** Half a last digit of the print, and half a last digit of a need divided by four. */
    perEvent.forEach((minutes, index) => expect(Math.abs(minutes - (printed[index] ?? 0))).toBeLessThan(0.05 + 0.0125))
    expect((perEvent[5] ?? 0) > (perEvent[4] ?? 0)).toBe(true)
    const jumping = need.map((minutes, index) => minutes / countIn('Wed', 2027, index + 1))
    expect((jumping[5] ?? 0) < (jumping[4] ?? 0)).toBe(true)
  })
})

describe('monthly percents of Washington State University Extension for Colville, base 20 min', () => {
  it.each([
    ['Apr', 51, 10.2, 10],
    ['May', 68, 13.6, 14],
    ['Jun', 79, 15.8, 16],
    ['Jul', 100, 20, 20],
    ['Aug', 92, 18.4, 18],
    ['Sep', 63, 12.6, 13],
    ['Oct', 31, 6.2, 6]
  ])('%s at %i %% is %f min, %i in steps of 1 min', (_, percent, minutes, whole) => {
    expect(adjustedCycleS(1200, percent / 100, 1)).toBe(minutes * 60)
    expect(adjustedCycleS(1200, percent / 100, 60)).toBe(whole * 60)
  })
})

describe('cycles and soak', () => {
  const single = (text: string) =>
    sequenceProgram([{ number: 1, runTime: time(text) }], { percent: 1, stepS: 60, delayS: 0 })

  it('15 min as three of 5 min, 30 min between, lasts 75 min: Town of Castle Rock, Colorado', () => {
    const sequence = single('3 x 5 min soak 30 min')
    expect(sum(sequence.map(({ durationS }) => durationS))).toBe(15 * 60)
    expect(sequenceEndS(sequence)).toBe(75 * 60)
  })

  it('15 min as three of 5 min with a break of 45 to 60 min: City of Aurora, Colorado', () => {
    expect(sequenceEndS(single('3 x 5 min soak 45 min'))).toBe(105 * 60)
    expect(sequenceEndS(single('3 x 5 min soak 60 min'))).toBe(135 * 60)
  })

  it('10 min as two of 5 min that start an hour apart: a guide of Tucson, Arizona', () => {
    expect(single('2 x 5 min soak 55 min').map(({ startS }) => startS)).toEqual([0, 3600])
  })
})

describe('overhead watering between 8 pm and 10 am: California Code of Regulations, title 23, 492.10(a)(2)', () => {
  const minutesOutside = (start: number, minutes: string) => {
    const stations = [{ number: 1, runTime: time(minutes) }]
    const program = { id: 'A', days: rule('Tue Fri'), starts: [start], stations }
    const days = yearRuns({ programs: [program], delayS: 0, stepS: 60 }, 2027)
    const hours = { windows: [parseWindow('8:00 pm-10:00 am') as Window] }
    return outside(days, barredBy(hours, 'window', {}), () => true)[0]?.runs[0]?.outsideMinutes ?? 0
  }

  it('holds from 20:00 to 10:00 and not a minute more', () => {
    expect(minutesOutside(20 * 60, '14 h')).toBe(0)
    expect(minutesOutside(20 * 60 - 1, '14 h')).toBe(1)
    expect(minutesOutside(9 * 60 + 50, '25 min')).toBe(15)
  })
})
