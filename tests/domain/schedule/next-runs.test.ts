import { expect, it } from 'vitest'
import { yearRuns } from '../../../src/domain/schedule/expand-year.ts'
import { nextRuns } from '../../../src/domain/schedule/next-runs.ts'
import { runsOf } from '../../../src/domain/schedule/year-runs.ts'
import { date, epochDay, fromEpochDay } from '../../../src/units/date.ts'

const controller = {
  programs: [
    {
      id: 'A',
      days: { kind: 'every-n-days', every: 2, from: date('2026-01-02') } as const,
      starts: [1430],
      stations: [1, 2].map(number => ({ number, runTime: { cycles: 1, cycleS: 1200, soakS: 0 } }))
    }
  ],
  delayS: 0,
  stepS: 60
}
const year = yearRuns(controller, 2026)
const next = (text: string, days: number) =>
  nextRuns(year, epochDay(date(text)), days).map(({ day, station }) => `${fromEpochDay(day)}/${station}`)

it('a day’s runs are those that open on it, the evening before among them', () => {
  expect(next('2026-01-02', 1)).toEqual(['2026-01-02/1'])
  expect(next('2026-01-03', 1)).toEqual(['2026-01-02/2'])
})

it('a week’s runs are those of its seven days', () => {
  expect(next('2026-01-02', 7)).toHaveLength(7)
})

it('there is nothing before the first, after the last and in no days', () => {
  expect(next('2025-12-01', 31)).toEqual([])
  expect(next('2027-01-02', 7)).toEqual([])
  expect(next('2026-05-02', 0)).toEqual([])
  expect(nextRuns([], 20_000, 7)).toEqual([])
})

it('the last night of the year runs on into the next', () => {
  const last = [...runsOf(year)].at(-1)
  expect(nextRuns(year, epochDay(date('2026-12-31')), 2).at(-1)).toEqual(last)
})
