import { percentIn } from '../../domain/schedule/controller.ts'
import { wholeDown } from '../../domain/water/whole-up.ts'
import type { Controller, Recorded, Site, Station } from '../../model/site.ts'
import type { SetRun } from '../../plan/plan.ts'
import { scheduledController } from '../../plan/schedules.ts'
import { show } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import { monthName } from './month-name.ts'

/** "25 min", "2 × 12 min in July at 80 %": the month only where its percent changes what the program has written. */
export function setRunText(
  run: SetRun,
  cycles: number,
  controller: Controller | undefined,
  system: UnitSystem
): string {
  const program = controller?.programs.find(one => one.id === run.program)
  const percent = program ? percentIn(program, run.month) : 1
  const when = percent === 1 ? '' : ` in ${monthName(run.month)} at ${show(percent, 'percent', system)}`
  const each = show(run.seconds / cycles, 'minutes', system)
  return `${cycles === 1 ? '' : `${cycles} × `}${each}${when}`
}

/** Where the run time of a station is written; the station itself where no program has it. */
export function runWritten(run: SetRun, station: Station, controller: Controller | undefined): Recorded {
  const program = controller?.programs.find(one => one.id === run.program)
  return program?.stations.find(one => one.number === station.number) ?? station
}

export function stepOf(site: Site, controller: Controller): number {
  return scheduledController(site, controller).stepS
}

/** The longest that the controller can be set to without passing a limit; 0 where a step of it is too long. */
export const mostSet = (longestS: number, stepS: number): number => Math.max(0, wholeDown(longestS, stepS))
