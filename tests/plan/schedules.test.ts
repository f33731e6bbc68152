import { describe, expect, it } from 'vitest'
import { isAbsent } from '../../src/base/absent.ts'
import { parseDayRule, parseRunTime } from '../../src/domain/schedule/text.ts'
import { runsOf } from '../../src/domain/schedule/year-runs.ts'
import type { SchedulePlan } from '../../src/plan/plan.ts'
import type { Controller, Program, ProductSheet, Site, Station, Valve } from '../../src/model/site.ts'
import { planSchedules, scheduledController } from '../../src/plan/schedules.ts'
import { stationFlowM3s } from '../../src/plan/station-flow.ts'
import { date, epochDay, parseMonthDay } from '../../src/units/date.ts'
import type { MonthDay } from '../../src/units/date.ts'
import { quantity } from '../../src/units/quantity.ts'

const runsIn = (schedule: SchedulePlan | undefined) => [...runsOf(schedule?.days ?? [])]
const at = { file: 'sites/plain/site.md', path: [] }
const ON = date('2026-05-01')
const lpm = (value: number) => quantity(value, 'L/min', 'flow')
const runTime = (text: string) => {
  const parsed = parseRunTime(text)
  if (!parsed.ok) throw new Error(text)
  return parsed.value
}

function program(
  id: string,
  days: string,
  starts: number[],
  stations: Record<number, string>,
  more: Partial<Program> = {}
): Program {
  const rule = parseDayRule(days)
  if (!rule) throw new Error(days)
  const entries = Object.entries(stations).map(([number, text]) => ({
    at,
    number: Number(number),
    runTime: runTime(text)
  }))
  return { at, id, days: rule, starts, stations: entries, ...more }
}

const controller = (more: Partial<Controller> = {}): Controller => ({
  at,
  id: 'K1',
  power: 'battery',
  programs: [program('A', 'every 2 days from 2026-04-02', [1390], { 1: '25 min', 2: '2 x 6 min soak 30 min' })],
  ...more
})
const station = (number: number, more: Partial<Station> = {}): Station => ({
  at,
  id: `K1/${number}`,
  controller: 'K1',
  number,
  zone: `Z${number}`,
  valves: [],
  wire: [],
  splices: [],
  readings: [],
  ...more
})
const site = (more: Partial<Site> = {}): Site => ({
  at,
  id: 'plain',
  title: 'Plain Lane',
  units: 'metric',
  paper: 'A4',
  status: 'in-service',
  place: 'park',
  contacts: [],
  season: { at, from: parseMonthDay('04-01') as MonthDay, to: parseMonthDay('10-15') as MonthDay },
  supplies: [],
  wateringRules: [],
  workRules: { at, road: false },
  boxes: [],
  controllers: [controller()],
  stations: [station(1, { valves: [{ at, normalFlow: lpm(12) }] }), station(2)],
  sensors: [],
  keys: [],
  warranties: [],
  visits: [],
  privateWords: [],
  prose: [],
  ...more
})
const sheet = (minutes: number): ProductSheet => ({
  at,
  path: '_shared/sheets/plain.md',
  title: 'Plain',
  lengthLimits: [],
  prose: '',
  runTimeStep: quantity(minutes, 'min', 'duration')
})

describe('the schedules of a site', () => {
  const planned = planSchedules(site(), ON)
  const k1 = planned.schedules.get('K1')
  const runs = runsIn(k1)

  it('are the runs of the calendar year of the day, in season', () => {
    expect(k1).toMatchObject({ controller: 'K1', year: 2026 })
    expect(runs[0]).toMatchObject({
      day: epochDay(date('2026-04-02')),
      station: 1,
      startS: 83_400,
      durationS: 1500
    })
    expect(runs.at(-1)).toMatchObject({
      day: epochDay(date('2026-10-15')),
      station: 2,
      cycle: 2,
      startS: 83_400 + 1500 + 360 + 1800
    })
    expect(runs).toHaveLength(99 * 3)
  })

  it('have a row for each station of each program, with a volume where a flow is stated', () => {
    expect(k1?.months.map(({ station: number, program: id }) => `${number}${id}`)).toEqual(['1A', '2A'])
    expect(k1?.months[0]?.days[6]).toBe(15.5)
    expect(k1?.months[0]?.volumeM3?.[6]).toBeCloseTo(15.5 * 25 * 0.012, 9)
    expect(k1?.months[1]).not.toHaveProperty('volumeM3')
  })

  it('show how they were made for the month with most watering', () => {
    const lines = planned.workings.map(({ calculation, subject }) => `${calculation} ${subject}`)
    expect(lines).toEqual([
      'watering-days K1 program A, May',
      'run-sequence K1 program A, May',
      'monthly-minutes K1/1 program A, May',
      'monthly-minutes K1/2 program A, May'
    ])
    expect(planned.workings[1]?.steps).toEqual([
      'Station 1: 25\u00a0min, 23:10 to 23:35.',
      'Station 2, cycle 1 of 2: 6\u00a0min, 23:35 to 23:41.',
      'Station 2, cycle 2 of 2: 6\u00a0min, 00:11 next day to 00:17 next day.',
      'Last valve shuts at 00:17 next day; 37\u00a0min of open valve.'
    ])
    expect(planned.workings[2]?.steps).toEqual([
      'Cycle as written: 25\u00a0min.',
      'On a watering day: 25\u00a0min × 1 (cycles) × 1 (starts) = 25\u00a0min.',
      'In the month: 25\u00a0min × 15.5 days = 387.5\u00a0min.',
      'Water: 387.5\u00a0min × 12\u00a0L/min = 4.7\u00a0m³.'
    ])
  })

  it('show the month of the day where nothing runs in any month', () => {
    const dry = controller({ programs: [program('A', 'every day', [360], { 1: '0 min' })] })
    expect(planSchedules(site({ controllers: [dry] }), ON).workings.map(({ subject }) => subject)).toContain(
      'K1 program A, May'
    )
  })

  it('tell times as the units of the site have them', () => {
    const us = planSchedules(site({ units: 'us' }), ON)
    expect(us.workings[1]?.steps[0]).toBe('Station 1: 25\u00a0min, 11:10\u00a0pm to 11:35\u00a0pm.')
  })

  it('cross the year’s end in a southern season', () => {
    const season = { at, from: parseMonthDay('10-01') as MonthDay, to: parseMonthDay('03-31') as MonthDay }
    const daily = controller({ programs: [program('A', 'every day', [360], { 1: '10 min' })] })
    const runs = runsIn(planSchedules(site({ season, controllers: [daily] }), ON).schedules.get('K1'))
    expect(runs).toHaveLength(90 + 92)
  })

  it('go all year without a season', () => {
    const daily = controller({ programs: [program('A', 'every day', [360], { 1: '10 min' })] })
    const { season: _, ...withoutSeason } = site({ controllers: [daily] })
    expect(runsIn(planSchedules(withoutSeason, date('2024-02-29')).schedules.get('K1'))).toHaveLength(366)
  })
})

describe('out of service', () => {
  const empty = { days: [], months: [] }

  it('a controller has a schedule without runs, and its neighbour keeps its own', () => {
    const controllers = [controller({ outOfService: 'street works' }), controller({ id: 'K2' })]
    const { schedules } = planSchedules(site({ controllers }), ON)
    expect(schedules.get('K1')).toMatchObject(empty)
    expect(runsIn(schedules.get('K2')).length).toBeGreaterThan(0)
  })

  it('a station is left out and the ones after it move up', () => {
    const stations = [station(1, { outOfService: 'cut off' }), station(2)]
    const runs = runsIn(planSchedules(site({ stations }), ON).schedules.get('K1'))
    expect(runs[0]).toMatchObject({ station: 2, startS: 83_400 })
  })

  it('a site has no runs, and a planned one has', () => {
    expect(planSchedules(site({ status: 'removed' }), ON).schedules.get('K1')).toMatchObject(empty)
    expect(planSchedules(site({ status: 'out-of-service' }), ON).schedules.get('K1')).toMatchObject(empty)
    expect(runsIn(planSchedules(site({ status: 'planned' }), ON).schedules.get('K1')).length).toBeGreaterThan(0)
  })
})

describe('what a controller’s record leaves open', () => {
  it('is a step of 1 min and no delay', () => {
    expect(scheduledController(site(), controller())).toMatchObject({ stepS: 60, delayS: 0 })
  })

  it('is taken from the record where it is stated', () => {
    const stated = controller({ sheet: sheet(5), delayBetweenStations: quantity(5, 's', 'duration') })
    expect(scheduledController(site(), stated)).toMatchObject({ stepS: 300, delayS: 5 })
  })

  it('is a step of 1 min where the sheet states none at all', () => {
    expect(scheduledController(site(), controller({ sheet: sheet(0) })).stepS).toBe(60)
  })
})

describe('the flow of a station', () => {
  const valve = (flow?: number): Valve => (flow === undefined ? { at } : { at, normalFlow: lpm(flow) })
  const flow = (more: Partial<Station>) => {
    const value = stationFlowM3s(station(1, more))
    return isAbsent(value) ? value.reason : value * 60_000
  }

  it('is the normal flow of its valves together', () => {
    expect(flow({ valves: [valve(12), valve(8)], devices: { at, kind: 'drip', flow: lpm(99) } })).toBeCloseTo(20, 9)
  })

  it('is that of the devices where a valve states none', () => {
    expect(flow({ valves: [valve(12), valve()], devices: { at, kind: 'drip', flow: lpm(38) } })).toBeCloseTo(38, 9)
    expect(flow({ valves: [], devices: { at, kind: 'drip', flow: lpm(38) } })).toBeCloseTo(38, 9)
  })

  it('is one device times their number where neither is stated', () => {
    const each = quantity(2, 'L/h', 'flow')
    expect(flow({ valves: [valve()], devices: { at, kind: 'drip', each, count: 22 } })).toBeCloseTo(44 / 60, 9)
  })

  it('is absent with a reason where nothing is stated', () => {
    expect(flow({ devices: { at, kind: 'drip', each: quantity(2, 'L/h', 'flow') } })).toBe('no flow is stated')
    expect(flow({})).toBe('no flow is stated')
  })
})
