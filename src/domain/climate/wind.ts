/** A wind speed in m/s and the height in m that it was measured at. */
export interface Wind {
  readonly speedMPerS: number
  readonly heightM: number
}

/** FAO paper 56 (1998), chapter 3: 2 m/s where no wind is known, a mean over some 2000 stations; the text from memory. */
export const UNKNOWN_WIND_M_PER_S = 2

/** Lowest height that the logarithm of eq. 47 takes. */
export const LOWEST_WIND_HEIGHT_M = 0.1

/** Wind at 2 m over short grass, in m/s, FAO paper 56 (1998), eq. 47. 3.2 m/s at 10 m is 2.4 m/s. */
export function windAt2M({ speedMPerS, heightM }: Wind): number {
  if (heightM === 2) return speedMPerS
  return (speedMPerS * 4.87) / Math.log(67.8 * heightM - 5.42)
}
