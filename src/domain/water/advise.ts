import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { adjustedCycleS } from '../schedule/adjust.ts'
import type { RunTime } from '../schedule/program.ts'
import { atLeast, atMost } from '../within.ts'
import { splitCycles } from './cycle-soak.ts'
import type { LongestCycle } from './cycle-soak.ts'
import { wholeDown, wholeUp } from './whole-up.ts'

/** What a cycle of a zone must keep to, in s. */
export interface CycleLimits {
  /** Before water runs off. */
  readonly longestCycle: LongestCycle
  /** Rest between two cycles. */
  readonly soakS: number
  /** What the controller can be set to, at the least and at the most; its step. */
  readonly leastS: number
  readonly mostS: number
  readonly stepS: number
  /** Cycles that somebody chose before, kept where they are enough: 1 where nobody did. */
  readonly leastCycles: number
}

/** Shortest soak between two cycles, s: 30 to 60 min. Common practice, no source. */
export const LEAST_SOAK_S = 1800

/**
 * One watering as it is keyed in: as many cycles as the soil and the controller ask for, each rounded up to the step, the soak to the minute.
 * 25 min where water runs off after 12.9 min: 3 × 9 min. Absent where no cycle that short can be set.
 */
export function advisedRun(eventS: number, limits: CycleLimits): Maybe<RunTime> {
  const { longestCycle, mostS, leastS, stepS } = limits
  const bound = longestCycle === 'no limit' ? mostS : Math.min(longestCycle, mostS)
  const shortest = Math.max(wholeUp(leastS, stepS), stepS)
  if (!atMost(shortest, wholeDown(bound, stepS)))
    return absent('the longest cycle before water runs off is shorter than the controller can be set to')
  const split = splitCycles(eventS, bound === Infinity ? 'no limit' : bound, limits.soakS, stepS)
  if (isAbsent(split)) return split
  const kept = Math.max(split.cycles, limits.leastCycles)
  const cycles = atLeast(eventS / kept, shortest) ? kept : split.cycles
  const cycleS = Math.max(wholeUp(eventS / cycles, stepS), shortest)
  return { cycles, cycleS, soakS: cycles > 1 ? wholeUp(limits.soakS, 60) : 0 }
}

/** A cycle of a program and what it must come to in a month. */
export interface CycleInMonth {
  readonly cycleS: number
  readonly neededS: number
}

/**
 * A whole percent, as a fraction, at which no cycle of a program falls short of what its month needs after the controller has rounded it to its
 * step, and none is longer than it must be: of those that come to the same minutes 100, a multiple of 10 or of 5, else the smallest. 20 min
 * of which 10.2 are needed, in steps of a minute: 55 %, which gives 11 min.
 */
export function advisedPercent(cycles: readonly CycleInMonth[], stepS: number): number {
  const wanted = cycles.filter(one => one.neededS > 0)
  if (wanted.length === 0) return 0
  const givenAt = (percent: number) => wanted.map(one => adjustedCycleS(one.cycleS, percent / 100, stepS))
  const isEnough = (given: readonly number[]) =>
    wanted.every(({ neededS }, index) => atLeast(given[index] ?? 0, neededS))
  const shares = wanted.map(one => (one.neededS - stepS) / one.cycleS)
  let least = Math.min(100, Math.max(1, Math.floor(Math.max(...shares) * 100)))
  while (least < 100 && !isEnough(givenAt(least))) least += 1
  return roundest(least, percent => givenAt(percent).join() === givenAt(least).join()) / 100
}

function roundest(least: number, isSame: (percent: number) => boolean): number {
  if (isSame(100)) return 100
  const same: number[] = []
  for (let percent = least; percent <= 100 && isSame(percent); percent += 1) same.push(percent)
  return same.find(one => one % 10 === 0) ?? same.find(one => one % 5 === 0) ?? least
}
