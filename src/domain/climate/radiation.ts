import { figures, measure } from '../figures.ts'

export const SETTINGS = ['interior', 'coast'] as const
export type Setting = (typeof SETTINGS)[number]

/** What is known of the sunshine, the surest first. Radiation is in MJ/m² a day. */
export type Sunlight =
  | { readonly by: 'measured'; readonly solarMj: number }
  | { readonly by: 'sunshine'; readonly hours: number }
  | { readonly by: 'temperature'; readonly setting: Setting }

export interface SolarRadiation {
  readonly solarMj: number
  readonly step: string
}

/** FAO paper 56 (1998), eq. 50: the range of temperature tells of cloud; larger where the sea evens it out. */
const PER_ROOT_OF_RANGE: Readonly<Record<Setting, number>> = { interior: 0.16, coast: 0.19 }

/** Share of solar radiation that short grass reflects: 0.23, eq. 38. */
const REFLECTED = 0.23

/** Stefan-Boltzmann constant, 4.903 × 10⁻⁹ MJ/m² a day for each K⁴, eq. 39. */
const STEFAN_BOLTZMANN_MJ = 4.903e-9

/** Radiation of a cloudless day in MJ/m² a day, eq. 37. */
export function clearSkyMj(extraterrestrialMj: number, elevationM: number): number {
  return (0.75 + 2e-5 * elevationM) * extraterrestrialMj
}

/** Radiation that reaches the ground, in MJ/m² a day. `daylightH` must be more than zero. */
export function solarRadiation(
  sunlight: Sunlight,
  day: {
    readonly extraterrestrialMj: number
    readonly daylightH: number
    readonly clearMj: number
    readonly rangeC: number
  }
): SolarRadiation {
  const above = figures(day.extraterrestrialMj, 4)
  switch (sunlight.by) {
    case 'measured':
      return { solarMj: sunlight.solarMj, step: `solar radiation, measured: ${mjText(sunlight.solarMj)}` }
    case 'sunshine': {
      // Sunshine recorders and eq. 34 differ by minutes; the sun never shines for longer than the day.
      const part = Math.min(1, sunlight.hours / day.daylightH)
      const solarMj = (0.25 + 0.5 * part) * day.extraterrestrialMj // eq. 35
      const sunny = `${measure(sunlight.hours, 3, 'h')} of ${measure(day.daylightH, 4, 'h')}`
      return {
        solarMj,
        step: `solar radiation: (0.25 + 0.50 × ${figures(part, 3)}) × ${above} = ${mjText(solarMj)}, the sun shining ${sunny}`
      }
    }
    case 'temperature': {
      const factor = PER_ROOT_OF_RANGE[sunlight.setting]
      const solarMj = Math.min(day.clearMj, factor * Math.sqrt(day.rangeC) * day.extraterrestrialMj) // eq. 50
      const capped = solarMj === day.clearMj ? ', at most that of a clear day' : ''
      return {
        solarMj,
        step: `solar radiation, from the range of temperature: ${factor} × √${figures(day.rangeC, 3)} × ${above} = ${mjText(solarMj)}${capped}`
      }
    }
  }
}

/** Short-wave radiation that the grass keeps, in MJ/m² a day, eq. 38. */
export const netShortWaveMj = (solarMj: number): number => (1 - REFLECTED) * solarMj

/** Long-wave radiation that the ground loses, in MJ/m² a day, eq. 39. The share of a clear day is held to 0.3 to 1, as the paper has it. */
export function netLongWaveMj(maxC: number, minC: number, vaporKpa: number, shareOfClear: number): number {
  const warmth = (STEFAN_BOLTZMANN_MJ * ((maxC + 273.16) ** 4 + (minC + 273.16) ** 4)) / 2
  const clear = Math.min(1, Math.max(0.3, shareOfClear))
  return warmth * (0.34 - 0.14 * Math.sqrt(vaporKpa)) * (1.35 * clear - 0.35)
}

/** Radiation at the ground, MJ/m² a day. */
const mjText = (mj: number): string => measure(mj, 4, 'MJ/m²/d')
