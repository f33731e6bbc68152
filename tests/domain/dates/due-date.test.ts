import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAbsent, isPresent } from '../../../src/base/absent.ts'
import { dueDate } from '../../../src/domain/dates/due-date.ts'
import type { Due, DueFacts } from '../../../src/domain/dates/due-date.ts'
import { dueState } from '../../../src/domain/dates/due-state.ts'
import { addDays, date, fromEpochDay, parseInterval } from '../../../src/units/date.ts'
import { calcOrAbsent } from '../../support/calc.ts'

function due(facts: DueFacts): Due {
  const found = dueDate(facts)
  if (!isPresent(found)) throw new Error(found.reason)
  return found.value
}

describe('the day something is due', () => {
  it('is 12 months on where no interval is stated, and says that it is a rule of the project', () => {
    const found = due({ last: date('2025-04-14') })
    expect(found.dueOn).toBe('2026-04-14')
    expect(found.words).toBe('12 months after 2025-04-14, where none is stated (rule of this project)')
  })

  it('follows a stated interval, longer or shorter', () => {
    expect(due({ last: date('2025-04-14'), interval: parseInterval('2 years')! })).toMatchObject({
      dueOn: '2027-04-14',
      because: 'interval',
      words: '2 years after 2025-04-14'
    })
    expect(due({ last: date('2025-04-14'), interval: parseInterval('6 weeks')! }).dueOn).toBe('2025-05-26')
  })

  it('is the earliest of what is known, and names what set it', () => {
    const last = date('2026-01-01')
    expect(due({ last, lifeDays: 100 })).toMatchObject({ dueOn: '2026-04-11', because: 'computed life' })
    expect(due({ last, lifeDays: 100, dateCode: date('2026-03-01') })).toMatchObject({ because: 'date code' })
    expect(due({ last, lifeDays: 1581 })).toMatchObject({ dueOn: '2027-01-01', because: 'interval' })
    expect(due({ last, dateCode: date('2031-01-01') })).toMatchObject({ because: 'interval' })
  })

  it('is named after the interval where two fall on one day', () => {
    const last = date('2025-01-01')
    expect(due({ last, lifeDays: 365, dateCode: date('2026-01-01') })).toMatchObject({
      dueOn: '2026-01-01',
      because: 'interval'
    })
  })

  it('is the day of a repair made after the last test, and not of one made on that day or before', () => {
    const last = date('2025-03-31')
    expect(due({ last, event: date('2025-07-02') })).toMatchObject({ dueOn: '2025-07-02', because: 'event' })
    expect(due({ last, event: date('2025-03-31') })).toMatchObject({ dueOn: '2026-03-31', because: 'interval' })
    expect(due({ last, event: date('2024-07-02') })).toMatchObject({ because: 'interval' })
  })

  it('may lie before the last date, where cells were past their date code when fitted', () => {
    expect(due({ last: date('2026-01-01'), dateCode: date('2025-12-01') }).dueOn).toBe('2025-12-01')
  })

  it('counts whole days of a life, and a life of centuries sets no date', () => {
    const last = date('2026-01-01')
    expect(due({ last, lifeDays: 10.9 }).dueOn).toBe('2026-01-11')
    expect(due({ last, lifeDays: 1e9 }).because).toBe('interval')
    expect(due({ last, lifeDays: Infinity }).because).toBe('interval')
  })

  it('is absent without a date to count from, even where the cells carry a date code', () => {
    expect(isAbsent(dueDate({ dateCode: date('2026-01-01') }))).toBe(true)
  })

  it('is never later than the interval alone, whatever else is known', () => {
    const days = fc.integer({ min: 15_000, max: 25_000 }).map(fromEpochDay)
    fc.assert(
      fc.property(days, fc.option(fc.nat(4000)), fc.option(days), fc.option(days), (last, life, code, event) => {
        const all = due({
          last,
          ...(life === null ? {} : { lifeDays: life }),
          ...(code === null ? {} : { dateCode: code }),
          ...(event === null ? {} : { event })
        })
        expect(all.dueOn <= due({ last }).dueOn).toBe(true)
      })
    )
  })

  it('is refused by the card for a life of no days', () => {
    expect(calcOrAbsent('due-date', { fitted: '2026-01-01', 'life-days': '0' })).toBe(
      'life-days must be more than zero'
    )
  })
})

describe('the state of a due date', () => {
  const dueOn = date('2026-06-30')

  it.each([
    ['2026-05-01', 'due-soon'],
    ['2026-04-30', 'ok'],
    ['2026-06-30', 'due-soon'],
    ['2026-01-01', 'ok']
  ])('on %s it is %s: from 60 days before, to the day itself', (on, state) => {
    expect(dueState(dueOn, date(on))).toEqual({ state })
  })

  it('is overdue from the next day, and counts the days', () => {
    expect(dueState(dueOn, addDays(dueOn, 1))).toEqual({ state: 'overdue', daysOverdue: 1 })
    expect(dueState(date('2026-04-14'), date('2026-05-01'))).toEqual({ state: 'overdue', daysOverdue: 17 })
    expect(dueState(date('2025-12-31'), date('2026-01-01'))).toEqual({ state: 'overdue', daysOverdue: 1 })
  })
})
