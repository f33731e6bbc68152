import type { ScheduledProgram } from '../domain/schedule/controller.ts'
import type { DayRule } from '../domain/schedule/program.ts'
import { weekdaysOf } from '../domain/schedule/spacing.ts'
import type { SolveOf } from './advice-solve-of.ts'

type Dated = Pick<ScheduledProgram, 'days' | 'from' | 'to'>

/**
 * How many starts a controller has left for a program on its fullest day, `kept` of them put by for programs that are still to come.
 * Infinity where the sheet states no number. Programs count as running together wherever a weekday and a month are common to both.
 */
export function startsLeft(program: Dated, placed: readonly ScheduledProgram[], kept: number, of: SolveOf): number {
  const most = of.controller.sheet?.startsPerDay
  if (most === undefined) return Infinity
  const months = of.times.active(program).flatMap((days, index) => (days.length > 0 ? [index] : []))
  const taken = weekdaysOf(program.days).flatMap(weekday =>
    months.map(month => {
      const beside = placed.filter(one => mayRun(one, weekday, month, of) && mayShareADay(one.days, program.days))
      return beside.reduce((total, one) => total + one.starts.length, 0)
    })
  )
  return most - Math.max(0, ...taken) - kept
}

function mayRun(program: Dated, weekday: number, month: number, { times }: SolveOf): boolean {
  return weekdaysOf(program.days).includes(weekday) && (times.active(program)[month]?.length ?? 0) > 0
}

function mayShareADay(one: DayRule, other: DayRule): boolean {
  const kinds = [one.kind, other.kind]
  return !(kinds.includes('odd-dates') && kinds.includes('even-dates'))
}
