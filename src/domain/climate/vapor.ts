import { figures, measure } from '../figures.ts'

/** What is known of the damp in the air, the surest first. Humidities are fractions. */
export type Humidity =
  | { readonly by: 'vapor-pressure'; readonly kPa: number }
  | { readonly by: 'dew-point'; readonly dewC: number }
  | { readonly by: 'wet-bulb'; readonly wetC: number; readonly dryC: number }
  | { readonly by: 'max-min'; readonly max: number; readonly min: number }
  | { readonly by: 'max'; readonly max: number }
  | { readonly by: 'mean'; readonly mean: number }
  | { readonly by: 'nothing' }

export interface Vapor {
  readonly kPa: number
  readonly step: string
}

/** Pressure of saturated vapor in kPa, FAO paper 56 (1998), eq. 11. */
export function saturationKpa(temperatureC: number): number {
  return 0.6108 * Math.exp((17.27 * temperatureC) / (temperatureC + 237.3))
}

/** Of a day, from its extremes: eq. 12. */
export function meanSaturationKpa(maxC: number, minC: number): number {
  return (saturationKpa(maxC) + saturationKpa(minC)) / 2
}

/** Slope of the saturation curve in kPa/°C, eq. 13. */
export function slopeKpaPerC(temperatureC: number): number {
  return (4098 * saturationKpa(temperatureC)) / (temperatureC + 237.3) ** 2
}

/** Air pressure in kPa at an elevation in m, eq. 7. */
export function airKpa(elevationM: number): number {
  return 101.3 * ((293 - 0.0065 * elevationM) / 293) ** 5.26
}

/** Psychrometric constant in kPa/°C, eq. 8. */
export function psychrometricKpaPerC(pressureKpa: number): number {
  return 0.000665 * pressureKpa
}

/** Aspirated psychrometer, FAO paper 56 (1998), eq. 15 and 16: 0.000662 for each °C of difference. */
const PSYCHROMETER_PER_C = 0.000662

/** Pressure of the vapor in the air in kPa, by what is known of it. Temperatures are the extremes of the day. */
export function vaporKpa(humidity: Humidity, maxC: number, minC: number, pressureKpa: number): Vapor {
  const [warm, cool] = [saturationKpa(maxC), saturationKpa(minC)]
  switch (humidity.by) {
    case 'vapor-pressure':
      return { kPa: humidity.kPa, step: `vapor pressure, as given: ${kPaText(humidity.kPa)}` }
    case 'dew-point': {
      const kPa = saturationKpa(humidity.dewC) // eq. 14
      return { kPa, step: `vapor pressure at the dew point of ${measure(humidity.dewC, 3, '°C')}: ${kPaText(kPa)}` }
    }
    case 'wet-bulb': {
      const { wetC, dryC } = humidity
      const kPa = Math.max(0, saturationKpa(wetC) - PSYCHROMETER_PER_C * pressureKpa * (dryC - wetC))
      const less = `${PSYCHROMETER_PER_C} × ${figures(pressureKpa, 4)} × (${figures(dryC, 3)} − ${figures(wetC, 3)})`
      return { kPa, step: `vapor pressure: ${figures(saturationKpa(wetC), 4)} − ${less} = ${kPaText(kPa)}` }
    }
    case 'max-min': {
      const kPa = (cool * humidity.max + warm * humidity.min) / 2 // eq. 17
      const sum = `(${figures(cool, 4)} × ${share(humidity.max)} + ${figures(warm, 4)} × ${share(humidity.min)}) / 2`
      return { kPa, step: `vapor pressure: ${sum} = ${kPaText(kPa)}` }
    }
    case 'max': {
      const kPa = cool * humidity.max // eq. 18
      return { kPa, step: `vapor pressure: ${figures(cool, 4)} × ${share(humidity.max)} = ${kPaText(kPa)}` }
    }
    case 'mean': {
      const kPa = humidity.mean * ((warm + cool) / 2) // eq. 19
      return {
        kPa,
        step: `vapor pressure: ${share(humidity.mean)} × (${figures(warm, 4)} + ${figures(cool, 4)}) / 2 = ${kPaText(kPa)}`
      }
    }
    case 'nothing':
      // Eq. 48: the night cools to the dew point.
      return { kPa: cool, step: `vapor pressure, no humidity known, dew point taken at the minimum: ${kPaText(cool)}` }
  }
}

const kPaText = (kPa: number): string => measure(kPa, 3, 'kPa')
const share = (fraction: number): string => measure(fraction * 100, 3, '%')
