export interface LatLon {
  readonly latitude: number
  readonly longitude: number
}

/** Mean radius of the earth, m: IUGG mean radius R1, 6 371 008.8 m (Moritz, Geodetic Reference System 1980, J. Geodesy 74, 2000). */
const EARTH_M = 6_371_008.8

/**
 * Straight distance over the ground, m, on a sphere: off by at most half a percent against the ellipsoid. The haversine form, which keeps its digits
 * for near points (R. W. Sinnott, Virtues of the Haversine, Sky and Telescope 68, 1984, from memory).
 */
export function distanceM(a: LatLon, b: LatLon): number {
  const rad = (degrees: number) => (degrees * Math.PI) / 180
  const half = (angle: number) => Math.sin(angle / 2) ** 2
  const h =
    half(rad(b.latitude - a.latitude)) +
    Math.cos(rad(a.latitude)) * Math.cos(rad(b.latitude)) * half(rad(b.longitude - a.longitude))
  return 2 * EARTH_M * Math.asin(Math.min(1, Math.sqrt(h)))
}
