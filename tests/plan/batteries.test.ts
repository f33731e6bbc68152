import { describe, expect, it } from 'vitest'
import { isAbsent } from '../../src/base/absent.ts'
import type { Battery, Controller, Site, Visit, VisitBattery } from '../../src/model/site.ts'
import { planBatteries } from '../../src/plan/batteries.ts'
import type { BatteryPlan } from '../../src/plan/plan.ts'
import { planSchedules } from '../../src/plan/schedules.ts'
import { date, parseInterval } from '../../src/units/date.ts'
import type { IsoDate } from '../../src/units/date.ts'
import { bareSite } from '../support/bare-site.ts'
import { controller, cyclesOf, program, sheet, station, valve } from './facts.ts'

const AT = { file: 'sites/bare/site.md', path: [] }
const ON = date('2026-05-01')

const battery = (facts: Partial<Battery>): Battery => ({ at: AT, kind: '9 V alkaline', count: 1, ...facts })

const visit = (on: string, batteries: readonly Partial<VisitBattery>[]): Visit => ({
  at: AT,
  on: date(on),
  batteries: batteries.map(one => ({ at: AT, controller: 'K1', ...one })),
  readings: [],
  found: [],
  done: [],
  open: []
})

const batteriesOf = (site: Site, on: IsoDate) => planBatteries(site, on, planSchedules(site, on).schedules)

function planned(unit: Partial<Controller>, site: Partial<Site> = {}, on = ON): BatteryPlan {
  const plan = batteriesOf(bareSite({ controllers: [controller(unit)], ...site }), on).batteries.get('K1')
  if (!plan) throw new Error('no plan for the controller')
  return plan
}

describe('when a battery is due', () => {
  it('on the roundabout: fitted 2025-04-14, 12 months, is 17 days overdue on 2026-05-01', () => {
    const plan = planned({ battery: battery({ fitted: date('2025-04-14'), interval: parseInterval('12 months')! }) })
    expect(plan).toMatchObject({
      dueOn: '2026-04-14',
      state: 'overdue',
      daysOverdue: 17,
      because: '12 months after 2025-04-14',
      intervalDueOn: '2026-04-14'
    })
  })

  it.each([
    ['2025-03-10', 'overdue', 52],
    ['2024-03-18', 'overdue', 409],
    ['2025-09-02', 'ok', undefined],
    ['2025-05-20', 'due-soon', undefined],
    ['2025-06-18', 'due-soon', undefined],
    ['2025-06-30', 'due-soon', undefined],
    ['2025-07-01', 'ok', undefined],
    ['2025-05-01', 'due-soon', undefined],
    ['2025-04-30', 'overdue', 1]
  ])('fitted %s is %s on 2026-05-01', (fitted, state, daysOverdue) => {
    const plan = planned({ battery: battery({ fitted: date(fitted) }) })
    expect([plan.state, plan.daysOverdue]).toEqual([state, daysOverdue])
  })

  it('follows the interval of the site file, then of the product sheet, then 12 months', () => {
    const fitted = date('2026-01-31')
    const stated = sheet({ battery: { interval: parseInterval('6 months')! } })
    const own = battery({ fitted, interval: parseInterval('1 month')! })
    expect(planned({ battery: own, sheet: stated }).dueOn).toBe('2026-02-28')
    expect(planned({ battery: battery({ fitted }), sheet: stated }).dueOn).toBe('2026-07-31')
    expect(planned({ battery: battery({ fitted }) })).toMatchObject({
      dueOn: '2027-01-31',
      because: '12 months after 2026-01-31, where none is stated (rule of this project)'
    })
  })

  it('is the date code where that comes first', () => {
    const plan = planned({ battery: battery({ fitted: date('2026-01-31'), dateCode: date('2026-06-30') }) })
    expect(plan).toMatchObject({
      dueOn: '2026-06-30',
      because: 'date code of the cells, 2026-06-30',
      state: 'due-soon'
    })
  })

  it('does not know the season: one that falls inside it is still due on its own day', () => {
    const season = { at: AT, from: '04-01', to: '10-15' } as unknown as NonNullable<Site['season']>
    expect(planned({ battery: battery({ fitted: date('2025-07-14') }) }, { season }).dueOn).toBe('2026-07-14')
  })
})

describe('the set that is in the controller now', () => {
  const own = battery({ fitted: date('2025-04-14'), dateCode: date('2025-12-31') })

  it('is the latest change that a visit recorded up to the day', () => {
    const visits = [
      visit('2026-04-20', [{ fitted: date('2026-04-20'), kind: '9 V lithium', count: 2 }]),
      visit('2025-10-01', [{ fitted: date('2025-10-01') }])
    ]
    expect(planned({ battery: own }, { visits })).toMatchObject({
      fitted: '2026-04-20',
      kind: '9 V lithium',
      count: 2,
      dueOn: '2027-04-20',
      state: 'ok'
    })
  })

  it('leaves the old date code behind with the old cells', () => {
    const plan = planned({ battery: own }, { visits: [visit('2026-04-20', [{ fitted: date('2026-04-20') }])] })
    expect(plan.because).toContain('12 months after 2026-04-20')
  })

  it('does not change at a visit after the day, nor at one that only measured, nor for another controller', () => {
    const visits = [
      visit('2026-05-02', [{ fitted: date('2026-05-02') }]),
      visit('2026-04-20', [{}]),
      visit('2026-04-21', [{ controller: 'K2', fitted: date('2026-04-21') }])
    ]
    expect(planned({ battery: own }, { visits }).fitted).toBe('2025-04-14')
    expect(planned({ battery: own }, { visits }, date('2026-05-02')).fitted).toBe('2026-05-02')
  })

  it('is not known yet from a visit that is written up for a later day', () => {
    const visits = [visit('2026-05-02', [{ fitted: date('2026-04-30') }])]
    expect(planned({ battery: own }, { visits }).fitted).toBe('2025-04-14')
  })

  it('keeps its date code where a visit records the same change', () => {
    const visits = [visit('2025-04-14', [{ fitted: date('2025-04-14') }])]
    expect(planned({ battery: own }, { visits }).dueOn).toBe('2025-12-31')
  })

  it('keeps the file’s own record where that is later than every visit', () => {
    const visits = [visit('2025-01-01', [{ fitted: date('2025-01-01'), kind: 'old' }])]
    expect(planned({ battery: own }, { visits })).toMatchObject({ fitted: '2025-04-14', kind: '9 V alkaline' })
  })

  it('is known from visits alone', () => {
    const plan = planned(
      {},
      { visits: [visit('2026-04-20', [{ fitted: date('2026-04-20'), kind: 'AA alkaline', count: 4 }])] }
    )
    expect(plan).toMatchObject({ kind: 'AA alkaline', count: 4, dueOn: '2027-04-20' })
  })
})

describe('a battery without a due date', () => {
  it('has state no-date where nobody wrote when it was fitted', () => {
    const plan = planned({ battery: battery({ dateCode: date('2030-01-01') }) })
    expect(plan.state).toBe('no-date')
    expect(isAbsent(plan.dueOn) && plan.dueOn.reason).toBe('no date on which the battery was fitted')
    expect(planned({}).state).toBe('no-date')
  })

  it('has state none where the controller or the site is out of service, however long overdue', () => {
    const old = battery({ fitted: date('2020-01-01') })
    expect(planned({ battery: old, outOfService: 'street works until September' })).toMatchObject({
      state: 'none',
      because: 'out of service: street works until September'
    })
    expect(planned({ battery: old }, { status: 'removed' }).state).toBe('none')
    expect(planned({ battery: old }, { status: 'out-of-service' }).state).toBe('none')
  })

  it('has state none where there is none: an adapter, a solar panel, a site that is planned', () => {
    expect(planned({ power: 'adapter' }).state).toBe('none')
    expect(planned({ power: 'solar' }).state).toBe('none')
    expect(planned({}, { status: 'planned' }).state).toBe('none')
    expect(planned({ power: 'adapter', battery: battery({ fitted: date('2026-01-01') }) }).state).toBe('ok')
  })

  it('is planned for every controller all the same', () => {
    const site = bareSite({ controllers: [controller({ id: 'C1' }), controller({ id: 'C2', power: 'solar' })] })
    expect([...batteriesOf(site, ON).batteries.keys()]).toEqual(['C1', 'C2'])
  })
})

describe('pulses that shorten a life', () => {
  const rated = sheet({ battery: { pulses: 8000 } })
  const starts = [360, 420, 720, 900]
  const nursery = {
    sheet: rated,
    battery: battery({ fitted: date('2026-02-02') }),
    programs: [program({ starts, stations: cyclesOf(6) })]
  }

  it('in the nursery: 48 a day out of 8,000 last 166 days, due 2026-07-18 and not 2027-02-02', () => {
    const plan = planned(nursery)
    expect(plan).toMatchObject({
      dueOn: '2026-07-18',
      because: 'computed life of 166 days after 2026-02-02',
      intervalDueOn: '2027-02-02',
      pulses: { rated: 8000, perDay: 48, lifeDays: 166 },
      state: 'ok'
    })
  })

  it('count every cycle, the master valve, and the days between', () => {
    const perDay = (facts: Partial<Controller>) => planned({ ...nursery, ...facts }).pulses?.perDay
    expect(perDay({ programs: [program({ starts, stations: cyclesOf(6, 2) })] })).toBe(96)
    expect(perDay({ masterValve: { ...valve(), wire: [] } })).toBe(56)
    expect(
      perDay({ programs: [program({ starts, stations: cyclesOf(6), days: { kind: 'weekdays', days: [1, 4] } })] })
    ).toBeCloseTo((48 * 2) / 7, 9)
  })

  it('leave out stations that are out of service, and programs at 0 % all year', () => {
    const stations = [station({ id: 'K1/6', number: 6, outOfService: 'bay closed' })]
    expect(planned(nursery, { stations }).pulses?.perDay).toBe(40)
    const off = program({ starts, stations: cyclesOf(6), monthlyPercent: Array.from({ length: 12 }, () => 0) })
    expect(planned({ ...nursery, programs: [off] })).not.toHaveProperty('pulses')
  })

  it('of programs that follow one another are those of the busiest stretch, not of all together', () => {
    const spring = program({ id: 'A', starts: [360], stations: cyclesOf(6), to: date('2026-05-31') })
    const summer = program({ id: 'B', starts: [360, 720], stations: cyclesOf(6), from: date('2026-06-01') })
    expect(planned({ ...nursery, programs: [spring, summer] }).pulses?.perDay).toBe(24)
  })

  it('that are over before the cells were fitted do not count', () => {
    const old = program({ starts, stations: cyclesOf(6), to: date('2026-02-01') })
    expect(planned({ ...nursery, programs: [old] })).not.toHaveProperty('pulses')
  })

  it('set no date where the sheet states none', () => {
    expect(planned({ ...nursery, sheet: sheet() })).toMatchObject({ dueOn: '2027-02-02' })
    expect(planned({ ...nursery, sheet: sheet() })).not.toHaveProperty('pulses')
  })

  it('show how they were counted', () => {
    const { workings } = batteriesOf(bareSite({ controllers: [controller(nursery)] }), ON)
    expect(workings).toEqual([
      {
        calculation: 'battery-life',
        subject: 'K1',
        steps: [
          'program A: 2 × 4 starts × 6 cycles = 48 pulses on a day with water',
          '8000 pulses / 48 pulses a day = 166 whole days'
        ]
      },
      {
        calculation: 'due-date',
        subject: 'K1 battery',
        steps: [
          '12 months after 2026-02-02, where none is stated (rule of this project): 2027-02-02',
          'computed life of 166 days after 2026-02-02: 2026-07-18',
          'the earliest: 2026-07-18 (computed life)'
        ]
      }
    ])
  })
})
