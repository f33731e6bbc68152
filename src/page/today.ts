import type { ScriptController } from '../binder/pages.ts'
import { groupBy } from '../base/collections.ts'
import { showClock } from '../units/clock.ts'
import { epochDay, fromEpochDay } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { namedDay } from './local-day.ts'
import { nextOpening, openingsOn } from './runs.ts'
import type { Opening } from './runs.ts'
import { fill } from './words.ts'
import type { ScriptWords } from './words.ts'

/** What a controller does on the day the page is read, one line a station; where it does nothing, when it runs next. */
export function todayLines(controller: ScriptController, today: IsoDate, words: ScriptWords): string[] {
  if (controller.outOfService !== undefined) return [fill(words['outOfService'])]
  const openings = openingsOn(controller, epochDay(today))
  if (openings.length === 0) return [fill(words['noRun']), nextLine(controller, today, words)]
  const stations = [...groupBy(openings, ({ program, station }) => `${program} ${station}`).values()]
  return stations.map(own => stationLine(own, controller, words))
}

/** "A · 3 Z3 · meadow: 23:10–23:16, 23:46–23:52" */
function stationLine(openings: readonly Opening[], { units }: ScriptController, words: ScriptWords): string {
  const [first] = openings
  const times = openings.map(({ fromS, toS }) => `${showClock(fromS / 60, units)}–${showClock(toS / 60, units)}`)
  const station = { program: first?.program ?? '', number: first?.station ?? '', waters: first?.waters ?? '' }
  return fill(words['stationRuns'], { ...station, times: times.join(', ') })
}

function nextLine(controller: ScriptController, today: IsoDate, words: ScriptWords): string {
  const next = nextOpening(controller, epochDay(today))
  if (!next) return fill(words['never'])
  const time = showClock(next.first.fromS / 60, controller.units)
  return fill(words['next'], { date: namedDay(fromEpochDay(next.day), words), time })
}
