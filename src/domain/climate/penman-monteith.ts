import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import type { Worked } from '../calculation.ts'
import { figures, measure } from '../figures.ts'
import type { Temperatures } from './eto-hargreaves.ts'
import { clearSkyMj, netLongWaveMj, netShortWaveMj, solarRadiation } from './radiation.ts'
import type { Sunlight } from './radiation.ts'
import { MM_PER_MJ, solarDay, solarSteps } from './solar-geometry.ts'
import { airKpa, meanSaturationKpa, psychrometricKpaPerC, slopeKpaPerC, vaporKpa } from './vapor.ts'
import type { Humidity } from './vapor.ts'
import type { When } from './when.ts'
import { windAt2M } from './wind.ts'
import type { Wind } from './wind.ts'

/** Weather of one day, or the means of a month, with what is known of it. */
export interface Weather extends Temperatures {
  readonly elevationM: number
  readonly humidity: Humidity
  readonly sunlight: Sunlight
  readonly wind: Wind
  /** MJ/m² a day into the soil: 0 for a day. */
  readonly soilHeatMj: number
}

/** Reference evapotranspiration and what it is made of, in the units of the paper: mm a day, MJ/m² a day, kPa, m/s. */
export interface PenmanMonteith {
  readonly etoMm: number
  readonly solarMj: number
  readonly clearMj: number
  readonly netShortMj: number
  readonly netLongMj: number
  readonly netMj: number
  readonly vaporKpa: number
  readonly saturationKpa: number
  readonly slopeKpaPerC: number
  readonly psychrometricKpaPerC: number
  readonly wind2MPerS: number
}

/** What came of the weather, and the figures between that only the working shows. */
export interface WeatherEto {
  readonly value: PenmanMonteith
  readonly meanC: number
  readonly pressureKpa: number
  readonly dryness: number
  readonly vaporStep: string
  readonly solarStep: string
}

/**
 * FAO paper 56 (1998), eq. 6. Below zero, on cold and humid winter days, it counts as none. Absent where the maximum is below the minimum, and
 * where the sun does not rise, since then nothing tells how cloudy it is.
 */
export function weatherEto(weather: Weather, when: When): Maybe<WeatherEto> {
  const { maxC, minC, elevationM, soilHeatMj } = weather
  if (maxC < minC) return absent('the maximum temperature is below the minimum')
  const sun = solarDay(when.latitudeDeg, when.dayOfYear)
  if (sun.daylightH === 0) return absent('the sun does not rise on that day')
  const meanC = weather.meanC ?? (maxC + minC) / 2
  const pressure = airKpa(elevationM)
  const psychrometric = psychrometricKpaPerC(pressure)
  const slope = slopeKpaPerC(meanC)
  const saturation = meanSaturationKpa(maxC, minC)
  const vapor = vaporKpa(weather.humidity, maxC, minC, pressure)
  const clearMj = clearSkyMj(sun.extraterrestrialMj, elevationM)
  const solar = solarRadiation(weather.sunlight, { ...sun, clearMj, rangeC: maxC - minC })
  const netShortMj = netShortWaveMj(solar.solarMj)
  const netLongMj = netLongWaveMj(maxC, minC, vapor.kPa, solar.solarMj / clearMj)
  const netMj = netShortMj - netLongMj
  const wind = windAt2M(weather.wind)
  const dryness = Math.max(0, saturation - vapor.kPa)
  const byRadiation = MM_PER_MJ * slope * (netMj - soilHeatMj)
  const byWind = psychrometric * (900 / (meanC + 273)) * wind * dryness
  const etoMm = Math.max(0, (byRadiation + byWind) / (slope + psychrometric * (1 + 0.34 * wind)))
  const value = {
    etoMm,
    solarMj: solar.solarMj,
    clearMj,
    netShortMj,
    netLongMj,
    netMj,
    vaporKpa: vapor.kPa,
    saturationKpa: saturation,
    slopeKpaPerC: slope,
    psychrometricKpaPerC: psychrometric,
    wind2MPerS: wind
  }
  return { value, meanC, pressureKpa: pressure, dryness, vaporStep: vapor.step, solarStep: solar.step }
}

/** The same with its working. */
export function penmanMonteith(weather: Weather, when: When): Maybe<Worked<PenmanMonteith>> {
  const found = weatherEto(weather, when)
  return isAbsent(found) ? found : { value: found.value, steps: stepsOf(weather, when, found) }
}

function stepsOf({ elevationM, soilHeatMj }: Weather, when: When, found: WeatherEto): readonly string[] {
  const { value, meanC, pressureKpa: pressure, dryness, vaporStep, solarStep } = found
  const { etoMm, solarMj, clearMj, netLongMj, netMj, saturationKpa: saturation, wind2MPerS: wind } = value
  const { slopeKpaPerC: slope, psychrometricKpaPerC: psychrometric } = value
  const [d, g, u] = [figures(slope, 3), figures(psychrometric, 3), figures(wind, 3)]
  const top = `0.408 × ${d} × (${figures(netMj, 4)} − ${figures(soilHeatMj, 2)}) + ${g} × 900 / (${figures(meanC, 3)} + 273) × ${u} × ${figures(dryness, 3)}`
  return [
    ...solarSteps(when),
    `air pressure at ${measure(elevationM, 4, 'm')}: ${measure(pressure, 4, 'kPa')}; psychrometric constant ${measure(psychrometric, 3, 'kPa/°C')}`,
    `saturated vapor, mean of the extremes: ${measure(saturation, 3, 'kPa')}; slope at ${measure(meanC, 3, '°C')}: ${measure(slope, 3, 'kPa/°C')}`,
    vaporStep,
    solarStep,
    `on a clear day: ${measure(clearMj, 4, 'MJ/m²/d')}`,
    `net radiation: 0.77 × ${figures(solarMj, 4)} − ${figures(netLongMj, 3)} lost to the sky = ${measure(netMj, 4, 'MJ/m²/d')}`,
    `wind at 2 m: ${measure(wind, 3, 'm/s')}`,
    `(${top}) / (${d} + ${g} × (1 + 0.34 × ${u})) = ${measure(etoMm, 3, 'mm')} a day`
  ]
}
