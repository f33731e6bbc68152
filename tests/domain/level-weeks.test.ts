import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { groupBy, sum } from '../../src/base/collections.ts'
import { levelWeeks, WEEKS_EARLY } from '../../src/domain/level-weeks.ts'
import type { WeekJob } from '../../src/domain/level-weeks.ts'

const late = (minutes: number): WeekJob => ({ minutes })
const due = (dueWeek: number, minutes: number): WeekJob => ({ minutes, dueWeek })

describe('work levelled over the weeks', () => {
  it('stays in its own week where that has room, exactly full included', () => {
    expect(levelWeeks([due(3, 60), due(3, 60), due(5, 120)], 120)).toEqual([3, 3, 5])
  })

  it('goes a week earlier where its own is full, the longer job keeping its week', () => {
    expect(levelWeeks([due(3, 60), due(3, 61)], 120)).toEqual([2, 3])
  })

  it('does what is late as soon as there is room, beside what is due', () => {
    expect(levelWeeks([late(100), late(100), due(0, 60), due(1, 20)], 120)).toEqual([1, 2, 0, 1])
  })

  it('is never late and never more than four weeks early, even where every week is over', () => {
    const crowded = Array.from({ length: 12 }, () => due(5, 100))
    const weeks = levelWeeks(crowded, 100)
    expect(Math.min(...weeks)).toBe(5 - WEEKS_EARLY)
    expect(Math.max(...weeks)).toBe(5)
    // Twelve jobs in five weeks: two or three in each.
    expect([...groupBy(weeks, week => week).values()].map(one => one.length).sort()).toEqual([2, 2, 2, 3, 3])
  })

  it('gives a job longer than a week a week of its own', () => {
    expect(levelWeeks([due(2, 500), due(2, 60)], 120)).toEqual([2, 1])
    expect(levelWeeks([late(500), late(60)], 120)).toEqual([0, 1])
  })

  it('has nothing to do where there is nothing', () => {
    expect(levelWeeks([], 60)).toEqual([])
  })

  it('keeps its word for any jobs', () => {
    const job = fc.record(
      { minutes: fc.integer({ min: 1, max: 600 }), dueWeek: fc.integer({ min: 0, max: 12 }) },
      { requiredKeys: ['minutes'] }
    )
    fc.assert(
      fc.property(fc.array(job, { maxLength: 40 }), fc.integer({ min: 60, max: 2400 }), (jobs, capacity) => {
        const weeks = levelWeeks(jobs, capacity)
        expect(weeks).toHaveLength(jobs.length)
        for (const [index, { dueWeek }] of jobs.entries()) {
          const week = weeks[index] ?? -1
          expect(week).toBeGreaterThanOrEqual(Math.max(0, (dueWeek ?? 0) - WEEKS_EARLY))
          if (dueWeek !== undefined) expect(week).toBeLessThanOrEqual(dueWeek)
        }
        const loads = [...groupBy(jobs.entries(), ([index]) => weeks[index] ?? -1)].map(([week, these]) => ({
          these: these.map(([, one]) => one),
          week
        }))
        // A week is over only by one long job, or by what is due and had nowhere else to go.
        for (const { these } of loads) {
          const isOver = sum(these.map(one => one.minutes)) > capacity
          const lateOnes = these.filter(one => one.dueWeek === undefined)
          if (isOver && these.length > 1) expect(lateOnes.length).toBeLessThanOrEqual(these.length - 1)
        }
      })
    )
  })
})
