import { DAY_MINUTES } from '../../units/clock.ts'
import type { Window } from '../../units/clock.ts'
import type { EpochDay } from '../../units/date.ts'
import { runsOn } from './days.ts'
import type { DayRule, Run } from './program.ts'
import { closingS, DAY_S, openingS } from './run-times.ts'

/** A run with the part of it that a rule does not allow. Seconds count from midnight of the run's own day. */
export interface OutsideRun {
  readonly run: Run
  readonly outsideMinutes: number
  /** Start of the first stretch that is not allowed, and end of the last one. */
  readonly fromS: number
  readonly toS: number
}

/**
 * Runs that water outside the allowed windows of the clock, in the order given. Windows may cross midnight, meet and overlap;
 * closing at the very end of a window is inside it. Without any window every hour is allowed.
 */
export function outsideWindow(runs: readonly Run[], windows: readonly Window[]): OutsideRun[] {
  if (windows.length === 0) return []
  const barred = barredStretches(windows)
  if (barred.length === 0) return []
  return outside(runs, day => barred.map(([fromS, toS]) => [day * DAY_S + fromS, day * DAY_S + toS]))
}

/**
 * Runs that water on a day the rule does not name, by the calendar day on which the water flows: a run that opens at 23:30 on an
 * even date and closes at 00:05 is 5 minutes outside even dates.
 */
export function outsideDays(runs: readonly Run[], rule: DayRule): OutsideRun[] {
  return outside(runs, day => (runsOn(rule, day) ? [] : [[day * DAY_S, (day + 1) * DAY_S]]))
}

/**
 * What forbidden hours leave of the day, as windows in which watering is allowed: 10:00-16:00 leaves 16:00-10:00. None where they
 * forbid the whole day.
 */
export function hoursLeft(barred: readonly Window[]): Window[] {
  const left = barredStretches(barred).map(([fromS, toS]) => ({ from: fromS / 60, to: (toS / 60) % DAY_MINUTES }))
  const [first, last] = [left[0], left.at(-1)]
  if (!first || !last || first === last || first.from !== 0 || last.to !== 0) return left
  return [...left.slice(1, -1), { from: last.from, to: first.to }]
}

type Stretch = readonly [fromS: number, toS: number]

/** `barredOn` gives the stretches of one calendar day that are not allowed, in order, in seconds since 1970-01-01. */
function outside(runs: readonly Run[], barredOn: (day: EpochDay) => readonly Stretch[]): OutsideRun[] {
  const known = new Map<EpochDay, readonly Stretch[]>()
  const barred = (day: EpochDay) => {
    const stretches = known.get(day) ?? barredOn(day)
    known.set(day, stretches)
    return stretches
  }
  const found: OutsideRun[] = []
  for (const run of runs) {
    const [opensS, closesS] = [openingS(run), closingS(run)]
    const parts: Stretch[] = []
    for (let day = Math.floor(opensS / DAY_S); day * DAY_S < closesS; day += 1)
      for (const [fromS, toS] of barred(day))
        if (fromS < closesS && toS > opensS) parts.push([Math.max(fromS, opensS), Math.min(toS, closesS)])
    if (parts.length > 0) found.push(outsideRun(run, parts))
  }
  return found
}

function outsideRun(run: Run, parts: readonly Stretch[]): OutsideRun {
  const midnightS = run.day * DAY_S
  const seconds = parts.reduce((total, [fromS, toS]) => total + toS - fromS, 0)
  const [fromS, toS] = [(parts[0]?.[0] ?? 0) - midnightS, (parts.at(-1)?.[1] ?? 0) - midnightS]
  return { run, outsideMinutes: seconds / 60, fromS, toS }
}

/** What the windows leave of a day, in seconds after midnight, in order. */
function barredStretches(windows: readonly Window[]): Stretch[] {
  const allowed = windows.flatMap(withinDay).sort((a, b) => a.from - b.from)
  const barred: Stretch[] = []
  let reached = 0
  for (const { from, to } of [...allowed, { from: DAY_MINUTES, to: DAY_MINUTES }]) {
    if (from > reached) barred.push([reached * 60, from * 60])
    reached = Math.max(reached, to)
  }
  return barred
}

/** A window as one or two stretches of one day. */
function withinDay({ from, to }: Window): Window[] {
  if (to > from) return [{ from, to }]
  return [
    { from, to: DAY_MINUTES },
    { from: 0, to }
  ]
}
