import type { EpochDay } from '../../units/date.ts'
import { daysFrom } from './calendar-days.ts'
import type { ScheduledController, WateringSeason } from './controller.ts'
import { dayRuns } from './expand-year.ts'
import type { Run } from './program.ts'
import { DAY_S, openingS } from './run-times.ts'
import { runsOf } from './year-runs.ts'

/** Looked through at a time, so that in season nothing beyond the next weeks is worked out. */
const CHUNK_DAYS = 30
/** A season comes round within a year; every 30 days past it still finds three. */
const CHUNKS = 16

/**
 * The next openings of each station from the beginning of a day on, so many of each, in order; a program that started the evening before
 * counts with what it opens after midnight. A station that does not open within sixteen months is not in the map.
 */
export function nextOpenings(
  controller: ScheduledController,
  season: WateringSeason | undefined,
  onDay: EpochDay,
  count: number
): ReadonlyMap<number, readonly Run[]> {
  const next = new Map<number, Run[]>()
  const stations = new Set(controller.programs.flatMap(program => program.stations.map(({ number }) => number)))
  const isDone = () => [...stations].every(number => (next.get(number)?.length ?? 0) >= count)
  for (let chunk = 0; chunk < CHUNKS && !isDone(); chunk += 1) {
    const days = daysFrom(onDay - 1 + chunk * CHUNK_DAYS, CHUNK_DAYS)
    for (const run of runsOf(dayRuns(controller, days, season)))
      if (openingS(run) >= onDay * DAY_S) next.set(run.station, [...(next.get(run.station) ?? []), run])
  }
  return new Map([...next].map(([number, runs]) => [number, inOrder(runs).slice(0, count)]))
}

/** The last evening of one stretch of days and the first night of the next may change places. */
function inOrder(runs: readonly Run[]): Run[] {
  return [...runs].sort((a, b) => openingS(a) - openingS(b))
}
