/** Keeps a product such as 0.35 × 30 min, half a step by hand, from falling under the half in binary. */
const HALF_UP = 0.5 + 1e-9

/**
 * One cycle at a month's percent, in whole steps of the controller, half a step up. At 100 % the time stands as written, and
 * at 0 % or less nothing runs. 25 min at 51 % in steps of 1 min is 13 min.
 */
export function adjustedCycleS(cycleS: number, percent: number, stepS: number): number {
  if (percent === 1) return cycleS
  if (percent <= 0) return 0
  return Math.floor((cycleS * percent) / stepS + HALF_UP) * stepS
}
