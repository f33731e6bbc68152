import { describe, expect, it } from 'vitest'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { date } from '../../src/units/date.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'

function planned(keys = 'revision: "2"\n', on = BASE_ON) {
  const { site } = loadSite(baseSite(keys))
  if (!site) throw new Error('the site is not understood')
  return makePlan(site, date(on))
}

const water = (id: string, keys?: string, on?: string) => {
  const plan = planned(keys, on).water.get(id)
  if (!plan) throw new Error(`nothing is planned for ${id}`)
  return plan
}

const drip = (facts: string) => `stations:\n  - { id: K1/1, zone: Z1, ${facts} }\n`
const PROGRAM = (facts: string) =>
  `controllers: [{ id: K1, box: VB1, supply: S1, programs: [{ id: A, starts: ["23:10"], ${facts} }] }]\n`

describe('on the ground', () => {
  it('the flow over the area is the rate, and the longest watering puts its depth on', () => {
    const plan = water('K1/1')
    expect((plan.rateMPerS as number) * 3_600_000).toBeCloseTo(6, 9)
    expect(plan.longestSet?.watering).toEqual({ program: 'A', month: 4, seconds: 1500, cycles: 1 })
    expect((plan.appliedM as number) * 1000).toBeCloseTo(2.5, 9)
  })

  it('cycles of one start count together as a watering, and one by one as cycles', () => {
    const { longestSet } = water('K1/2')
    expect(longestSet).toMatchObject({ cycle: { seconds: 480, cycles: 2 }, watering: { seconds: 960, cycles: 2 } })
  })

  it('drip is not judged by intake, a spray is, by the table where nothing is stated', () => {
    expect(water('K1/1').intake).toEqual({ absent: true, reason: 'it is not a spray, a rotor or the like' })
    // Loam takes in 0.35 in/h and holds 0.30 in on flat ground.
    const intake = water('K1/2').intake as { intakeMPerS: number; surfaceM: number; by: string; longestS: number }
    expect(intake.by).toBe('texture')
    expect(intake.intakeMPerS * 3_600_000).toBeCloseTo(8.89, 9)
    expect(intake.longestS / 60).toBeCloseTo((60 * 7.62) / (11.2 - 8.89), 6)
  })

  it('what may be used is half of what a texture holds at its low end, unless another share is stated', () => {
    // Loam: 1.5 to 2.3 in in a foot, over 400 mm.
    expect(water('K1/1').reservoir).toMatchObject({ by: 'texture' })
    const { holdsM, atMostM } = water('K1/1').reservoir as { holdsM: number; atMostM: number }
    expect(holdsM * 1000).toBeCloseTo(400 * 0.125 * 0.5, 9)
    expect(atMostM * 1000).toBeCloseTo((400 * 2.3) / 12 / 2, 9)
    const stated = drip('devices: { kind: drip }, soil: { available-water: 30 mm, allowable-depletion: 40 % }')
    const record = water('K1/1', stated).reservoir as { holdsM: number; atMostM: number; by: string }
    expect(record.by).toBe('record')
    expect(record.holdsM * 1000).toBeCloseTo(12, 9)
    expect(record.atMostM).toBe(record.holdsM)
  })

  it('what is not stated is absent, with the reason', () => {
    const none = water('K1/1', drip('devices: { kind: spray }'))
    expect(none.rateMPerS).toEqual({ absent: true, reason: 'no flow is stated' })
    expect(water('K1/1', drip('devices: { kind: spray, flow: 12 L/min }')).rateMPerS).toEqual({
      absent: true,
      reason: 'no area is stated'
    })
    expect(none.intake).toEqual({ absent: true, reason: 'soil texture or slope is not stated' })
    expect(none.months[6]?.needS).toEqual({ absent: true, reason: 'no plant factor is stated' })
  })

  it('a station that never waters has no longest run and applies nothing', () => {
    const plan = water('K1/1', 'status: out-of-service\n')
    expect(plan.longestSet).toBeUndefined()
    expect(plan.appliedM).toEqual({ absent: true, reason: 'it does not water' })
  })
})

describe('by the month', () => {
  it('the need is reference ET times the factor, and a watering is its share, up to the step', () => {
    // 112 mm × 0.5 = 56 mm; at 6 mm/h 560 min; 31 days / 2 = 15.5 waterings: 36.1 min, so 37.
    const july = water('K1/1').months[6]
    expect((july?.needM as number) * 1000).toBeCloseTo(56, 9)
    expect(july).toMatchObject({ events: 15.5, setS: 1500, needS: 37 * 60 })
  })

  it('the efficiency divides the need', () => {
    const site = drip(
      'devices: { kind: drip, flow: 12 L/min }, area: 120 m², plants: { factor: 0.5 }, efficiency: 80 %'
    )
    // 560 / 0.8 / 15.5 = 45.2
    expect(water('K1/1', site).months[6]?.needS).toBe(46 * 60)
  })

  it('a month with five Wednesdays counts as its days do', () => {
    const months = water('K1/1', PROGRAM('days: Wed, stations: { 1: 25 min }'), '2026-07-01').months
    expect(months[6]?.events).toBeCloseTo(31 / 7, 9)
    expect(months[7]?.events).toBeCloseTo(31 / 7, 9)
  })

  it('a month that is in season in part needs that part of the month, spread over its own waterings', () => {
    const month = water('K1/1', 'season: { from: 07-16, to: 07-31 }\n').months[6]
    expect((month?.needM as number) * 1000).toBeCloseTo((56 * 16) / 31, 9)
    expect(month).toMatchObject({ events: 8, needS: 37 * 60 })
  })

  it('a month without a run has no need and no watering', () => {
    const reason = { absent: true, reason: 'it does not water in this month' }
    expect(water('K1/1').months[0]).toEqual({ needM: reason, events: 0, setS: 0, needS: reason })
  })

  it('rain that is counted but not stated leaves the need unknown, with the reason', () => {
    const climate = (rain: string) => `climate: { reference-et: { Jul: 112 mm }, effective-rain: ${rain} }\n`
    expect(water('K1/1', climate('fao-manual-3')).months[6]?.needM).toEqual({
      absent: true,
      reason: 'the rain of the month is not stated'
    })
    expect(water('K1/1', climate('by eye')).months[6]?.needM).toMatchObject({ absent: true })
    expect(water('K1/1', 'climate: { reference-et: { Jul: 112 mm } }\n').months[6]?.needS).toBe(37 * 60)
  })

  it('programs that water one station share its need over all their waterings', () => {
    const both = `controllers:
  - id: K1
    box: VB1
    programs:
      - { id: A, days: Mon, starts: ["23:10"], stations: { 1: 20 min } }
      - { id: B, days: Thu, starts: ["23:10"], stations: { 1: 40 min } }
`
    // 560 min over 2 × 31 / 7 = 8.86 waterings: 63.2.
    const july = water('K1/1', both).months[6]
    expect(july?.events).toBeCloseTo(62 / 7, 9)
    expect(july?.setS).toBeCloseTo(30 * 60, 6)
    expect(july?.needS).toBe(64 * 60)
    expect(water('K1/1', both).longestSet?.watering).toMatchObject({ program: 'B', seconds: 2400 })
  })
})

describe('against the hours', () => {
  const july = (keys: string) => planned(keys).nights.find(one => one.month === 7)

  it('the fullest night of a month is held against the hours allowed', () => {
    const night = july('revision: "2"\n')
    expect(night).toMatchObject({ of: 'controller', id: 'K1', needS: 69 * 60, allowedS: 480 * 60, notKnown: [] })
    expect(night?.stations).toEqual(['K1/1', 'K1/2'])
  })

  it('a supply that lets one zone run stands for its controllers', () => {
    const nights = planned('supplies: [{ id: S1, kind: potable, zones-at-once: 1 }]\n').nights
    expect([...new Set(nights.map(one => `${one.of} ${one.id}`))]).toEqual(['supply S1'])
  })

  it('without hours in a rule there is nothing to hold against', () => {
    expect(planned('watering-rules: [{ authority: owner, days: even dates }]\n').nights).toEqual([])
  })

  it('a run after midnight belongs to the night and the month before', () => {
    const season = 'season: { from: 07-01, to: 07-31 }\n'
    const early = planned(`${season}${PROGRAM('days: every day, stations: { 1: 25 min }').replace('23:10', '03:00')}`)
    // 1 July 03:00 is the night of 30 June, in which the station has no need of its own.
    expect(early.nights.map(({ month, nights }) => [month, nights])).toEqual([
      [6, 1],
      [7, 30]
    ])
    expect(early.nights[0]).toMatchObject({ needS: 0, notKnown: ['K1/1'] })
  })

  it('a clock that does not follow daylight saving waters later by the legal one', () => {
    const clock = `watering-rules: [{ authority: owner, window: 23:00-22:00 }]
controllers:
  - id: K1
    box: VB1
    clock: { daylight-saving: not followed }
    programs: [{ id: A, days: Wed, from: 2026-07-01, to: 2026-07-01, starts: ["22:30"], stations: { 1: 10 min } }]
`
    expect(planned(clock).nights).toMatchObject([{ month: 7, nights: 1 }])
    // By the controller's own clock 22:30 would be the end of the night of 30 June.
    expect(planned(clock.replace('not followed', 'by itself')).nights).toMatchObject([{ month: 6, nights: 1 }])
  })
})

describe('the workings', () => {
  it('name the cards of the main figures, and the month of the run time', () => {
    const own = planned().workings.filter(one => one.subject.startsWith('K1/2'))
    const names = own.map(one => `${one.calculation} ${one.subject}`)
    expect(names).toContain('application-rate K1/2')
    expect(names).toContain('cycle-soak K1/2')
    expect(names).toContain('soil-reservoir K1/2')
    expect(names).toContain('run-time K1/2, Jul')
    expect(own.find(one => one.calculation === 'run-time')?.steps).toHaveLength(5)
  })

  it('agree with what is planned', () => {
    const steps = planned().workings.find(one => one.calculation === 'run-time' && one.subject === 'K1/1, Jul')?.steps
    expect(steps?.join(' ')).toContain('1 × 37\u00a0min')
  })
})
