import { describe, expect, it } from 'vitest'
import type { DayRule } from '../../../src/domain/schedule/program.ts'
import { barredBy, hoursAllowed } from '../../../src/domain/schedule/rules.ts'
import { outside as outsideBy } from '../../../src/domain/schedule/windows.ts'
import type { OutsideRun } from '../../../src/domain/schedule/windows.ts'
import type { PatternDay } from '../../../src/domain/schedule/year-runs.ts'
import { parseClock, parseWindow } from '../../../src/units/clock.ts'
import type { Window } from '../../../src/units/clock.ts'
import { date, epochDay } from '../../../src/units/date.ts'

const windows = (...texts: string[]) => texts.map(text => parseWindow(text) as Window)
function run(clock: string, minutes: number, day = '2026-07-02', laterDays = 0): PatternDay {
  const startS = (parseClock(clock) ?? 0) * 60 + laterDays * 86_400
  const each = { program: 'A', programStartS: startS, station: 1, cycle: 1, startS, durationS: minutes * 60 }
  return { day: epochDay(date(day)), pattern: [each] }
}
const everyStation = () => true
const outsideWindow = (days: readonly PatternDay[], allowed: readonly Window[]): OutsideRun[] =>
  outsideBy(days, barredBy({ windows: allowed }, 'window', {}), everyStation).flatMap(({ runs }) => runs)
const outsideDays = (days: readonly PatternDay[], rule: DayRule): OutsideRun[] =>
  outsideBy(days, barredBy({ windows: [], days: rule }, 'days', {}), everyStation).flatMap(({ runs }) => runs)
const hoursLeft = (barred: readonly Window[]) => hoursAllowed([{ windows: [], barred }], {})(0)
const outside = (each: PatternDay, ...texts: string[]) =>
  outsideWindow([each], windows(...texts))[0]?.outsideMinutes ?? 0

describe('a window of the clock', () => {
  it('holds a run from its first minute to its last', () => {
    expect(outside(run('02:00', 60), '02:00-03:00')).toBe(0)
    expect(outside(run('01:59', 60), '02:00-03:00')).toBe(1)
    expect(outside(run('02:01', 60), '02:00-03:00')).toBe(1)
  })

  it('may cross midnight', () => {
    expect(outside(run('22:00', 8 * 60), '10:00 pm - 6:00 am')).toBe(0)
    expect(outside(run('23:30', 60), '22:00-06:00')).toBe(0)
    expect(outside(run('00:30', 60), '22:00-06:00')).toBe(0)
    expect(outside(run('05:30', 45), '22:00-06:00')).toBe(15)
    expect(outside(run('21:45', 30), '22:00-06:00')).toBe(15)
    expect(outside(run('12:00', 30), '22:00-06:00')).toBe(30)
  })

  it('may be one of several in a day, and a run may bridge two', () => {
    expect(outside(run('06:00', 180), '06:00-09:00', '18:00-21:00')).toBe(0)
    expect(outside(run('08:30', 60), '06:00-09:00', '18:00-21:00')).toBe(30)
    expect(outside(run('08:30', 10 * 60), '06:00-09:00', '18:00-21:00')).toBe(9 * 60)
    expect(outside(run('22:00', 120), '20:00-00:00', '00:00-10:00')).toBe(0)
  })

  it('may meet or overlap another without a minute counted twice', () => {
    expect(outside(run('07:00', 120), '06:00-08:00', '08:00-09:00')).toBe(0)
    expect(outside(run('07:00', 180), '06:00-08:00', '07:00-09:00')).toBe(60)
  })

  it('of the whole day, and no window at all, allow every hour', () => {
    expect(outside(run('12:00', 60), '00:00-00:00')).toBe(0)
    expect(outside(run('12:00', 60), '06:00-06:00')).toBe(0)
    expect(outsideWindow([run('12:00', 60)], [])).toEqual([])
  })

  it('says where the part outside begins and ends, from midnight of the run’s day', () => {
    const each = run('05:30', 45)
    expect(outsideWindow([each], windows('22:00-06:00'))).toEqual([
      { run: each.pattern[0], outsideMinutes: 15, fromS: 6 * 3600, toS: 6 * 3600 + 900 }
    ])
  })

  it('is judged for a run that opens after midnight by the hour of the opening', () => {
    const late = run('05:30', 45, '2026-07-02', 1)
    expect(outsideWindow([late], windows('22:00-06:00'))[0]).toMatchObject({
      outsideMinutes: 15,
      fromS: 86_400 + 6 * 3600
    })
  })

  it('counts a run longer than a day', () => {
    expect(outside(run('22:00', 32 * 60), '22:00-06:00')).toBe(16 * 60)
  })

  it('leaves the runs inside out of the list and keeps the order of the others', () => {
    const runs = [run('12:00', 10), run('23:00', 10), run('13:00', 20)]
    expect(outsideWindow(runs, windows('22:00-06:00')).map(({ outsideMinutes }) => outsideMinutes)).toEqual([10, 20])
  })
})

describe('even dates', () => {
  const even = { kind: 'even-dates' } as const

  it('are left for 5 minutes by a run of 35 min at 11:30 pm', () => {
    expect(outsideDays([run('11:30 pm', 35)], even)[0]).toMatchObject({ outsideMinutes: 5, fromS: 86_400, toS: 86_700 })
  })

  it('are kept by a run that shuts at midnight', () => {
    expect(outsideDays([run('11:25 pm', 35)], even)).toEqual([])
  })

  it('are missed whole by a run on an odd date, also one that its program started the evening before', () => {
    expect(outsideDays([run('12:10 am', 40, '2026-07-03')], even)[0]?.outsideMinutes).toBe(40)
    expect(outsideDays([run('12:10 am', 40, '2026-07-02', 1)], even)[0]?.outsideMinutes).toBe(40)
  })

  it('are kept past midnight from an odd date on', () => {
    expect(outsideDays([run('11:30 pm', 35, '2026-07-03')], even)[0]).toMatchObject({ outsideMinutes: 30, toS: 86_400 })
  })

  it('are left twice at the turn of a month of 31 days', () => {
    const found = outsideDays([run('11:30 pm', 60, '2026-07-30'), run('11:30 pm', 60, '2026-07-31')], even)
    expect(found.map(({ outsideMinutes }) => outsideMinutes)).toEqual([30, 60])
  })
})

describe('forbidden hours', () => {
  const left = (...texts: string[]) => hoursLeft(windows(...texts))

  it('leave the rest of the day as one window over midnight', () => {
    expect(left('10:00-16:00')).toEqual(windows('16:00-10:00'))
    expect(left('20:00-01:00')).toEqual(windows('01:00-20:00'))
  })

  it('leave a window between each two, and count once where they overlap', () => {
    expect(left('16:00-18:00', '07:00-09:00')).toEqual(windows('09:00-16:00', '18:00-07:00'))
    expect(left('10:00-14:00', '12:00-16:00')).toEqual(windows('16:00-10:00'))
  })

  it('that start or end at midnight leave one window', () => {
    expect(left('00:00-06:00')).toEqual(windows('06:00-00:00'))
    expect(left('22:00-00:00')).toEqual(windows('00:00-22:00'))
  })

  it('leave nothing of a day that is forbidden as a whole, and all of it where nothing is', () => {
    expect(left('00:00-00:00')).toEqual([])
    expect(left()).toEqual(windows('00:00-00:00'))
  })
})
