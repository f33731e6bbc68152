import { describe, expect, it } from 'vitest'
import { canBeSet, dayChoices, firstBarred } from '../../../src/domain/schedule/day-choices.ts'
import type { DayKind } from '../../../src/domain/schedule/day-choices.ts'
import { daysOfYear } from '../../../src/domain/schedule/calendar-days.ts'
import { runsOn } from '../../../src/domain/schedule/days.ts'
import { daysPerWeek, evenWeekdays, longestGapDays } from '../../../src/domain/schedule/spacing.ts'
import { parseDayRule, writeDayRule } from '../../../src/domain/schedule/text.ts'
import type { DayRule } from '../../../src/domain/schedule/program.ts'
import { date, fromEpochDay } from '../../../src/units/date.ts'

const rule = (text: string): DayRule => {
  const parsed = parseDayRule(text)
  if (!parsed) throw new Error(text)
  return parsed
}

describe('days between waterings', () => {
  it.each([
    ['every day', 7, 1],
    ['Mon Wed Fri', 3, 3],
    ['Mon Wed Fri Sat', 4, 2],
    ['Tue', 1, 7],
    ['Mon Tue', 2, 6],
    ['Sat Sun', 2, 6],
    ['every 3 days from 2026-04-02', 7 / 3, 3],
    ['odd dates', 3.5, 2],
    ['even dates', 3.5, 2]
  ])('%s waters %d times a week, at most %d days apart', (text, week, gap) => {
    expect(daysPerWeek(rule(text))).toBeCloseTo(week, 9)
    expect(longestGapDays(rule(text))).toBe(gap)
  })

  it('weekdays are spread as evenly as those allowed let them be', () => {
    expect(evenWeekdays(2, [1, 2, 3, 4, 5, 6, 7])).toContainEqual([1, 4])
    expect(evenWeekdays(2, [1, 3, 5, 6])).toEqual([
      [1, 5],
      [3, 6]
    ])
    expect(evenWeekdays(3, [1, 2, 3])).toEqual([[1, 2, 3]])
  })
})

describe('day rules to choose from', () => {
  const days = daysOfYear(2026).map(one => one.day)
  const from = date('2026-01-02')
  const choices = (kinds: readonly DayKind[], allowed: string) =>
    dayChoices({ kinds, days, isAllowed: day => runsOn(rule(allowed), day), from }).map(writeDayRule)

  it('under even dates a controller that only counts days has none, and one with even dates has those', () => {
    expect(choices(['weekdays', 'every N days'], 'even dates')).toEqual([])
    expect(choices(['weekdays', 'every N days', 'even'], 'even dates')).toEqual(['even dates'])
  })

  it('under weekdays they are subsets of them, never a count of days but one of whole weeks', () => {
    const found = choices(['weekdays', 'every N days'], 'Mon Fri')
    expect(found).toContain('Mon Fri')
    expect(found).toContain('Mon')
    expect(found.filter(one => !/^(Mon|Fri|Mon Fri|every 7 days.*|every 14 days.*)$/u.test(one))).toEqual([])
  })

  it('where every day is allowed they are there from weekly to daily, fewest first', () => {
    const found = choices(['weekdays'], 'every day')
    expect(found.at(-1)).toBe('every day')
    expect(found[0]).toMatch(/^[A-Z][a-z]{2}$/u)
  })

  it('the first day on which a rule leaves those allowed is found', () => {
    const first = firstBarred(rule('every 2 days from 2026-07-02'), {
      days: days.filter(day => fromEpochDay(day) >= '2026-07-01'),
      isAllowed: day => runsOn(rule('even dates'), day)
    })
    expect(first === undefined ? '' : fromEpochDay(first)).toBe('2026-08-01')
  })

  it('every day can be set by weekdays or by counting', () => {
    expect(canBeSet(rule('every day'), ['weekdays'])).toBe(true)
    expect(canBeSet(rule('every day'), ['odd', 'even'])).toBe(false)
  })
})
