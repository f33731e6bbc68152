import type { Block, FigureSpec } from './blocks.ts'
import type { PageContext } from './context.ts'
import { sequenceProgram } from '../domain/schedule/sequence.ts'
import { DEFAULT_STEP_S } from '../domain/schedule/controller.ts'
import { DAY_MINUTES, showClock } from '../units/clock.ts'
import type { Window } from '../units/clock.ts'
import type { Controller, Station } from '../model/site.ts'

const NOON = 720
const HOURS_APART = 3

type Strip = Extract<FigureSpec, { figure: 'day-strip' }>

/** One watering day from noon to noon, so that a night's watering is in one piece. Undefined where no program is written. */
export function dayStrip(controllers: readonly Controller[], { site, words }: PageContext): Block | undefined {
  const lanes = controllers.flatMap(controller => lanesOf(controller, site.stations, controllers.length > 1))
  if (lanes.length === 0) return undefined
  const w = words.binder.controllers
  const [first] = controllers
  const one = controllers.length === 1 && first ? first.id : undefined
  const figure: Strip = {
    figure: 'day-strip',
    title: one === undefined ? w.allStripTitle : w.stripTitle(one),
    fromMinute: NOON,
    toMinute: NOON + DAY_MINUTES,
    hours: hourMarks(site.units),
    windows: site.wateringRules.flatMap(rule => rule.windows.flatMap(window => windowBands(window, w.window))),
    lanes
  }
  return { kind: 'figure', figure, caption: one === undefined ? w.allStrip : w.strip(one) }
}

function lanesOf(controller: Controller, stations: readonly Station[], several: boolean): Strip['lanes'] {
  const bars = controller.programs.flatMap(program => {
    const sequence = sequenceProgram(program.stations, {
      percent: 1,
      stepS: controller.sheet?.runTimeStep?.si ?? DEFAULT_STEP_S,
      delayS: controller.delayBetweenStations?.si ?? 0
    })
    return program.starts.flatMap(start =>
      sequence.map(({ station, startS, durationS }) => ({
        station,
        program: program.id,
        from: afterNoon(start + startS / 60),
        length: durationS / 60
      }))
    )
  })
  const numbers = [...new Set(bars.map(bar => bar.station))].sort((a, b) => a - b)
  return numbers.map(number => {
    const zone = stations.find(one => one.controller === controller.id && one.number === number)?.zone
    return {
      label: laneLabel(controller, number, zone, several),
      bars: bars
        .filter(bar => bar.station === number)
        .map(bar => ({ from: bar.from, to: bar.from + bar.length, label: bar.program }))
    }
  })
}

/** A minute of the clock on a scale that runs from noon (720) to noon (2160). */
function afterNoon(minute: number): number {
  const clock = minute % DAY_MINUTES
  return clock < NOON ? clock + DAY_MINUTES : clock
}

function windowBands(window: Window, label: string): { from: number; to: number; label: string }[] {
  const from = afterNoon(window.from)
  const length = window.to > window.from ? window.to - window.from : window.to - window.from + DAY_MINUTES
  const end = NOON + DAY_MINUTES
  if (from + length <= end) return [{ from, to: from + length, label }]
  return [
    { from, to: end, label },
    { from: NOON, to: NOON + (from + length - end), label }
  ]
}

function hourMarks(units: 'us' | 'metric'): { minute: number; label: string }[] {
  const marks = []
  for (let minute = NOON; minute <= NOON + DAY_MINUTES; minute += HOURS_APART * 60) {
    marks.push({ minute, label: showClock(minute % DAY_MINUTES, units) })
  }
  return marks
}

function laneLabel(controller: Controller, number: number, zone: string | undefined, several: boolean): string {
  const station = `${controller.id}/${number}`
  if (zone === undefined || zone === station) return station
  if (zone === controller.id) return station
  return several ? `${station} · ${zone}` : `${number} · ${zone}`
}
