import type { ScriptController } from '../binder/pages.ts'
import { groupBy } from '../base/collections.ts'
import { stationMonths } from '../domain/schedule/months.ts'
import { showClock } from '../units/clock.ts'
import { epochDay, fromEpochDay, monthOf, yearOf } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { namedDay } from './local-day.ts'
import { nextStarts, openingsOn } from './runs.ts'
import type { Opening } from './runs.ts'
import { fill } from './words.ts'
import type { ScriptWords } from './words.ts'

/**
 * What a controller does on the day the page is read, one line a station, and when each station opens next where that is not still to come
 * today. `nowS` is the time of day, seconds from midnight.
 */
export function todayLines(controller: ScriptController, today: IsoDate, words: ScriptWords, nowS = 0): string[] {
  if (controller.outOfService !== undefined) return [fill(words['outOfService'])]
  const day = epochDay(today)
  const openings = openingsOn(controller, day)
  const stations = [...groupBy(openings, ({ program, station }) => `${program} ${station}`).values()]
  const next = nextStarts(controller, day, nowS)
  const later = next.filter(one => one.day > day).map(one => nextLine(one.day, one.first, controller, words))
  return [
    ...(stations.length > 0 ? stations.map(own => stationLine(own, controller, words)) : [fill(words['noRun'])]),
    ...(next.length > 0 ? later : [fill(words['never'])])
  ]
}

/** What each station gets in the month of `today`, by the same sum as the binder's. */
export function monthLine(controller: ScriptController, today: IsoDate, words: ScriptWords): string[] {
  if (controller.outOfService !== undefined) return []
  const scheduled = { programs: controller.programs, stepS: controller.stepS, delayS: controller.delayBetweenStationsS }
  const minutes = new Map<number, number>()
  for (const row of stationMonths(scheduled, yearOf(today), controller.season ? { season: controller.season } : {}))
    minutes.set(row.station, (minutes.get(row.station) ?? 0) + (row.minutes[monthOf(today) - 1] ?? 0))
  if (minutes.size === 0) return []
  const told = [...minutes]
    .filter(([, sum]) => sum > 0)
    .sort(([a], [b]) => a - b)
    .map(([number, sum]) => fill(words['ofStation'], { number, minutes: Math.round(sum) }))
  return [fill(words['month'], { stations: told.join(' · ') || fill(words['dry']) })]
}

/** "A · 3 Z3 · meadow: 23:10–23:16, 23:46–23:52" */
function stationLine(openings: readonly Opening[], { units }: ScriptController, words: ScriptWords): string {
  const [first] = openings
  const times = openings.map(({ fromS, toS }) => `${showClock(fromS / 60, units)}–${showClock(toS / 60, units)}`)
  const station = { program: first?.program ?? '', number: first?.station ?? '', waters: first?.waters ?? '' }
  return fill(words['stationRuns'], { ...station, times: times.join(', ') })
}

function nextLine(
  day: number,
  { program, station, waters, fromS }: Opening,
  { units }: ScriptController,
  words: ScriptWords
): string {
  const time = showClock(fromS / 60, units)
  return fill(words['next'], { program, number: station, waters, date: namedDay(fromEpochDay(day), words), time })
}
