import type { EpochDay } from '../../units/date.ts'
import type { Run } from './program.ts'
import { DAY_S, openingS } from './run-times.ts'

/** A run without its day: seconds count from midnight of the day it is laid on. */
export type PatternRun = Omit<Run, 'day'>

/**
 * What a day's starts open, in order of opening. One object serves every day on which the same happens, so that a year costs what differs
 * in it and not what repeats.
 */
export type DayPattern = readonly PatternRun[]

export interface PatternDay {
  readonly day: EpochDay
  readonly pattern: DayPattern
}

/** In order of day; days on which nothing starts are left out. */
export type YearRuns = readonly PatternDay[]

/** Every opening with its date, in order of opening: a run of the evening may open after the first ones of the next day. */
export function* runsOf(days: YearRuns): Generator<Run> {
  let waiting: Run[] = []
  for (const { day, pattern } of days) {
    const own = pattern.map(run => datedRun(day, run))
    const due = waiting.length === 0 ? own : [...waiting, ...own].sort((a, b) => openingS(a) - openingS(b))
    waiting = []
    for (const run of due)
      if (openingS(run) < (day + 1) * DAY_S) yield run
      else waiting.push(run)
  }
  yield* waiting
}

/** A spread would cost several times as much, a hundred thousand times a year. */
export function datedRun(
  day: EpochDay,
  { program, programStartS, station, cycle, startS, durationS }: PatternRun
): Run {
  return { day, program, programStartS, station, cycle, startS, durationS }
}

const ends = new WeakMap<DayPattern, number>()

/** When the last valve of a pattern shuts, in seconds from midnight; 0 where nothing opens. */
export function patternEndS(pattern: DayPattern): number {
  const known = ends.get(pattern)
  if (known !== undefined) return known
  const end = pattern.reduce((latest, { startS, durationS }) => Math.max(latest, startS + durationS), 0)
  ends.set(pattern, end)
  return end
}
