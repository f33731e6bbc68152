/** Least declination of the sun: 0.409 rad (FAO Irrigation and Drainage Paper 56, equation 24, 1998). */
const LEAST_DECLINATION_DEG = (0.409 * 180) / Math.PI

/**
 * Height of the sun at noon of the shortest day, in degrees above a flat horizon; negative where it does not rise. 54.97° north: 11.6°.
 * South is negative.
 */
export function winterNoonSunDeg(latitudeDeg: number): number {
  return 90 - Math.abs(latitudeDeg) - LEAST_DECLINATION_DEG
}

/** The three months round the shortest day, 1 to 12. On the equator the sun is high all year, and the months do not matter. */
export function darkestMonths(latitudeDeg: number): readonly number[] {
  return latitudeDeg < 0 ? [5, 6, 7] : [11, 12, 1]
}
