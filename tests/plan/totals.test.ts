import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAbsent } from '../../src/base/absent.ts'
import { sum } from '../../src/base/collections.ts'
import { runsOf } from '../../src/domain/schedule/year-runs.ts'
import type { Controller, Program, Sensor, Site, Station, Supply } from '../../src/model/site.ts'
import { planNextRuns } from '../../src/plan/next-runs.ts'
import { planSchedules } from '../../src/plan/schedules.ts'
import { planSensorMarks } from '../../src/plan/sensor-marks.ts'
import { planTotals } from '../../src/plan/totals.ts'
import type { TotalRow } from '../../src/plan/totals-plan.ts'
import { date } from '../../src/units/date.ts'
import { bareController, bareSite, bareStation } from '../support/bare-site.ts'
import { controllers as anyController } from '../domain/schedule/arbitrary.ts'
import { stated } from './facts.ts'

const AT = { file: 'sites/bare/site.md', path: [] }
const ON = date('2026-05-01')
const runTime = (minutes: number) => ({ cycles: 1, cycleS: minutes * 60, soakS: 0 })
const program = (id: string, minutes: Record<number, number>, more: Partial<Program> = {}): Program => ({
  at: AT,
  id,
  days: { kind: 'every-day' },
  starts: [60],
  stations: Object.entries(minutes).map(([number, each]) => ({
    at: AT,
    number: Number(number),
    runTime: runTime(each)
  })),
  ...more
})
const station = (controller: string, number: number, more: Partial<Station> = {}): Station => ({
  ...bareStation(),
  id: `${controller}/${number}`,
  controller,
  number,
  ...more
})
const supply = (id: string): Supply => ({ at: AT, id, kind: 'potable' })
const flow = { devices: { at: AT, kind: 'spray', flow: stated('12 L/min', 'flow') }, area: stated('60 m²', 'area') }

function site(controllers: readonly Controller[], more: Partial<Site> = {}): Site {
  return bareSite({ controllers, supplies: [supply('S1')], ...more })
}
const totals = (of: Site) => planTotals(of, planSchedules(of, ON).schedules)
const row = (rows: readonly TotalRow[], of: TotalRow['of'], id: string) =>
  rows.find(one => one.of === of && one.id === id)

const two = site(
  [
    bareController({
      id: 'K1',
      supply: 'S1',
      programs: [program('A', { 1: 10, 2: 5 }), program('B', { 1: 20 }, { starts: [300] })]
    }),
    bareController({ id: 'K2', supply: 'S2', programs: [program('A', { 1: 30 })] })
  ],
  {
    supplies: [supply('S1'), supply('S2')],
    stations: [station('K1', 1, flow), station('K1', 2, flow), station('K2', 1)]
  }
)

describe('totals of a year', () => {
  const rows = totals(two).totals

  it('are there by station, program, controller, supply and site', () => {
    expect(rows.map(one => `${one.of} ${one.id}`)).toEqual([
      'station K1/1',
      'station K1/2',
      'station K2/1',
      'program K1 A',
      'program K1 B',
      'program K2 A',
      'controller K1',
      'controller K2',
      'supply S1',
      'supply S2',
      `site ${two.id}`
    ])
  })

  it('give minutes, openings, water and depth', () => {
    expect(row(rows, 'station', 'K1/1')).toMatchObject({
      minutesInYear: 365 * 30,
      openings: 730,
      volumeInYearM3: expect.closeTo(365 * 0.36, 9) as number,
      depthM: expect.closeTo((365 * 0.36) / 60, 9) as number,
      flowNotStated: []
    })
  })

  it('count the area of a station once, though two programs water it', () => {
    expect(row(rows, 'controller', 'K1')?.depthM).toBeCloseTo((365 * (0.36 + 0.06)) / 120, 9)
  })

  it('name the stations whose water is not in the sum, and give no depth with them', () => {
    const all = row(rows, 'site', two.id)
    expect(all?.flowNotStated).toEqual(['K2/1'])
    expect(all?.volumeInYearM3).toBeCloseTo(365 * 0.42, 9)
    expect(all && isAbsent(all.depthM)).toBe(true)
    expect(row(rows, 'supply', 'S2')?.volumeInYearM3).toEqual({ absent: true, reason: 'no flow is stated' })
  })

  it('are the sum of their parts, whatever the programs', () => {
    fc.assert(
      fc.property(fc.array(anyController, { minLength: 1, maxLength: 3 }), drawn => {
        const controllers = drawn.map(({ programs }, index) =>
          bareController({
            id: `K${index}`,
            programs: programs.map(({ suspensions: _, ...one }) => ({
              at: AT,
              ...one,
              stations: one.stations.map(entry => ({ at: AT, ...entry }))
            }))
          })
        )
        const stations = controllers.flatMap(one =>
          Array.from({ length: 8 }, (_, index) => station(one.id, index + 1, flow))
        )
        const all = totals(site(controllers, { stations })).totals
        const whole = all.find(one => one.of === 'site')
        if (!whole) return
        for (const of of ['station', 'program', 'controller', 'supply'] as const) {
          const parts = all.filter(one => one.of === of)
          expect(sum(parts.map(one => one.minutesInYear))).toBeCloseTo(whole.minutesInYear, 4)
          expect(sum(parts.map(one => one.openings))).toBe(whole.openings)
          for (const month of [0, 6, 11])
            expect(sum(parts.map(one => one.minutes[month] ?? 0))).toBeCloseTo(whole.minutes[month] ?? 0, 4)
          const volumes = parts.map(one => (isAbsent(one.volumeInYearM3) ? 0 : one.volumeInYearM3))
          expect(sum(volumes)).toBeCloseTo(isAbsent(whole.volumeInYearM3) ? 0 : whole.volumeInYearM3, 4)
        }
      }),
      { numRuns: 40 }
    )
  })

  it('count the openings that the year holds', () => {
    const { schedules } = planSchedules(two, ON)
    const openings = [...schedules.values()].map(one => [...runsOf(one.days)].length)
    expect(row(rows, 'site', two.id)?.openings).toBe(sum(openings))
  })
})

describe('suspended days', () => {
  const held = (more: Partial<Controller>, own: Partial<Program> = {}) =>
    site([bareController({ id: 'K1', programs: [program('A', { 1: 10 }, own)], ...more })], {
      stations: [station('K1', 1, flow)]
    })
  const june = { at: AT, from: date('2026-06-10'), to: date('2026-06-19') }

  it('of a controller or of a program take their days out of the year', () => {
    expect(row(totals(held({ suspensions: [june] })).totals, 'site', 'bare')?.openings).toBe(355)
    expect(row(totals(held({}, { suspensions: [june] })).totals, 'site', 'bare')?.openings).toBe(355)
  })

  it('that overlap count once', () => {
    const both = held({ suspensions: [june] }, { suspensions: [{ ...june, to: date('2026-06-21') }] })
    expect(row(totals(both).totals, 'station', 'K1/1')?.minutes[5]).toBe(10 * 18)
  })

  it('put off the next run', () => {
    const now = held({ suspensions: [{ at: AT, from: ON, to: date('2026-05-03') }] })
    expect(planNextRuns(now, ON).get('K1/1')?.[0]?.on).toBe('2026-05-04')
  })
})

describe('the next runs of a station', () => {
  const next = (days: Program['days'], on: string, more: Partial<Program> = {}, season?: Site['season']) => {
    const one = site([bareController({ id: 'K1', programs: [program('A', { 1: 20, 2: 20 }, { days, ...more })] })], {
      stations: [station('K1', 1), station('K1', 2)],
      ...(season ? { season } : {})
    })
    return planNextRuns(one, date(on))
  }
  const runs = (of: ReturnType<typeof next>, id = 'K1/1') => of.get(id)?.map(one => `${one.on} ${one.minute}`)

  it('are three, across the end of the year', () => {
    expect(runs(next({ kind: 'odd-dates', withTurnover: false }, '2026-12-30'))).toEqual([
      '2027-01-01 60',
      '2027-01-03 60',
      '2027-01-05 60'
    ])
  })

  it('hold what a start of the evening before opens after midnight', () => {
    const late = next({ kind: 'weekdays', days: [5] }, '2026-05-02', { starts: [1430] })
    expect(runs(late, 'K1/2')?.[0]).toBe('2026-05-02 10')
    expect(runs(late)?.[0]).toBe('2026-05-08 1430')
  })

  it('wait for a season that has not begun', () => {
    const season = { at: AT, from: '04-01', to: '04-02' } as unknown as NonNullable<Site['season']>
    expect(runs(next({ kind: 'every-day' }, '2026-05-01', {}, season))).toEqual(['2027-04-01 60', '2027-04-02 60'])
  })

  it('are none for a program that is over', () => {
    expect(runs(next({ kind: 'every-day' }, '2026-05-01', { to: date('2026-04-30') }))).toBeUndefined()
  })
})

describe('a sensor', () => {
  const sensor = (facts: Partial<Sensor>): Sensor => ({ at: AT, id: 'RS1', kind: 'rain', wire: [], ...facts })
  const mark = (facts: Partial<Sensor>) => planSensorMarks({ ...two, sensors: [sensor(facts)] }, totals(two).totals)[0]

  it('that stops all could keep every station of its controller from running', () => {
    expect(mark({ controller: 'K1', acts: 'stops all' })).toMatchObject({
      stops: true,
      byItsKind: false,
      stations: ['K1/1', 'K1/2'],
      openings: 3 * 365,
      minutes: 365 * 35
    })
  })

  it('that stops its stations could keep those alone', () => {
    expect(mark({ controller: 'K1', stations: ['K1/2'], acts: 'stops its stations' })).toMatchObject({
      stations: ['K1/2'],
      openings: 365
    })
  })

  it('that only reports stops nothing, whatever its kind', () => {
    expect(mark({ controller: 'K1', acts: 'only reports' })).toMatchObject({ stops: false, openings: 0, minutes: 0 })
  })

  it('of which nobody says what it does acts as its kind does', () => {
    expect(mark({ controller: 'K1' })).toMatchObject({ stops: true, byItsKind: true })
    expect(mark({ controller: 'K1', kind: 'flow' })).toMatchObject({ stops: false, byItsKind: true })
  })

  it('that is wired to nothing stops nothing', () => {
    expect(mark({})).toMatchObject({ stops: false, stations: [] })
  })
})
