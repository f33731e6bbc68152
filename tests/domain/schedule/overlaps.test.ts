import { describe, expect, it } from 'vitest'
import type { ScheduledProgram } from '../../../src/domain/schedule/controller.ts'
import { yearRuns } from '../../../src/domain/schedule/expand-year.ts'
import { overlaps } from '../../../src/domain/schedule/overlaps.ts'
import { parseClock } from '../../../src/units/clock.ts'
import { date, fromEpochDay } from '../../../src/units/date.ts'

const clock = (text: string) => parseClock(text) ?? 0
const minutes = (count: number, each: number) =>
  Array.from({ length: count }, (_, index) => ({
    number: index + 1,
    runTime: { cycles: 1, cycleS: each * 60, soakS: 0 }
  }))
const program = (id: string, starts: string[], more: Partial<ScheduledProgram> = {}): ScheduledProgram => ({
  id,
  days: { kind: 'every-day' },
  starts: starts.map(clock),
  stations: minutes(6, 12),
  ...more
})
const meeting = (...programs: ScheduledProgram[]) => overlaps(yearRuns({ programs, delayS: 0, stepS: 60 }, 2026))

describe('start times of one controller', () => {
  it('meet where six bays of 12 min start at 06:00 and at 07:00: 12 minutes over, once a day', () => {
    const found = meeting(program('A', ['06:00', '07:00', '12:00', '15:00']))
    expect(found).toHaveLength(1)
    expect(found[0]).toMatchObject({
      program: 'A',
      startS: 6 * 3600,
      endS: 7 * 3600 + 12 * 60,
      nextProgram: 'A',
      nextStartS: 7 * 3600,
      minutesOver: 12,
      times: 365
    })
  })

  it('do not meet where the next start is the minute the last valve shuts', () => {
    expect(meeting(program('A', ['06:00', '07:12']))).toEqual([])
    expect(meeting(program('A', ['06:00', '07:11']))[0]?.minutesOver).toBe(1)
  })

  it('meet because of a delay between stations alone', () => {
    const programs = [program('A', ['06:00', '07:12'])]
    expect(overlaps(yearRuns({ programs, delayS: 30, stepS: 60 }, 2026))[0]?.minutesOver).toBe(2.5)
  })

  it('are found whatever order they are written in', () => {
    expect(meeting(program('A', ['15:00', '07:00', '06:00']))).toEqual(
      meeting(program('A', ['06:00', '07:00', '15:00']))
    )
  })

  it('meet between programs, on the days that both run', () => {
    const odd = { days: { kind: 'every-n-days', every: 3, from: date('2026-07-01') } as const }
    const found = meeting(program('A', ['22:00']), program('B', ['23:00'], odd))
    expect(found).toHaveLength(1)
    expect(found[0]).toMatchObject({ program: 'A', nextProgram: 'B', minutesOver: 12, times: 62 })
    expect(fromEpochDay(found[0]?.firstDay ?? 0)).toBe('2026-07-01')
  })

  it('meet across midnight, with the next start counted from the first day', () => {
    const found = meeting(program('A', ['23:30']), program('B', ['00:30']))
    expect(found).toHaveLength(1)
    expect(found[0]).toMatchObject({
      program: 'A',
      nextProgram: 'B',
      nextStartS: 24 * 3600 + 1800,
      minutesOver: 12,
      times: 364
    })
  })

  it('meet where two programs start at the same minute, and where one time is set twice', () => {
    expect(meeting(program('A', ['06:00']), program('B', ['06:00']))[0]).toMatchObject({
      program: 'A',
      nextProgram: 'B',
      minutesOver: 72
    })
    expect(meeting(program('A', ['06:00', '06:00']))[0]).toMatchObject({
      startS: 21_600,
      nextStartS: 21_600,
      minutesOver: 72,
      times: 365
    })
  })

  it('report two meetings, and the start that a third one meets while two still run', () => {
    expect(meeting(program('A', ['06:00', '07:00', '12:00', '13:00']))).toHaveLength(2)
    const pairs = meeting(program('A', ['06:00', '06:30', '07:00'])).map(({ startS, nextStartS }) => [
      startS / 60,
      nextStartS / 60
    ])
    expect(pairs).toEqual([
      [360, 390],
      [360, 420],
      [390, 420]
    ])
  })

  it('give the day they meet for longest and the first day they meet', () => {
    const monthlyPercent = [0.5, 0.5, 0.5, 0.5, 0.9, 1, 1.25, 1, 0.5, 0.5, 0.5, 0.5]
    const [found] = meeting(program('A', ['06:00', '07:00'], { monthlyPercent }))
    expect(fromEpochDay(found?.firstDay ?? 0)).toBe('2026-05-01')
    expect(fromEpochDay(found?.day ?? 0)).toBe('2026-07-01')
    expect(found).toMatchObject({ minutesOver: 30, endS: 7 * 3600 + 30 * 60, times: 31 + 30 + 31 + 31 })
  })

  it('never meet with nothing to run', () => {
    expect(overlaps([])).toEqual([])
    expect(meeting(program('A', ['06:00', '06:00'], { stations: [] }))).toEqual([])
  })
})
