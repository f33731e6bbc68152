import { solarDay } from '../climate/solar-geometry.ts'

/** How a surface stands: `tiltDeg` from level toward the noon sun. */
export interface Surface {
  readonly latitudeDeg: number
  /** 1 to 366. */
  readonly dayOfYear: number
  readonly tiltDeg: number
  /** What the ground throws back: 0.2 for bare ground and grass, 0.7 under fresh snow. */
  readonly groundShare: number
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180

/** Clearness for which the correlation of the diffuse share was made. */
const CLEARNESS = { least: 0.3, most: 0.8 } as const
/** Sunset angle at which it changes from its winter to its other form, degrees. */
const WINTER_SUNSET_DEG = 81.4

/**
 * Share of a month's light that comes from the whole sky and not from the sun itself: Erbs, Klein and Duffie, Solar Energy 28 (1982), by the
 * clearness (radiation at the ground over that above the air). A cloudier sky than the correlation covers counts as its cloudiest.
 */
export function diffuseShare(clearness: number, sunsetAngleRad: number): number {
  const k = Math.min(CLEARNESS.most, Math.max(CLEARNESS.least, clearness))
  return sunsetAngleRad <= radians(WINTER_SUNSET_DEG)
    ? 1.391 - 3.56 * k + 4.189 * k ** 2 - 2.137 * k ** 3
    : 1.311 - 3.022 * k + 3.427 * k ** 2 - 1.821 * k ** 3
}

/**
 * How many times the sun's own light on a level surface falls on one tilted toward the noon sun, as a mean of the day: Liu and Jordan (1960), in
 * the form of Klein, Solar Energy 19 (1977). 0 where the sun does not rise.
 */
export function beamRatio({ latitudeDeg, dayOfYear, tiltDeg }: Surface): number {
  const { declinationRad, sunsetAngleRad } = solarDay(latitudeDeg, dayOfYear)
  if (sunsetAngleRad === 0) return 0
  // South of the equator the same holds with the seasons turned over.
  const declination = latitudeDeg < 0 ? -declinationRad : declinationRad
  const latitude = radians(Math.abs(latitudeDeg))
  const raised = latitude - radians(tiltDeg)
  const setting = Math.acos(Math.min(1, Math.max(-1, -Math.tan(raised) * Math.tan(declination))))
  const seen = Math.min(sunsetAngleRad, setting)
  const level = facing(latitude, declination, sunsetAngleRad)
  return level > 0 ? Math.max(0, facing(raised, declination, seen) / level) : 0
}

function facing(latitudeRad: number, declinationRad: number, angleRad: number): number {
  return (
    Math.cos(latitudeRad) * Math.cos(declinationRad) * Math.sin(angleRad) +
    angleRad * Math.sin(latitudeRad) * Math.sin(declinationRad)
  )
}

/**
 * Light on a surface for `levelMj` on a level one, MJ/m² a day: sun, sky and ground, the sky equally bright all over. `diffuse` is the share of
 * the sky; a surface that faces away from the noon sun gets nothing of the sun's own.
 */
export function onSurfaceMj(levelMj: number, surface: Surface, diffuse: number, seesSun: boolean): number {
  const tilt = radians(surface.tiltDeg)
  const beam = seesSun ? (1 - diffuse) * beamRatio(surface) : 0
  const sky = (diffuse * (1 + Math.cos(tilt))) / 2
  const ground = ((1 - Math.cos(tilt)) / 2) * surface.groundShare
  return levelMj * (beam + sky + ground)
}
