import { sum } from '../base/collections.ts'
import { isInDates, isInSeason } from '../domain/schedule/active.ts'
import { percentIn } from '../domain/schedule/controller.ts'
import type { ScheduledController, ScheduledProgram } from '../domain/schedule/controller.ts'
import { monthlyMinutesWorked } from '../domain/schedule/monthly-minutes.ts'
import { runSequence } from '../domain/schedule/run-sequence.ts'
import { isSuspended } from '../domain/schedule/suspended.ts'
import { wateringDays } from '../domain/schedule/watering-days.ts'
import type { Site } from '../model/site.ts'
import { MONTHS, monthOf, yearOf } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import type { StationMonths, Working } from './plan.ts'

export interface ScheduleWorkingsOf {
  readonly site: Site
  readonly controller: string
  readonly scheduled: ScheduledController
  readonly months: readonly StationMonths[]
  readonly flowM3s: (station: number) => number | undefined
  readonly on: IsoDate
}

/**
 * How the figures of each program came about, for its month with most watering, or the month of `on` where it does not water:
 * the other months repeat the same arithmetic.
 */
export function scheduleWorkings(of: ScheduleWorkingsOf): Working[] {
  return of.scheduled.programs.flatMap(program => programWorkings(of, program))
}

function programWorkings(of: ScheduleWorkingsOf, program: ScheduledProgram): Working[] {
  const { site, controller, scheduled, months, flowM3s, on } = of
  const { stepS, delayS } = scheduled
  const month = peakMonth(months.filter(row => row.program === program.id)) ?? monthOf(on)
  const percent = percentIn(program, month)
  const about = `program ${program.id}, ${MONTHS[month - 1]}`
  const days = wateringDays(
    program.days,
    yearOf(on),
    month,
    day => isInSeason(day, site.season) && isInDates(day, program) && !isSuspended(day, program.suspensions)
  )
  const settings = { percent, stepS, starts: program.starts.length, days: days.value.days }
  const sequences = program.starts
    .slice(0, 1)
    .map(start => runSequence(start, program.stations, { percent, stepS, delayS }, site.units))
  return [
    { calculation: 'watering-days', subject: `${controller} ${about}`, steps: days.steps },
    ...sequences.map(({ steps }) => ({ calculation: 'run-sequence', subject: `${controller} ${about}`, steps })),
    ...program.stations.map(({ number, runTime }) => ({
      calculation: 'monthly-minutes',
      subject: `${controller}/${number} ${about}`,
      steps: monthlyMinutesWorked({ ...settings, runTime, flowM3s: flowM3s(number) }, site.units).steps
    }))
  ]
}

/** 1 to 12; undefined where nothing runs in any month. */
function peakMonth(rows: readonly StationMonths[]): number | undefined {
  const totals = MONTHS.map((_, index) => sum(rows.map(({ minutes }) => minutes[index] ?? 0)))
  const most = Math.max(...totals)
  return most > 0 ? totals.indexOf(most) + 1 : undefined
}
