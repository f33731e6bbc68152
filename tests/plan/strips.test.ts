import { describe, expect, it } from 'vitest'
import { sum } from '../../src/base/collections.ts'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { date, epochDay, weekdayOf } from '../../src/units/date.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'

function planned(keys = 'revision: "2"\n') {
  const { site } = loadSite(baseSite(keys))
  if (!site) throw new Error('the site is not understood')
  return makePlan(site, date(BASE_ON))
}

describe('the watering day and week', () => {
  it('one controller has its own, from noon to noon, so that a night is whole', () => {
    const [strip, ...others] = planned().strips
    expect(others).toEqual([])
    expect([strip?.of, strip?.id]).toEqual(['controller', 'K1'])
    expect(strip?.day.runs[0]?.fromMinute).toBe(23 * 60 + 10)
    expect(strip?.day.runs.some(run => run.fromMinute >= 1440)).toBe(true)
    expect(strip?.day.runs.every(run => run.fromMinute >= 720 && run.toMinute <= 2160)).toBe(true)
  })

  it('the hours allowed are one stretch across midnight, and the week begins on a Monday with the day in it', () => {
    const [strip] = planned().strips
    expect(strip?.day.allowed).toEqual([{ fromMinute: 1320, toMinute: 1800 }])
    expect(strip?.week.map(one => weekdayOf(epochDay(one.on)))).toEqual([1, 2, 3, 4, 5, 6, 7])
    expect(strip?.week.map(one => one.on)).toContain(strip?.day.on)
  })

  it('the load is the flow of the valve that is open, over all the time that one is', () => {
    const [strip] = planned().strips
    const open = sum(strip?.day.runs.map(run => run.toMinute - run.fromMinute) ?? [])
    expect(sum(strip?.day.load.map(one => one.toMinute - one.fromMinute) ?? [])).toBeCloseTo(open, 6)
    expect([...new Set(strip?.day.load.map(one => Math.round(one.flowM3s * 60_000)))]).toEqual([12, 28])
    expect((strip?.limitM3s ?? 0) * 60_000).toBeCloseTo(60, 9)
  })

  it('controllers on one supply share one, and flows that run together add up', () => {
    const program = '{ id: A, days: every day, starts: ["23:00"], stations: { 1: 20 min } }'
    const strips = planned(`controllers:
  - { id: K1, box: VB1, supply: S1, programs: [${program}] }
  - { id: K2, box: VB2, supply: S1, programs: [${program}] }
stations:
  - { id: K1/1, zone: Z1, devices: { kind: drip, flow: 12 L/min } }
  - { id: K2/1, zone: Z2, devices: { kind: drip, flow: 20 L/min } }
`).strips
    expect(strips.map(one => [one.of, one.id, one.controllers.join()])).toEqual([['supply', 'S1', 'K1,K2']])
    expect(strips[0]?.day.load).toHaveLength(1)
    expect((strips[0]?.day.load[0]?.flowM3s ?? 0) * 60_000).toBeCloseTo(32, 9)
  })

  it('a night that is the same all year is told with a date of the year', () => {
    const keys =
      'season:\ncontrollers: [{ id: K1, box: VB1, supply: S1, programs: [{ id: A, days: every day, starts: ["03:30"], stations: { 1: 20 min } }] }]\n'
    expect(planned(keys).strips[0]?.day.on).toBe('2026-01-01')
  })

  it('a site that never waters has none, and a station without a flow is named', () => {
    expect(planned('status: out-of-service\n').strips).toEqual([])
    const bare = planned('stations:\n  - { id: K1/1, zone: Z1 }\n').strips[0]
    expect(bare?.day.load).toEqual([])
    expect(bare?.flowNotStated).toContain('K1/1')
  })

  it('how long a program takes is in the plan, delays and waits for a soak among it', () => {
    // 25 min, 5 s, 8 min, 30 min of soak, 8 min.
    expect(planned().passes.get('K1')).toEqual([{ program: 'A', lengthMinutes: 25 + 5 / 60 + 8 + 30 + 8 }])
  })
})
