import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { wholeDown, wholeUp } from './whole-up.ts'

/** Longest cycle in s, or that none is too long. */
export type LongestCycle = number | 'no limit'

export interface CycleSplit {
  readonly cycles: number
  readonly cycleS: number
  /** Between the end of one cycle and the start of the next. */
  readonly soakS: number
  /** From the first start to the last end. */
  readonly elapsedS: number
}

/**
 * How long water may run before it runs off: what the surface holds, over what comes faster than the soil takes it. Where the soil takes it as
 * fast as it comes there is no limit; the difference must not be made positive, or a slow rate would get a limit that means nothing.
 */
export function longestCycleS(rateMPerS: number, intakeMPerS: number, surfaceM: number): LongestCycle {
  const excess = rateMPerS - intakeMPerS
  return excess > 0 ? surfaceM / excess : 'no limit'
}

/** Time in s that the soil takes for what stands on it (from memory): the shortest soak. */
export function soakS(surfaceM: number, intakeMPerS: number): number {
  return surfaceM / intakeMPerS
}

/**
 * A run split into equal cycles, none longer than the longest, each rounded up to the controller's step: no depth is lost, and rounding never
 * pushes a cycle over the limit. Absent where the limit is shorter than one step, or the run or the step is not more than zero.
 */
export function splitCycles(totalS: number, longest: LongestCycle, soak: number, stepS: number): Maybe<CycleSplit> {
  if (!(totalS > 0)) return absent('the run time must be more than zero')
  if (!(stepS > 0)) return absent('the step of run times must be more than zero')
  const mostS = longest === 'no limit' ? Infinity : wholeDown(longest, stepS)
  if (mostS <= 0) return absent('the longest cycle is shorter than the step of run times')
  const cycles = wholeUp(totalS / mostS, 1) || 1
  const cycleS = wholeUp(totalS / cycles, stepS)
  const soakBetween = cycles > 1 ? soak : 0
  return { cycles, cycleS, soakS: soakBetween, elapsedS: cycles * cycleS + (cycles - 1) * soakBetween }
}
