import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sum } from '../../../src/base/collections.ts'
import type { ScheduledController } from '../../../src/domain/schedule/controller.ts'
import { expandYear } from '../../../src/domain/schedule/expand-year.ts'
import { stationMonths } from '../../../src/domain/schedule/months.ts'
import { date } from '../../../src/units/date.ts'
import type { MonthDay } from '../../../src/units/date.ts'
import { controllers } from './arbitrary.ts'

const SEASON = { from: '04-16' as MonthDay, to: '10-15' as MonthDay }
const SOUTHERN = { from: '10-01' as MonthDay, to: '03-15' as MonthDay }
const controller: ScheduledController = {
  programs: [
    {
      id: 'A',
      days: { kind: 'weekdays', days: [1, 3, 5] },
      starts: [1320, 240],
      stations: [{ number: 1, runTime: { cycles: 2, cycleS: 360, soakS: 1800 } }],
      monthlyPercent: [0, 0, 0, 0.5, 0.75, 1, 1, 1, 0.75, 0.5, 0, 0]
    }
  ],
  delayS: 0,
  stepS: 60
}

describe('a station’s months', () => {
  const [row] = stationMonths(controller, 2026, { season: SEASON, flowM3s: () => 0.001 })

  it('have days by the rule, a month partly in season its share', () => {
    expect(row?.days.slice(0, 3)).toEqual([0, 0, 0])
    expect(row?.days[3]).toBeCloseTo((15 * 3) / 7, 12)
    expect(row?.days[6]).toBeCloseTo((31 * 3) / 7, 12)
    expect(row?.days[9]).toBeCloseTo((15 * 3) / 7, 12)
  })

  it('have the minutes of all cycles and starts of a watering day, each cycle in whole steps', () => {
    expect(row?.minutesPerDay[6]).toBe(24)
    expect(row?.minutesPerDay[3]).toBe(12)
    expect(row?.minutesPerDay[4]).toBe(20)
    expect(row?.minutesPerDay[0]).toBe(0)
  })

  it('have minutes = days × minutes a day, and the volume by the flow', () => {
    expect(row?.minutes[6]).toBeCloseTo((31 * 3 * 24) / 7, 9)
    expect(row?.volumeM3?.[6]).toBeCloseTo(((31 * 3 * 24) / 7) * 0.06, 9)
  })

  it('have no volume where no flow is known', () => {
    expect(stationMonths(controller, 2026, {})[0]).not.toHaveProperty('volumeM3')
    expect(stationMonths(controller, 2026, { flowM3s: () => undefined })[0]).not.toHaveProperty('volumeM3')
    expect(stationMonths(controller, 2026, { flowM3s: () => 0 })[0]?.volumeM3?.[6]).toBe(0)
  })

  it('follow a southern season across the year’s end', () => {
    const [south] = stationMonths(controller, 2026, { season: SOUTHERN })
    expect(south?.days.map(days => days > 0)).toEqual([1, 1, 1, 0, 0, 0, 0, 0, 0, 1, 1, 1].map(Boolean))
    expect(south?.days[2]).toBeCloseTo((15 * 3) / 7, 12)
  })

  it('follow a program’s own first and last day', () => {
    const programs = controller.programs.map(program => ({
      ...program,
      from: date('2026-06-16'),
      to: date('2026-07-07')
    }))
    const [dated] = stationMonths({ ...controller, programs }, 2026, {})
    expect(dated?.days[5]).toBeCloseTo((15 * 3) / 7, 12)
    expect(dated?.days[6]).toBe(3)
    expect(sum(dated?.days ?? [])).toBeCloseTo((15 * 3) / 7 + 3, 12)
  })

  it('are 100 % where no percent is written', () => {
    const programs = controller.programs.map(({ monthlyPercent: _, ...program }) => program)
    expect(stationMonths({ ...controller, programs }, 2026, {})[0]?.percent).toEqual(Array(12).fill(1))
  })

  it('are none without stations', () => {
    expect(stationMonths({ ...controller, programs: [] }, 2026, {})).toEqual([])
  })
})

it('by dates and every day, the months of all stations add up to the runs of the year', () => {
  fc.assert(
    fc.property(
      controllers,
      fc.constantFrom(2024, 2025),
      fc.constantFrom(undefined, SEASON, SOUTHERN),
      (each, year, season) => {
        const programs = each.programs.filter(({ days }) => days.kind !== 'weekdays' && days.kind !== 'every-n-days')
        const exact = { ...each, programs }
        const tabled = sum(stationMonths(exact, year, season ? { season } : {}).flatMap(({ minutes }) => minutes))
        const run = sum(expandYear(exact, year, season).map(({ durationS }) => durationS / 60))
        expect(tabled).toBeCloseTo(run, 4)
      }
    ),
    { numRuns: 60 }
  )
})

it('by the week, the months of a whole year differ from its runs by less than one watering day a year', () => {
  fc.assert(
    fc.property(
      fc.subarray([1, 2, 3, 4, 5, 6, 7], { minLength: 1 }),
      fc.integer({ min: 2023, max: 2028 }),
      (days, year) => {
        const stations = [{ number: 1, runTime: { cycles: 1, cycleS: 600, soakS: 0 } }]
        const each = {
          programs: [{ id: 'A', days: { kind: 'weekdays' as const, days }, starts: [0], stations }],
          delayS: 0,
          stepS: 60
        }
        const tabled = sum(stationMonths(each, year, {})[0]?.days ?? [])
        expect(Math.abs(tabled - expandYear(each, year).length)).toBeLessThan(2)
      }
    )
  )
})
