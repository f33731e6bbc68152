import { isAbsent } from '../../base/absent.ts'
import type { Calculation } from '../calculation.ts'
import { figures, measure } from '../figures.ts'
import { WHEN_INPUTS, whenOf } from './when.ts'
import type { When } from './when.ts'

/** The sun over a place on one day. Radiation is in the paper's own unit, megajoules on a square meter a day. */
export interface SolarDay {
  /** Inverse square of the distance from the earth, relative to its mean. */
  readonly distanceFactor: number
  readonly declinationRad: number
  /** From solar noon to sunset: 0 where the sun does not rise, π where it does not set. */
  readonly sunsetAngleRad: number
  readonly daylightH: number
  readonly extraterrestrialMj: number
}

/** FAO paper 56 (1998), p. 45: 0.0820 MJ/m² a minute. */
const SOLAR_CONSTANT_MJ_PER_M2_MIN = 0.082

/** FAO paper 56 (1998), eq. 20: 1 MJ/m² evaporates 0.408 mm of water. */
export const MM_PER_MJ = 0.408

/** FAO paper 56 (1998), eq. 21 to 25 and 34. Latitude −90 to 90 degrees, day 1 to 366. 20° S on day 246: 32.2 MJ/m² a day, 11.7 h. */
export function solarDay(latitudeDeg: number, day: number): SolarDay {
  const latitudeRad = (latitudeDeg * Math.PI) / 180
  const yearRad = (2 * Math.PI * day) / 365
  const distanceFactor = 1 + 0.033 * Math.cos(yearRad) // eq. 23
  const declinationRad = 0.409 * Math.sin(yearRad - 1.39) // eq. 24
  // Eq. 25. Beyond the polar circles the cosine leaves −1 to 1, on the days when the sun does not set or does not rise.
  const cosine = -Math.tan(latitudeRad) * Math.tan(declinationRad)
  const sunsetAngleRad = Math.acos(Math.min(1, Math.max(-1, cosine)))
  const height =
    sunsetAngleRad * Math.sin(latitudeRad) * Math.sin(declinationRad) +
    Math.cos(latitudeRad) * Math.cos(declinationRad) * Math.sin(sunsetAngleRad)
  const extraterrestrialMj = ((24 * 60) / Math.PI) * SOLAR_CONSTANT_MJ_PER_M2_MIN * distanceFactor * height // eq. 21
  const daylightH = (24 / Math.PI) * sunsetAngleRad // eq. 34
  return { distanceFactor, declinationRad, sunsetAngleRad, daylightH, extraterrestrialMj }
}

/** "At 20° S on 2026-09-03, day 246 … 32.2 MJ/m² a day". */
export function solarSteps({ latitudeDeg, dayOfYear, words }: When): readonly string[] {
  const sun = solarDay(latitudeDeg, dayOfYear)
  const latitudeRad = (latitudeDeg * Math.PI) / 180
  const low = Math.sin(latitudeRad) * Math.sin(sun.declinationRad)
  const high = Math.cos(latitudeRad) * Math.cos(sun.declinationRad) * Math.sin(sun.sunsetAngleRad)
  const where = `${figures(Math.abs(latitudeDeg), 4)}°${latitudeDeg < 0 ? ' S' : latitudeDeg > 0 ? ' N' : ''}`
  return [
    `${where} on ${words}`,
    `declination of the sun: 0.409 × sin(2π × ${dayOfYear} / 365 − 1.39) = ${measure(sun.declinationRad, 3, 'rad')}`,
    sunsetStep(sun),
    `day length: 24 / π × ${figures(sun.sunsetAngleRad, 4)} = ${measure(sun.daylightH, 3, 'h')}`,
    `distance factor: 1 + 0.033 × cos(2π × ${dayOfYear} / 365) = ${figures(sun.distanceFactor, 3)}`,
    `sin(latitude) × sin(declination) = ${figures(low, 3)}; cos(latitude) × cos(declination) × sin(sunset angle) = ${figures(high, 3)}`,
    `radiation above the air: 24 × 60 / π × 0.0820 × ${figures(sun.distanceFactor, 4)} × (${figures(sun.sunsetAngleRad, 4)} × ${figures(low, 3)} + ${figures(high, 3)}) = ${measure(sun.extraterrestrialMj, 3, 'MJ/m²/d')}, worth ${measure(sun.extraterrestrialMj * MM_PER_MJ, 3, 'mm')} of water a day`
  ]
}

function sunsetStep({ sunsetAngleRad }: SolarDay): string {
  if (sunsetAngleRad === 0) return 'the sun does not rise on that day'
  if (sunsetAngleRad === Math.PI) return 'the sun does not set on that day'
  return `sunset angle: arccos(−tan(latitude) × tan(declination)) = ${measure(sunsetAngleRad, 4, 'rad')}`
}

export const solarGeometry: Calculation = {
  name: 'solar-geometry',
  title: 'Sun and day length',
  does: 'Gives the length of the day and the radiation above the air for a latitude and a day: what every estimate of evapotranspiration starts from.',
  inputs: WHEN_INPUTS,
  outputs: {
    'day-length': { does: 'from sunrise to sunset', unit: 'h' },
    radiation: { does: 'radiation on a level surface above the air', unit: 'MJ/m²/d' },
    'radiation-water': { does: 'the same as water evaporated', unit: 'mm/d' },
    declination: { does: 'declination of the sun', unit: 'rad' },
    'sunset-angle': { does: 'hour angle of sunset', unit: 'rad' },
    'distance-factor': { does: 'inverse relative distance from the sun', unit: '' }
  },
  sources: ['fao-56'],
  limits:
    'Sunrise by the clock is some minutes earlier and sunset later, as the air bends the light and the sun has a width.',
  run: inputs => {
    const when = whenOf(inputs)
    if (isAbsent(when)) return when
    const sun = solarDay(when.latitudeDeg, when.dayOfYear)
    return {
      value: {
        'day-length': sun.daylightH,
        radiation: sun.extraterrestrialMj,
        'radiation-water': sun.extraterrestrialMj * MM_PER_MJ,
        declination: sun.declinationRad,
        'sunset-angle': sun.sunsetAngleRad,
        'distance-factor': sun.distanceFactor
      },
      steps: solarSteps(when)
    }
  },
  example: {
    inputs: { latitude: '-20', date: '2026-09-03' },
    outputs: {
      'day-length': 11.666,
      radiation: 32.194,
      'radiation-water': 13.135,
      declination: 0.11966,
      'sunset-angle': 1.52702,
      'distance-factor': 0.98483
    }
  }
}
