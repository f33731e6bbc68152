import { groupBy, sortedBy, sum } from '../../base/collections.ts'
import type { OutsideDay, OutsideRun } from '../../domain/schedule/windows.ts'
import type { YearRuns } from '../../domain/schedule/year-runs.ts'
import { DAY_MINUTES, showClock, windowLength } from '../../units/clock.ts'
import type { Window } from '../../units/clock.ts'
import { roundedText } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'

/** One start of a program that waters outside the hours allowed. Minutes count from midnight of `day`. */
export interface StartOutside {
  readonly program: string
  readonly day: number
  readonly stations: readonly number[]
  readonly outsideMinutes: number
  readonly fromMinute: number
  readonly toMinute: number
  readonly startMinute: number
  /** From the start to the last closing, soaks and delays among it. */
  readonly lengthMinutes: number
  /** Of all starts of this program outside the hours. */
  readonly firstDay: number
}

/** For each program the start that is outside for longest, the earliest of those. `days` and `broken` are those of one controller. */
export function worstStarts(days: YearRuns, broken: readonly OutsideDay[]): readonly StartOutside[] {
  const worst = new Map<string, Worst>()
  const known = new Map<OutsideDay['runs'], readonly OutsideStart[]>()
  for (const { day, runs } of broken) {
    const starts = known.get(runs) ?? startsOutside(runs)
    known.set(runs, starts)
    for (const start of starts) {
      const before = worst.get(start.program)
      if (!before || start.minutes > before.start.minutes)
        worst.set(start.program, { day, start, firstDay: before?.firstDay ?? day })
    }
  }
  return [...worst.values()].map(one => startOutside(one, days))
}

interface Worst {
  readonly day: number
  readonly start: OutsideStart
  readonly firstDay: number
}

interface OutsideStart {
  readonly program: string
  readonly programStartS: number
  readonly minutes: number
  readonly parts: readonly OutsideRun[]
}

function startsOutside(runs: readonly OutsideRun[]): OutsideStart[] {
  return [...groupBy(runs, ({ run }) => `${run.program} ${run.programStartS}`).values()].flatMap(parts => {
    const [first] = parts
    if (!first) return []
    const { program, programStartS } = first.run
    return [{ program, programStartS, minutes: sum(parts.map(one => one.outsideMinutes)), parts }]
  })
}

function startOutside({ day, start, firstDay }: Worst, days: YearRuns): StartOutside {
  const { program, programStartS, minutes, parts } = start
  const pattern = days.find(one => one.day === day)?.pattern ?? []
  const whole = pattern.filter(one => one.program === program && one.programStartS === programStartS)
  const endS = Math.max(...whole.map(one => one.startS + one.durationS))
  return {
    program,
    day,
    firstDay,
    stations: [...new Set(parts.map(one => one.run.station))].sort((a, b) => a - b),
    outsideMinutes: minutes,
    fromMinute: Math.min(...parts.map(one => one.fromS)) / 60,
    toMinute: Math.max(...parts.map(one => one.toS)) / 60,
    startMinute: programStartS / 60,
    lengthMinutes: (endS - programStartS) / 60
  }
}

/** "station 1 waters from 05:00 to 05:10", "stations 1 and 2 water between 05:00 and 05:40". */
export function watersWhen({ stations, fromMinute, toMinute }: StartOutside, system: UnitSystem): string {
  const [from, to] = [showClock(fromMinute, system), showClock(toMinute, system)]
  const names = stations.map(String)
  if (from === to) return `station ${names[0]} still waters ${minutesText(toMinute - fromMinute)} past ${from}`
  if (names.length === 1) return `station ${names[0]} waters from ${from} to ${to}`
  return `stations ${names.slice(0, -1).join(', ')} and ${names.at(-1)} water between ${from} and ${to}`
}

/** When to start instead, or by how much to shorten. `clockIsOff`: the controller's clock is not the one that the rule goes by. */
export function howToFit(
  start: StartOutside,
  allowed: readonly Window[],
  system: UnitSystem,
  clockIsOff: boolean
): string {
  const { lengthMinutes, startMinute } = start
  const windows = sortedBy(
    allowed,
    one => (holds(one, startMinute) ? 0 : 1),
    one => -windowLength(one)
  )
  const fitting = windows.find(one => lengthMinutes <= windowLength(one) + 1e-6)
  const clock = (minute: number) => showClock(minute, system)
  if (fitting) {
    // A whole minute that still leaves room to the end.
    const latest = Math.floor(fitting.from + windowLength(fitting) - lengthMinutes + 1e-6)
    const span = latest === fitting.from ? `at ${clock(latest)}` : `between ${clock(fitting.from)} and ${clock(latest)}`
    return `It lasts ${minutesText(lengthMinutes)}: start it ${span}${clockIsOff ? ' by the legal clock' : ''}.`
  }
  const longest = sortedBy(allowed, one => -windowLength(one))[0]
  if (!longest) return 'Take it out: no hour is allowed.'
  const over = Math.ceil(lengthMinutes - windowLength(longest) - 1e-6)
  return `It lasts ${minutesText(lengthMinutes)}, ${over}\u00a0min more than the hours allow: shorten it by that and start at ${clock(longest.from)}, or spread it over more days.`
}

function holds({ from, to }: Window, minute: number): boolean {
  const since = (((minute - from) % DAY_MINUTES) + DAY_MINUTES) % DAY_MINUTES
  return since < windowLength({ from, to })
}

/** "12 min", "5 s". */
export function minutesText(minutes: number): string {
  return minutes < 1 ? `${roundedText(minutes * 60, 1)}\u00a0s` : `${roundedText(minutes, 1)}\u00a0min`
}
