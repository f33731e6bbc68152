import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { sum } from '../../base/collections.ts'

/** Fewer cans have no quarter. */
export const FEWEST_CANS = 4

export interface Uniformity {
  /** Mean of the lowest quarter over the mean of all. */
  readonly lowQuarter: number
  /** Mean of the lower half over the mean of all. */
  readonly lowHalf: number
  /** Christiansen: 1 − mean deviation / mean. */
  readonly christiansen: number
  readonly mean: number
  readonly quarterCans: number
  readonly quarterMean: number
  readonly halfCans: number
  readonly halfMean: number
}

/**
 * How many cans are a quarter or a half: the nearest whole number, the upper one where both are as near. 15 cans: 4 and 8. 10 cans: 3 and 5.
 * Dropping the fraction instead would give 3 of 15, and 40 % where 50 % was measured.
 */
export function lowestCans(cans: number, share: 0.25 | 0.5): number {
  return Math.floor(cans * share + 0.5)
}

/** Uniformity of a row of catches, in any one unit. Absent with fewer than four cans, a catch below zero, or nothing caught at all. */
export function uniformity(catches: readonly number[]): Maybe<Uniformity> {
  if (catches.length < FEWEST_CANS) return absent(`a quarter wants ${FEWEST_CANS} cans at least`)
  if (catches.some(one => !(one >= 0))) return absent('a can cannot hold less than nothing')
  const mean = average(catches)
  if (mean === 0) return absent('the cans are all empty')
  const sorted = catches.toSorted((a, b) => a - b)
  const quarterCans = lowestCans(sorted.length, 0.25)
  const halfCans = lowestCans(sorted.length, 0.5)
  const quarterMean = average(sorted.slice(0, quarterCans))
  const halfMean = average(sorted.slice(0, halfCans))
  return {
    lowQuarter: quarterMean / mean,
    lowHalf: halfMean / mean,
    christiansen: 1 - average(catches.map(one => Math.abs(one - mean))) / mean,
    mean,
    quarterCans,
    quarterMean,
    halfCans,
    halfMean
  }
}

/** What a need is multiplied by so that the dry part gets enough: 1 / (0.4 + 0.6 DULQ), DULQ as a fraction. 0.80 gives 1.136. */
export function scheduleMultiplier(lowQuarter: number): number {
  return 1 / (0.4 + 0.6 * lowQuarter)
}

/** Rate in m/s from the mean catch in m and the time in s. */
export function catchRateMPerS(meanDepthM: number, timeS: number): number {
  return meanDepthM / timeS
}

/** Depth in m from a volume in m³ caught in a can with a throat of so many m². */
export function catchDepthM(volumeM3: number, throatM2: number): number {
  return volumeM3 / throatM2
}

const average = (values: readonly number[]): number => sum(values) / values.length
