import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'

/** Water that soil or substrate holds for plants over a depth: m of water from m of water in a m of depth, times m. */
export const availableWaterM = (capacity: number, depthM: number): number => capacity * depthM

/** What may be used of it before watering, and so the most that one watering can usefully put on. `share` is a fraction. */
export const allowableM = (availableM: number, share: number): number => availableM * share

/**
 * Whole days that the reservoir lasts at a need in m a day, rounded down. Absent where the need is not more than zero, as then nothing sets an
 * interval. 1.84 in at 0.125 in a day: 14 days.
 */
export function longestIntervalDays(allowedM: number, needMPerDay: number): Maybe<number> {
  if (!(needMPerDay > 0)) return absent('nothing is needed, so nothing sets an interval')
  return Math.floor(allowedM / needMPerDay + 1e-9)
}

/** Longest run in s that the reservoir takes up; what comes after drains away. */
export const longestRunS = (allowedM: number, rateMPerS: number): number => allowedM / rateMPerS
