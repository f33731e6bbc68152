import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sum } from '../../../src/base/collections.ts'
import { daysFrom } from '../../../src/domain/schedule/calendar-days.ts'
import type { ScheduledController, ScheduledProgram } from '../../../src/domain/schedule/controller.ts'
import { expandDays, expandYear } from '../../../src/domain/schedule/expand-year.ts'
import type { Run } from '../../../src/domain/schedule/program.ts'
import { openingS } from '../../../src/domain/schedule/run-times.ts'
import { date, epochDay, fromEpochDay, parseMonthDay } from '../../../src/units/date.ts'
import type { MonthDay } from '../../../src/units/date.ts'
import { controllers } from './arbitrary.ts'

const BASE: ScheduledProgram = {
  id: 'A',
  days: { kind: 'every-day' },
  starts: [1380],
  stations: [{ number: 1, runTime: { cycles: 1, cycleS: 1200, soakS: 0 } }]
}
const controller = (...programs: Partial<ScheduledProgram>[]): ScheduledController => ({
  programs: programs.map(program => ({ ...BASE, ...program })),
  delayS: 0,
  stepS: 60
})
const season = (from: string, to: string) => ({
  from: parseMonthDay(from) as MonthDay,
  to: parseMonthDay(to) as MonthDay
})
const dates = (runs: readonly Run[]) => [...new Set(runs.map(({ day }) => fromEpochDay(day)))]
const openS = (runs: readonly Run[]) => sum(runs.map(({ durationS }) => durationS))

describe('a year', () => {
  it('has 365 or 366 days of watering', () => {
    expect(expandYear(controller({}), 2023)).toHaveLength(365)
    expect(expandYear(controller({}), 2024)).toHaveLength(366)
    expect(dates(expandYear(controller({}), 2024))).toContain('2024-02-29')
  })

  it('says of each run the day, the start that opened it and the seconds', () => {
    const [run] = expandYear(controller({}), 2026)
    const day = epochDay(date('2026-01-01'))
    expect(run).toEqual({
      day,
      program: 'A',
      programStartS: 82_800,
      station: 1,
      cycle: 1,
      startS: 82_800,
      durationS: 1200
    })
  })

  it('is empty without programs, without stations and without start times', () => {
    expect(expandYear(controller(), 2026)).toEqual([])
    expect(expandYear(controller({ stations: [] }), 2026)).toEqual([])
    expect(expandYear(controller({ starts: [] }), 2026)).toEqual([])
  })

  it('keeps a program within its own first and last day, both included', () => {
    const program = { from: date('2026-12-30'), to: date('2027-01-02') }
    expect(dates(expandYear(controller(program), 2026))).toEqual(['2026-12-30', '2026-12-31'])
    expect(dates(expandYear(controller(program), 2027))).toEqual(['2027-01-01', '2027-01-02'])
    expect(expandYear(controller(program), 2028)).toEqual([])
  })
})

describe('a season', () => {
  it('waters from its first to its last day', () => {
    const days = dates(expandYear(controller({}), 2026, season('04-01', '10-15')))
    expect([days[0], days.at(-1), days.length]).toEqual(['2026-04-01', '2026-10-15', 198])
  })

  it('crosses the year’s end in the south', () => {
    const days = dates(expandYear(controller({}), 2026, season('10-01', '03-31')))
    expect(days).toHaveLength(90 + 92)
    expect(days).toContain('2026-01-01')
    expect(days).toContain('2026-03-31')
    expect(days).not.toContain('2026-04-01')
    expect(days).not.toContain('2026-09-30')
    expect(days).toContain('2026-10-01')
  })

  it('may be one day, and may end on 29 February', () => {
    expect(dates(expandYear(controller({}), 2026, season('07-01', '07-01')))).toEqual(['2026-07-01'])
    expect(dates(expandYear(controller({}), 2024, season('02-28', '02-29')))).toEqual(['2024-02-28', '2024-02-29'])
    expect(dates(expandYear(controller({}), 2023, season('02-28', '02-29')))).toEqual(['2023-02-28'])
  })
})

describe('a month’s percent', () => {
  const monthlyPercent = [0, 0, 0, 0.5, 0.8, 1, 1, 1, 0.7, 0.02, 0, 0]

  it('holds for the runs that start in the month', () => {
    const runs = expandYear(controller({ monthlyPercent }), 2026)
    const on = (text: string) =>
      runs.filter(({ day }) => day === epochDay(date(text))).map(({ durationS }) => durationS)
    expect([on('2026-04-30'), on('2026-05-01'), on('2026-06-01')]).toEqual([[600], [960], [1200]])
  })

  it('of 0, or one that rounds to nothing, stops the watering', () => {
    const days = dates(expandYear(controller({ monthlyPercent }), 2026))
    expect([days[0], days.at(-1)]).toEqual(['2026-04-01', '2026-09-30'])
  })

  it('is that of the start day for a run past midnight into the next month', () => {
    const long = [{ number: 1, runTime: { cycles: 2, cycleS: 3600, soakS: 0 } }]
    const runs = expandYear(controller({ monthlyPercent, stations: long, starts: [1410] }), 2026)
    const last = runs.filter(({ day }) => day === epochDay(date('2026-04-30')))
    expect(last.map(({ startS, durationS }) => [startS, durationS])).toEqual([
      [84_600, 1800],
      [86_400, 1800]
    ])
  })
})

describe('past midnight', () => {
  it('a run belongs to the day its program started on, the year’s last night among them', () => {
    const stations = [1, 2].map(number => ({ number, runTime: { cycles: 1, cycleS: 3600, soakS: 0 } }))
    const runs = expandYear(controller({ stations, starts: [1380] }), 2026)
    const last = runs.at(-1)
    expect(last).toMatchObject({ day: epochDay(date('2026-12-31')), station: 2, startS: 86_400 })
    expect(runs[0]).toMatchObject({ day: epochDay(date('2026-01-01')), station: 1 })
  })

  it('runs stay in order of opening among those of the next morning', () => {
    const stations = [1, 2, 3].map(number => ({ number, runTime: { cycles: 1, cycleS: 3600, soakS: 0 } }))
    const two = controller({ stations, starts: [1380] }, { id: 'B', starts: [30] })
    const runs = expandYear(two, 2026)
    expect(runs.slice(0, 5).map(({ program, station }) => `${program}${station}`)).toEqual([
      'B1',
      'A1',
      'A2',
      'B1',
      'A3'
    ])
  })

  it('a week across the year’s end is expanded like any other', () => {
    const monthlyPercent = [0.5, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1]
    const days = daysFrom(epochDay(date('2026-12-30')), 4)
    expect(expandDays(controller({ monthlyPercent }), days).map(({ durationS }) => durationS)).toEqual([
      1200, 1200, 600, 600
    ])
  })
})

describe('for any controller', () => {
  it('runs are in order of opening', () => {
    fc.assert(
      fc.property(controllers, each => {
        const openings = expandYear(each, 2024).map(openingS)
        expect(openings.every((opening, index) => index === 0 || opening >= (openings[index - 1] ?? 0))).toBe(true)
      }),
      { numRuns: 40 }
    )
  })

  it('the year’s total is the sum of its programs and of its halves', () => {
    fc.assert(
      fc.property(controllers, each => {
        const total = openS(expandYear(each, 2025))
        const apart = each.programs.map(program => openS(expandYear({ ...each, programs: [program] }, 2025)))
        expect(sum(apart)).toBe(total)
        const summer = openS(expandYear(each, 2025, season('04-01', '09-30')))
        const winter = openS(expandYear(each, 2025, season('10-01', '03-31')))
        expect(summer + winter).toBe(total)
      }),
      { numRuns: 40 }
    )
  })

  it('the order of the stations in the file does not change the total', () => {
    fc.assert(
      fc.property(controllers, each => {
        const programs = each.programs.map(program => ({ ...program, stations: [...program.stations].reverse() }))
        expect(openS(expandYear({ ...each, programs }, 2025))).toBe(openS(expandYear(each, 2025)))
      }),
      { numRuns: 40 }
    )
  })
})
