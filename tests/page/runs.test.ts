import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ScriptController } from '../../src/binder/pages.ts'
import { yearRuns } from '../../src/domain/schedule/expand-year.ts'
import { nextRuns } from '../../src/domain/schedule/next-runs.ts'
import { DAY_S } from '../../src/domain/schedule/run-times.ts'
import type { DayRule } from '../../src/domain/schedule/program.ts'
import { nextStarts, openingsOn } from '../../src/page/runs.ts'
import { date, epochDay } from '../../src/units/date.ts'
import type { IsoDate, MonthDay } from '../../src/units/date.ts'

type Program = ScriptController['programs'][number]

const day = (text: string) => epochDay(date(text))
const program = (changes: Partial<Program> = {}): Program => ({
  id: 'A',
  days: { kind: 'every-day' },
  starts: [22 * 60],
  stations: [{ number: 1, waters: 'shrubs', runTime: { cycles: 1, cycleS: 1800, soakS: 0 } }],
  ...changes
})
const controller = (programs: Program[], changes: Partial<ScriptController> = {}): ScriptController => ({
  controller: 'K1',
  units: 'metric',
  delayBetweenStationsS: 0,
  stepS: 60,
  programs,
  ...changes
})
const times = (one: ScriptController, on: string) =>
  openingsOn(one, day(on)).map(({ fromS, toS }) => [fromS / 60, toS / 60])

describe('what opens on a day', () => {
  it('a run that begins before midnight is of its evening and may end the next day', () => {
    expect(times(controller([program({ starts: [1430] })]), '2026-05-01')).toEqual([[1430, 1460]])
  })

  it('a run that opens after midnight is there on the day it opens, though its program started the evening before', () => {
    const two = program({
      days: { kind: 'weekdays', days: [5] },
      starts: [1430],
      stations: [1, 2].map(number => ({ number, waters: '', runTime: { cycles: 1, cycleS: 900, soakS: 0 } }))
    })
    expect(times(controller([two]), '2026-05-01')).toEqual([[1430, 1445]])
    expect(times(controller([two]), '2026-05-02')).toEqual([[5, 20]])
  })

  it('nothing starts on suspended days, and what started the evening before goes on', () => {
    const suspensions = [{ from: date('2026-05-01'), to: date('2026-05-03') }]
    const late = program({
      starts: [1430],
      suspensions,
      stations: [1, 2].map(number => ({ number, waters: '', runTime: { cycles: 1, cycleS: 900, soakS: 0 } }))
    })
    expect(times(controller([late]), '2026-05-01')).toEqual([[5, 20]])
    expect(times(controller([late]), '2026-05-03')).toEqual([])
    expect(nextStarts(controller([late]), day('2026-05-02'), 0)[0]?.day).toBe(day('2026-05-04'))
  })

  it('nothing opens on a controller that is out of service', () => {
    expect(openingsOn(controller([program()], { outOfService: 'removed for works' }), day('2026-05-01'))).toEqual([])
  })

  it('nothing opens out of season, and a season may cross the year\u2019s end', () => {
    const season = { from: '10-01' as MonthDay, to: '03-31' as MonthDay }
    const south = controller([program()], { season })
    expect([times(south, '2026-01-15').length, times(south, '2026-07-15').length]).toEqual([1, 0])
    expect([times(south, '2026-03-31').length, times(south, '2026-04-01').length]).toEqual([1, 0])
  })

  it('a month at 0 % is dry, and a month at 50 % is half, in whole steps', () => {
    const percent = [0, 0.5, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1]
    const half = controller([program({ monthlyPercent: percent })])
    expect(times(half, '2026-01-10')).toEqual([])
    expect(times(half, '2026-02-10')).toEqual([[1320, 1335]])
  })

  it('finds the next day on which something opens, across the off season', () => {
    const season = { from: '04-01' as MonthDay, to: '10-15' as MonthDay }
    const [next] = nextStarts(controller([program()], { season }), day('2026-11-25'), 0)
    expect([next?.day, next?.first.fromS]).toEqual([day('2027-04-01'), 1320 * 60])
  })

  it('finds none where no program will ever run', () => {
    expect(nextStarts(controller([]), day('2026-05-01'), 0)).toEqual([])
    expect(nextStarts(controller([program({ to: date('2026-04-30') })]), day('2026-05-01'), 0)).toEqual([])
  })
})

describe('the page and the binder', () => {
  const rules: fc.Arbitrary<DayRule> = fc.oneof(
    fc.constant<DayRule>({ kind: 'every-day' }),
    fc.constant<DayRule>({ kind: 'even-dates' }),
    fc.boolean().map((withTurnover): DayRule => ({ kind: 'odd-dates', withTurnover })),
    fc.subarray([1, 2, 3, 4, 5, 6, 7], { minLength: 1 }).map((days): DayRule => ({ kind: 'weekdays', days })),
    fc
      .integer({ min: 1, max: 9 })
      .map((every): DayRule => ({ kind: 'every-n-days', every, from: '2026-03-07' as IsoDate }))
  )
  const programs = fc.record({
    days: rules,
    starts: fc.array(fc.integer({ min: 0, max: 1439 }), { minLength: 1, maxLength: 3 }),
    cycles: fc.integer({ min: 1, max: 3 }),
    minutes: fc.integer({ min: 1, max: 90 })
  })

  it('say the same of every day of a year, 29 February and the turn of the year among them', () => {
    fc.assert(
      fc.property(programs, fc.integer({ min: 0, max: 365 }), ({ days, starts, cycles, minutes }, offset) => {
        const runTime = { cycles, cycleS: minutes * 60, soakS: 600 }
        const stations = [1, 2].map(number => ({ number, waters: '', runTime }))
        const one = controller([program({ days, starts, stations })], { delayBetweenStationsS: 5 })
        const today = day('2028-01-01') + offset
        const planned = { programs: one.programs, delayS: 5, stepS: 60 }
        const runs = [2027, 2028].flatMap(year => yearRuns(planned, year))
        const expected = nextRuns(runs, today, 1).map(run => run.startS + (run.day - today) * DAY_S)
        expect(openingsOn(one, today).map(({ fromS }) => fromS)).toEqual(expected.sort((a, b) => a - b))
      }),
      { numRuns: 60 }
    )
  })
})
