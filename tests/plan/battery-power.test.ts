import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAbsent, isPresent } from '../../src/base/absent.ts'
import type { Battery, Climate, Controller, Site } from '../../src/model/site.ts'
import type { MaintenanceTask } from '../../src/model/maintenance.ts'
import { planBatteries } from '../../src/plan/batteries.ts'
import type { BatteryPlan } from '../../src/plan/plan.ts'
import { planSchedules } from '../../src/plan/schedules.ts'
import { MONTHS, addDays, date, parseInterval, parseMonthDay } from '../../src/units/date.ts'
import type { IsoDate } from '../../src/units/date.ts'
import { quantity } from '../../src/units/quantity.ts'
import { bareSite } from '../support/bare-site.ts'
import { controller, cyclesOf, program, sheet, stated } from './facts.ts'

const AT = { file: 'sites/bare/site.md', path: [] }
const ON = date('2026-05-01')

const battery = (facts: Partial<Battery>): Battery => ({ at: AT, kind: '9 V alkaline', count: 1, ...facts })

/** Constant temperature, high and low around it. */
const climate = (meanC: number): Climate => ({
  at: AT,
  meanHigh: Object.fromEntries(MONTHS.map(month => [month, quantity(meanC + 5, '°C', 'temperature')])),
  meanLow: Object.fromEntries(MONTHS.map(month => [month, quantity(meanC - 5, '°C', 'temperature')]))
})

function planned(unit: Partial<Controller>, site: Partial<Site> = {}, on = ON): BatteryPlan {
  const whole = bareSite({ controllers: [controller(unit)], ...site })
  const plan = planBatteries(whole, on, planSchedules(whole, on).schedules).batteries.get('K1')
  if (!plan) throw new Error('no plan for the controller')
  return plan
}

const drawn = (facts: Parameters<typeof sheet>[0] = {}) =>
  sheet({
    drain: stated('20 µA', 'current'),
    pulse: {
      capacitor: stated('4700 µF', 'capacitance'),
      volts: stated('12 V', 'voltage'),
      efficiency: stated('70 %', 'ratio')
    },
    battery: {
      capacity: stated('565 mAh', 'charge'),
      usable: stated('70 %', 'ratio'),
      selfDischarge: stated('3 %', 'ratio')
    },
    ...facts
  })

const fourValves = program({ starts: [60, 360, 720], stations: cyclesOf(4) })

const dueOf = (plan: BatteryPlan): IsoDate => {
  if (isAbsent(plan.dueOn)) throw new Error(plan.dueOn.reason)
  return plan.dueOn
}

describe('life by charge', () => {
  const unit = {
    sheet: drawn(),
    programs: [fourValves],
    battery: battery({ fitted: date('2026-01-01'), interval: parseInterval('10 years')! })
  }

  it('B6: the 9 V case worked on paper, 24 pulses a day all year, lasts 447 days, within one for whole months', () => {
    const plan = planned(unit)
    expect(plan.pulsesByMonth?.[0]).toBe(24 * 31)
    expect(plan.charge?.pulsesInYear).toBe(24 * 365)
    expect(Math.abs((plan.charge?.days ?? 0) - 447)).toBeLessThanOrEqual(1)
    expect(plan.because).toMatch(/^computed life of 44[678] days after 2026-01-01/u)
  })

  it('is none where the sheet states neither drain nor pulse, nor beside a panel or an adapter: the interval stands alone', () => {
    const bare = sheet({ battery: { capacity: stated('5 mAh', 'charge') } })
    expect(planned({ ...unit, sheet: bare })).not.toHaveProperty('charge')
    expect(planned({ ...unit, power: 'solar' })).not.toHaveProperty('charge')
    expect(planned({ ...unit, power: 'adapter' })).not.toHaveProperty('charge')
  })

  it('takes the typical capacity of the kind where the sheet states none, and no life for a kind not known', () => {
    expect(planned({ ...unit, sheet: drawn({ battery: {} }) }).charge).toMatchObject({
      capacityMah: 565,
      capacityBy: 'table',
      usable: 0.7,
      yearlyLoss: 0.03
    })
    const odd = battery({ kind: 'button cell', fitted: date('2026-01-01') })
    expect(planned({ ...unit, sheet: drawn({ battery: {} }), battery: odd })).not.toHaveProperty('charge')
  })

  it('says which of the two it could not count', () => {
    const { charge } = planned({ ...unit, sheet: sheet({ drain: stated('20 µA', 'current') }) })
    expect(charge && isAbsent(charge.pulseMah) && charge.pulseMah.reason).toMatch(/does not say what a pulse takes/u)
    expect(charge?.inYearMah.pulses).toBe(0)
    expect(charge && isAbsent(charge.temperature)).toBe(true)
  })

  it('the earliest of interval, stated pulses, charge and date code is the due date', () => {
    const short = drawn({ battery: { capacity: stated('565 mAh', 'charge'), pulses: 2400 } })
    expect(planned({ ...unit, sheet: short })).toMatchObject({ dueOn: '2026-04-11' })
    const code = battery({
      fitted: date('2026-01-01'),
      dateCode: date('2026-03-31'),
      interval: parseInterval('10 years')!
    })
    expect(planned({ ...unit, sheet: short, battery: code })).toMatchObject({
      dueOn: '2026-03-31',
      dateCode: '2026-03-31'
    })
  })

  it('more pulses never lengthen life', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }), (one, other) => {
        const due = (valves: number) =>
          dueOf(planned({ ...unit, programs: [program({ starts: [60, 720], stations: cyclesOf(valves) })] }))
        expect(due(Math.max(one, other)) <= due(Math.min(one, other))).toBe(true)
      }),
      { numRuns: 20 }
    )
  })

  it('a master valve and a pump relay each add a pair to every start, and never lengthen life', () => {
    const plain = planned(unit)
    const pump = planned({ ...unit, pumpStart: true })
    expect((pump.pulsesByMonth?.[0] ?? 0) - (plain.pulsesByMonth?.[0] ?? 0)).toBe(2 * 3 * 31)
    expect(dueOf(pump) < dueOf(plain)).toBe(true)
  })

  it('colder never lengthens life below 25 °C, and hotter never above it', () => {
    const due = (meanC: number) => dueOf(planned(unit, { climate: climate(meanC) }))
    fc.assert(
      fc.property(fc.integer({ min: -30, max: 25 }), fc.integer({ min: -30, max: 25 }), (one, other) => {
        expect(due(Math.min(one, other)) <= due(Math.max(one, other))).toBe(true)
      }),
      { numRuns: 30 }
    )
    fc.assert(
      fc.property(fc.integer({ min: 25, max: 60 }), fc.integer({ min: 25, max: 60 }), (one, other) => {
        expect(due(Math.max(one, other)) <= due(Math.min(one, other))).toBe(true)
      }),
      { numRuns: 30 }
    )
  })

  it('a later fitted date never gives an earlier due date, across month ends and 29 February', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 800 }), fc.integer({ min: 0, max: 60 }), (start, later) => {
        const due = (days: number) => {
          const fitted = addDays(date('2023-12-15'), days)
          return dueOf(planned({ ...unit, battery: battery({ fitted, interval: parseInterval('13 months')! }) }))
        }
        expect(due(start + later) >= due(start)).toBe(true)
      }),
      { numRuns: 40 }
    )
  })
})

describe('the visit that should do it', () => {
  const season = { at: AT, from: parseMonthDay('04-01')!, to: parseMonthDay('10-15')! }
  const at = (fitted: string, site: Partial<Site> = { season }, on = date('2026-03-01')) =>
    planned({ battery: battery({ fitted: date(fitted) }), box: 'B1' }, site, on).doAt
  const task = (facts: Partial<MaintenanceTask>): MaintenanceTask => ({ at: AT, task: 'inspection', ...facts })

  it.each([
    ['2025-07-14', 'start-up', '2026-04-01'],
    ['2025-04-01', 'start-up', '2026-04-01'],
    ['2025-10-15', 'season-end', '2026-10-15'],
    ['2025-11-20', 'season-end', '2026-10-15'],
    ['2025-10-14', 'start-up', '2026-04-01']
  ])('fitted %s: the %s visit on %s, the last before it is due', (fitted, visit, on) => {
    expect(at(fitted)).toEqual({ visit, on, because: 'last before due' })
  })

  it('is one of its own where no regular one is left, the next where it is overdue or nobody wrote a date, and none out of service', () => {
    expect(at('2025-03-20')).toEqual({ visit: 'own', on: '2026-03-20', because: 'none before due' })
    expect(at('2025-02-20')).toEqual({ visit: 'next', on: '2026-03-01', because: 'overdue' })
    expect(planned({ battery: battery({}) }).doAt).toEqual({ visit: 'next', on: ON, because: 'no date' })
    expect(planned({ battery: battery({}), outOfService: 'away' })).not.toHaveProperty('doAt')
    expect(at('2025-07-14', {})).toMatchObject({ visit: 'own', on: '2026-07-14' })
  })

  it('is a task of the maintenance plan where that comes later, counted from its first day so that month ends hold', () => {
    const monthly = [task({ every: parseInterval('1 month')!, last: date('2025-12-31') })]
    expect(at('2025-07-01', { season, maintenance: monthly })).toEqual({
      visit: 'task',
      task: 'inspection',
      on: '2026-06-30',
      because: 'last before due'
    })
    const weekly = [task({ every: parseInterval('1 week')!, due: date('2020-01-01') })]
    expect(at('2025-07-14', { season, maintenance: weekly })?.on).toBe('2026-07-08')
    expect(at('2025-07-14', { season, maintenance: [task({ due: date('2026-06-01') })] })?.on).toBe('2026-06-01')
    expect(at('2025-07-14', { season, maintenance: [task({ due: date('2026-06-01'), box: 'B2' })] })?.visit).toBe(
      'start-up'
    )
    expect(at('2025-07-14', { season, maintenance: [task({ due: date('2026-07-15') })] })?.visit).toBe('start-up')
  })

  it('follows a southern season across the year’s end, and 29 February in any year', () => {
    const southern = { at: AT, from: parseMonthDay('10-01')!, to: parseMonthDay('04-15')! }
    expect(at('2026-02-10', { season: southern }, date('2026-09-01'))).toMatchObject({
      visit: 'start-up',
      on: '2026-10-01'
    })
    const leap = { at: AT, from: parseMonthDay('02-29')!, to: parseMonthDay('10-15')! }
    expect(at('2026-07-14', { season: leap }, date('2026-12-01'))).toMatchObject({
      visit: 'start-up',
      on: '2027-02-28'
    })
  })
})

describe('a solar panel in the plan', () => {
  const solar = sheet({
    drain: stated('60 µA', 'current'),
    pulse: { charge: stated('60 mC', 'charge') },
    solar: {
      panel: stated('30 mW', 'power'),
      battery: { volts: stated('3.6 V', 'voltage'), capacity: stated('600 mAh', 'charge') },
      daysWithoutSun: 10
    }
  })
  const unit: Partial<Controller> = { power: 'solar', sheet: solar, programs: [program({ stations: cyclesOf(1) })] }
  const location = { at: AT, latitude: 54.97 }

  it('gives its yield against what is drawn, month by month, and the days that a full cell lasts', () => {
    const plan = planned(unit, { location }).solar
    const months = plan && isPresent(plan.months) ? plan.months : []
    expect(months).toHaveLength(12)
    expect(months[11]).toMatchObject({ month: 12, by: 'overcast', verdict: 'too little' })
    expect(months[11]?.drawnMah).toBeCloseTo(1.44 + 2 / 60, 9)
    expect(plan?.autonomyDays).toBeCloseTo((600 * 0.7) / (1.44 + 2 / 60), 6)
    expect(plan?.statedDays).toBe(10)
  })

  it.each([
    ['no latitude', unit, {}, /latitude is not stated/u],
    ['no drain', { ...unit, sheet: sheet({}) }, { location }, /what is drawn all the time/u],
    [
      'no panel',
      { ...unit, sheet: sheet({ drain: stated('60 µA', 'current'), pulse: { charge: stated('60 mC', 'charge') } }) },
      { location },
      /what the panel gives/u
    ]
  ] as const)('says why there is no yield: %s', (_, facts, site, said) => {
    const plan = planned(facts, site).solar
    expect(plan && isAbsent(plan.months) && plan.months.reason).toMatch(said)
  })

  it('is left out where there is none', () => {
    expect(planned({ ...unit, power: 'battery' })).not.toHaveProperty('solar')
  })
})
