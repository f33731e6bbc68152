import { describe, expect, it } from 'vitest'
import type { MaintenanceTask } from '../../src/model/maintenance.ts'
import type { Phase, Site, Visit, Warranty } from '../../src/model/site.ts'
import { planTasks } from '../../src/plan/tasks.ts'
import { date, parseInterval } from '../../src/units/date.ts'
import type { MonthDay } from '../../src/units/date.ts'
import { bareBox, bareSite, bareStation } from '../support/bare-site.ts'

const AT = { file: 'sites/bare/site.md', path: [] }
const season = (from: string, to: string) => ({ at: AT, from: from as MonthDay, to: to as MonthDay })
const every = (text: string) => parseInterval(text)!
const task = (stated: Partial<MaintenanceTask>): MaintenanceTask => ({ at: AT, task: 'monthly inspection', ...stated })
const warranty = (stated: Partial<Warranty>): Warranty => ({ at: AT, item: 'whole system', ...stated })
const visit = (on: string, stated: Partial<Visit> = {}): Visit => ({
  at: AT,
  on: date(on),
  batteries: [],
  readings: [],
  found: [],
  done: [],
  open: [],
  ...stated
})

/** Kind, subject and day of what is due. */
function due(stated: Partial<Site>, on = '2026-05-01'): string[] {
  return planTasks(bareSite(stated), date(on)).map(one => `${one.kind} ${one.subject} ${one.dueOn ?? 'no date'}`)
}

describe('maintenance that the site file states', () => {
  it('is due an interval after it was last done, months clamped to their end', () => {
    const maintenance = [task({ every: every('1 month'), last: date('2026-01-31') })]
    expect(due({ maintenance })).toEqual(['inspection bare 2026-02-28'])
  })

  it('counts from the latest visit that lists it, up to that day', () => {
    const maintenance = [task({ every: every('1 month'), last: date('2026-01-31') })]
    const visits = [
      visit('2026-04-10', { tasks: ['Monthly  inspection'] }),
      visit('2026-04-20', { tasks: ['something else'] }),
      visit('2026-05-02', { tasks: ['monthly inspection'] })
    ]
    expect(due({ maintenance, visits })).toEqual(['inspection bare 2026-05-10'])
  })

  it('has no date where nobody wrote one, and is listed all the same', () => {
    expect(due({ maintenance: [task({ every: every('1 month') })] })).toEqual(['inspection bare no date'])
  })

  it('that comes once is there until a visit has done it', () => {
    const maintenance = [task({ task: 'remove the temporary line', due: date('2026-09-30') })]
    expect(due({ maintenance })).toEqual(['removal bare 2026-09-30'])
    expect(due({ maintenance, visits: [visit('2026-04-10', { tasks: ['remove the temporary line'] })] })).toEqual([])
  })

  it('at a box that is away stays out', () => {
    const maintenance = [task({ box: 'VB1', due: date('2026-06-01') })]
    expect(due({ maintenance, boxes: [bareBox('VB1')] })).toEqual(['inspection VB1 2026-06-01'])
    expect(due({ maintenance, boxes: [{ ...bareBox('VB1'), status: 'taken away' }] })).toEqual([])
  })
})

describe('start-up and winterizing', () => {
  const north = season('04-01', '10-15')

  it('come with the season; lines that are not emptied are not winterized', () => {
    expect(due({ season: north }, '2026-01-10')).toEqual(['start-up bare 2026-04-01'])
    expect(due({ season: north, winter: { at: AT, method: 'none' } }, '2026-01-10')).toHaveLength(1)
    expect(due({ season: north, winter: { at: AT, method: 'air' } }, '2026-01-10')).toEqual([
      'start-up bare 2026-04-01',
      'winterizing bare 2026-10-15'
    ])
  })

  it('are overdue where a visit shows that the site was there and none that it was done', () => {
    const before = visit('2025-10-20', { reason: 'winterizing' })
    expect(due({ season: north, visits: [before] })).toEqual(['start-up bare 2026-04-01'])
    expect(due({ season: north })).toEqual(['start-up bare 2027-04-01'])
    const done = visit('2026-03-20', { reason: 'season start-up' })
    expect(due({ season: north, visits: [before, done] })).toEqual(['start-up bare 2027-04-01'])
  })

  it('follow the season of the south, over the end of the year', () => {
    expect(due({ season: season('10-01', '04-30'), winter: { at: AT, method: 'drain' } }, '2026-12-31')).toEqual([
      'start-up bare 2027-10-01',
      'winterizing bare 2027-04-30'
    ])
  })

  it('on the day itself are due on that day', () => {
    expect(due({ season: north }, '2026-04-01')).toEqual(['start-up bare 2026-04-01'])
  })

  it('give way to a day that the site states', () => {
    const maintenance = [task({ task: 'Start-up', every: every('1 year'), last: date('2025-03-10') })]
    expect(due({ season: north, maintenance })).toEqual(['start-up bare 2026-03-10'])
  })

  it('on 29 February are of 28 February in a year that has none', () => {
    expect(due({ season: season('02-29', '10-15') }, '2026-01-01')).toEqual(['start-up bare 2026-02-28'])
  })
})

describe('warranties', () => {
  it('end on their day, which is still under warranty, and call for nothing afterwards', () => {
    const warranties = [warranty({ start: date('2025-05-01'), end: date('2026-05-01') })]
    expect(due({ warranties })).toEqual(['warranty-end whole system 2026-05-01'])
    expect(due({ warranties }, '2026-05-02')).toEqual([])
  })

  it('without an end have no date, unless the site is only planned', () => {
    expect(due({ warranties: [warranty({})] })).toEqual(['warranty-end whole system no date'])
    expect(due({ warranties: [warranty({})], status: 'planned' })).toEqual([])
  })

  it('have their inspections counted from the start until a visit under the warranty is made', () => {
    const inspections = [every('4 months'), every('9 months')]
    const warranties = [warranty({ start: date('2026-01-31'), end: date('2027-01-31'), inspections })]
    expect(due({ warranties })).toEqual([
      'warranty-end whole system 2027-01-31',
      'warranty-inspection whole system 2026-05-31',
      'warranty-inspection whole system 2026-10-31'
    ])
    const visits = [visit('2026-04-28', { reason: 'warranty inspection' })]
    expect(due({ warranties, visits })).toHaveLength(2)
  })
})

describe('plantings and systems that end', () => {
  const phase = (name: Phase['name'], to?: string): Phase => ({ at: AT, name, ...(to ? { to: date(to) } : {}) })

  it('end their establishment on its last day, told of for 60 days', () => {
    const stations = [{ ...bareStation(), phases: [phase('establishment', '2026-05-20')] }]
    expect(due({ stations })).toEqual(['establishment-end Z1 2026-05-20'])
    expect(due({ stations }, '2026-07-19')).toHaveLength(1)
    expect(due({ stations }, '2026-07-20')).toEqual([])
  })

  it('that are temporary stay on the list until the site is removed', () => {
    const phases = [phase('temporary', '2025-05-20')]
    expect(due({ phases })).toEqual(['removal bare 2025-05-20'])
    expect(due({ phases, status: 'removed' })).toEqual([])
    expect(due({ place: 'temporary' })).toEqual(['removal bare no date'])
  })
})
