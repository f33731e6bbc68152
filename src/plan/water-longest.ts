import type { Controller } from '../model/site.ts'
import type { SetRun, StationMonths, WaterPlan } from './plan.ts'

/** The longest cycle and the longest watering that the rows of a station give over the year, each in the first month that has it. */
export function longestSet(controller: Controller, rows: readonly StationMonths[]): WaterPlan['longestSet'] {
  const waterings = rows.flatMap(row => wateringsOf(controller, row))
  const cycles = waterings.map(one => ({ ...one, seconds: one.seconds / one.cycles }))
  const [cycle, watering] = [longest(cycles), longest(waterings)]
  return cycle && watering && { cycle, watering }
}

/** What one start gives in each month in which the row waters. */
function wateringsOf(controller: Controller, row: StationMonths): SetRun[] {
  const program = controller.programs.find(one => one.id === row.program)
  const cycles = program?.stations.find(one => one.number === row.station)?.runTime.cycles
  if (!program || cycles === undefined) return []
  return row.minutesPerDay.flatMap((minutes, index) =>
    minutes > 0 && (row.days[index] ?? 0) > 0
      ? [{ program: program.id, month: index + 1, seconds: (minutes * 60) / program.starts.length, cycles }]
      : []
  )
}

function longest(all: readonly SetRun[]): SetRun | undefined {
  return all.reduce<SetRun | undefined>((most, one) => (most && most.seconds >= one.seconds ? most : one), undefined)
}
