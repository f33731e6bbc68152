import { sum } from '../../base/collections.ts'
import type { EpochDay } from '../../units/date.ts'
import { isInDates, isInSeason } from './active.ts'
import { percentIn } from './controller.ts'
import { runsOn } from './days.ts'
import { DAY_S, openingS } from './run-times.ts'
import { sequenceProgram } from './sequence.ts'
import { daysOfYear } from './calendar-days.ts'
import type { CalendarDay } from './calendar-days.ts'
import type { ScheduledController, ScheduledProgram, WateringSeason } from './controller.ts'
import type { Run } from './program.ts'

type DayRun = Omit<Run, 'day'>

interface PlannedDay {
  readonly day: EpochDay
  readonly pattern: readonly DayRun[]
}

/**
 * Every opening of every valve whose program started in a year, in order of opening. A run belongs to the day its program
 * started on, also when it opens after midnight; the month's percent and the season are those of that day.
 */
export function expandYear(controller: ScheduledController, year: number, season?: WateringSeason): Run[] {
  return expandDays(controller, daysOfYear(year), season)
}

/** The same for any days in order: a week across the year's end, or one day. */
export function expandDays(
  controller: ScheduledController,
  days: readonly CalendarDay[],
  season?: WateringSeason
): Run[] {
  const patterns = new Map<string, readonly DayRun[]>()
  const planned: PlannedDay[] = []
  for (const day of days) {
    if (!isInSeason(day, season)) continue
    const running = controller.programs.map(program => isInDates(day, program) && runsOn(program.days, day.day))
    const key = `${day.month} ${running.join()}`
    const pattern = patterns.get(key) ?? dayPattern(controller, running, day.month)
    patterns.set(key, pattern)
    planned.push({ day: day.day, pattern })
  }
  const runs = datedRuns(planned)
  const pastMidnight = [...patterns.values()].some(pattern => (pattern.at(-1)?.startS ?? 0) >= DAY_S)
  return pastMidnight ? runs.sort((a, b) => openingS(a) - openingS(b)) : runs
}

/** The runs of a day on which some of the programs run, in order of opening. */
function dayPattern(controller: ScheduledController, running: readonly boolean[], month: number): DayRun[] {
  const programs = controller.programs.filter((_, index) => running[index])
  return programs.flatMap(program => programPattern(controller, program, month)).sort((a, b) => a.startS - b.startS)
}

function programPattern({ stepS, delayS }: ScheduledController, program: ScheduledProgram, month: number): DayRun[] {
  const sequence = sequenceProgram(program.stations, { percent: percentIn(program, month), stepS, delayS })
  return program.starts.flatMap(start => {
    const programStartS = start * 60
    return sequence.map(({ station, cycle, startS, durationS }) => ({
      program: program.id,
      programStartS,
      station,
      cycle,
      startS: programStartS + startS,
      durationS
    }))
  })
}

/** A year may hold 100,000 runs: the array has its length from the start, and a spread here would cost ten times as much. */
function datedRuns(days: readonly PlannedDay[]): Run[] {
  const runs = new Array<Run>(sum(days.map(({ pattern }) => pattern.length)))
  let at = 0
  for (const { day, pattern } of days)
    for (const { program, programStartS, station, cycle, startS, durationS } of pattern)
      runs[at++] = { day, program, programStartS, station, cycle, startS, durationS }
  return runs
}
