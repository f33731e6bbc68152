import { closingS, DAY_S } from './run-times.ts'
import type { EpochDay } from '../../units/date.ts'
import { dayGroups } from './day-groups.ts'
import type { DayGroup } from './day-groups.ts'
import type { Run } from './program.ts'
import { runsOf } from './year-runs.ts'
import type { YearRuns } from './year-runs.ts'

/** Two start times of one controller, the second while the first still runs. Seconds count from midnight of `day`. */
export interface Overlap {
  /** First day on which the two meet. */
  readonly firstDay: EpochDay
  /** How many times in the runs looked at. */
  readonly times: number
  /** Day of the earlier start where they meet for longest; the figures below are of that day. */
  readonly day: EpochDay
  readonly program: string
  readonly startS: number
  /** When the last valve of the earlier start shuts. */
  readonly endS: number
  readonly nextProgram: string
  /** May pass 86,400: a start after midnight. */
  readonly nextStartS: number
  readonly minutesOver: number
}

interface Start {
  readonly day: EpochDay
  readonly program: string
  readonly beginS: number
  /** The run that opens it: seen again at the same time, it is a second start time set to the same minute. */
  readonly first: Run
  /** Shared by starts of one program at one time, whose runs cannot be told apart. */
  readonly last: { endS: number }
}

/**
 * Start times that meet a run still going, each pair once, in the order they first meet. `days` are those of one controller. A start at
 * the very second the last valve shuts is no overlap. Starts 06:00 and 07:00 of six stations at 12 min each: 12 minutes over.
 */
export function overlaps(days: YearRuns): Overlap[] {
  const pairs = new Map<string, Overlap>()
  const known = new Map<string, readonly Overlap[]>()
  for (const group of dayGroups([days])) {
    const met = known.get(group.key) ?? overlapsWithin(runsWithin(group))
    known.set(group.key, met)
    for (const one of met) count(pairs, one, group.firstDay)
  }
  return [...pairs.values()]
}

/** Days of a group count from its first. */
function runsWithin({ patterns }: DayGroup): readonly Run[] {
  return [...runsOf(patterns.flatMap(([pattern], day) => (pattern ? [{ day, pattern }] : [])))]
}

function count(pairs: Map<string, Overlap>, within: Overlap, firstDay: EpochDay): void {
  const key = JSON.stringify([within.program, within.startS, within.nextProgram, within.nextStartS])
  const known = pairs.get(key)
  const times = (known?.times ?? 0) + within.times
  if (known && known.minutesOver >= within.minutesOver) pairs.set(key, { ...known, times })
  else {
    const day = firstDay + within.day
    pairs.set(key, { ...within, day, times, firstDay: known?.firstDay ?? firstDay + within.firstDay })
  }
}

/** Of one group. */
function overlapsWithin(runs: readonly Run[]): Overlap[] {
  const pairs = new Map<string, Overlap>()
  let going: Start[] = []
  for (const start of startsOf(runs)) {
    going = going.filter(({ last }) => last.endS > start.beginS)
    for (const earlier of going) addPair(pairs, earlier, start)
    going.push(start)
  }
  return [...pairs.values()]
}

/** The starts behind a list of runs, with the last closing of each, by time of start. */
function startsOf(runs: readonly Run[]): Start[] {
  const programs = new Map<string, Map<number, Start>>()
  const starts: Start[] = []
  for (const run of runs) {
    const known = programs.get(run.program) ?? new Map<number, Start>()
    programs.set(run.program, known)
    const beginS = run.day * DAY_S + run.programStartS
    const start = known.get(beginS)
    const last = start?.last ?? { endS: -Infinity }
    last.endS = Math.max(last.endS, closingS(run))
    if (start && !opensAgain(start, run)) continue
    const fresh = { day: run.day, program: run.program, beginS, first: run, last }
    known.set(beginS, fresh)
    starts.push(fresh)
  }
  return starts.sort((a, b) => a.beginS - b.beginS)
}

function opensAgain({ first }: Start, run: Run): boolean {
  return run.station === first.station && run.cycle === first.cycle
}

function addPair(pairs: Map<string, Overlap>, earlier: Start, later: Start): void {
  const midnightS = earlier.day * DAY_S
  const [startS, nextStartS] = [earlier.beginS - midnightS, later.beginS - midnightS]
  const key = JSON.stringify([earlier.program, startS, later.program, nextStartS])
  const known = pairs.get(key)
  const minutesOver = (earlier.last.endS - later.beginS) / 60
  const times = (known?.times ?? 0) + 1
  const firstDay = known?.firstDay ?? earlier.day
  if (known && known.minutesOver >= minutesOver) pairs.set(key, { ...known, times })
  else {
    const { day, program } = earlier
    const endS = earlier.last.endS - midnightS
    pairs.set(key, { firstDay, times, day, program, startS, endS, nextProgram: later.program, nextStartS, minutesOver })
  }
}
