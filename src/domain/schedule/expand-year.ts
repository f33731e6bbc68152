import { isInDates, isInSeason } from './active.ts'
import { daysOfYear } from './calendar-days.ts'
import type { CalendarDay } from './calendar-days.ts'
import { percentIn } from './controller.ts'
import type { ScheduledController, ScheduledProgram, WateringSeason } from './controller.ts'
import { runsOn } from './days.ts'
import type { Run } from './program.ts'
import { sequenceProgram } from './sequence.ts'
import { isSuspended } from './suspended.ts'
import { runsOf } from './year-runs.ts'
import type { DayPattern, PatternDay, PatternRun, YearRuns } from './year-runs.ts'

/**
 * A year of a controller: each day on which a program starts, with what it opens. A run belongs to the day its program started on, also
 * when it opens after midnight; the month's percent, the season and suspensions are those of that day.
 */
export function yearRuns(controller: ScheduledController, year: number, season?: WateringSeason): YearRuns {
  return dayRuns(controller, daysOfYear(year), season)
}

/** The same for any days in order: a week across the year's end, or one day. */
export function dayRuns(
  controller: ScheduledController,
  days: readonly CalendarDay[],
  season?: WateringSeason
): YearRuns {
  const patterns = new Map<string, DayPattern>()
  const planned: PatternDay[] = []
  for (const day of days) {
    if (!isInSeason(day, season)) continue
    const running = controller.programs.map(program => startsOn(program, day))
    const key = `${day.month} ${running.join()}`
    const pattern = patterns.get(key) ?? dayPattern(controller, running, day.month)
    patterns.set(key, pattern)
    if (pattern.length > 0) planned.push({ day: day.day, pattern })
  }
  return planned
}

/** Every opening of every valve whose program started in a year, in order of opening. */
export function expandYear(controller: ScheduledController, year: number, season?: WateringSeason): Run[] {
  return [...runsOf(yearRuns(controller, year, season))]
}

export function expandDays(
  controller: ScheduledController,
  days: readonly CalendarDay[],
  season?: WateringSeason
): Run[] {
  return [...runsOf(dayRuns(controller, days, season))]
}

function startsOn(program: ScheduledProgram, day: CalendarDay): boolean {
  return isInDates(day, program) && runsOn(program.days, day.day) && !isSuspended(day, program.suspensions)
}

/** The runs of a day on which some of the programs run, in order of opening. */
function dayPattern(controller: ScheduledController, running: readonly boolean[], month: number): DayPattern {
  const programs = controller.programs.filter((_, index) => running[index])
  return programs.flatMap(program => programPattern(controller, program, month)).sort((a, b) => a.startS - b.startS)
}

function programPattern(
  { stepS, delayS }: ScheduledController,
  program: ScheduledProgram,
  month: number
): PatternRun[] {
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
