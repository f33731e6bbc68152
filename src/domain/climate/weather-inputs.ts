import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import type { CalculationInputs, InputSpec } from '../calculation.ts'
import { negative } from '../amounts.ts'
import { numberOf, optionalNumber, optionalText } from '../inputs.ts'
import type { Weather } from './penman-monteith.ts'
import { SETTINGS } from './radiation.ts'
import type { Setting, Sunlight } from './radiation.ts'
import { soilHeatMj, soilHeatSoFarMj } from './soil-heat.ts'
import type { Humidity } from './vapor.ts'
import { LOWEST_WIND_HEIGHT_M, UNKNOWN_WIND_M_PER_S } from './wind.ts'
import type { Wind } from './wind.ts'

const temperature = { is: 'quantity', dimension: 'temperature' } as const
const ratio = { is: 'quantity', dimension: 'ratio' } as const

/** MJ/m² a day in one W/m². */
const MJ_PER_W_DAY = 0.0864

export const WEATHER_INPUTS = {
  elevation: { kind: { is: 'quantity', dimension: 'length' }, does: 'elevation above the sea' },
  max: { kind: temperature, does: 'highest temperature of the day, or its mean over the month' },
  min: { kind: temperature, does: 'lowest temperature of the day, or its mean over the month' },
  'vapor-pressure': {
    kind: { is: 'quantity', dimension: 'pressure' },
    does: 'pressure of the vapor in the air',
    optional: 'dew-point, wet-bulb or a humidity'
  },
  'dew-point': { kind: temperature, does: 'dew point', optional: 'wet-bulb or a humidity' },
  'wet-bulb': { kind: temperature, does: 'wet bulb of an aspirated psychrometer', optional: 'a humidity' },
  'dry-bulb': { kind: temperature, does: 'its dry bulb; goes with wet-bulb', optional: 'none' },
  'humidity-max': { kind: ratio, does: 'highest relative humidity of the day', optional: 'humidity-mean' },
  'humidity-min': { kind: ratio, does: 'lowest; goes with humidity-max', optional: 'humidity-max alone' },
  'humidity-mean': {
    kind: ratio,
    does: 'mean relative humidity',
    optional: 'dew point taken at the minimum temperature'
  },
  'solar-radiation': {
    kind: { is: 'quantity', dimension: 'radiation' },
    does: 'measured solar radiation',
    optional: 'sunshine'
  },
  sunshine: {
    kind: { is: 'quantity', dimension: 'duration' },
    does: 'hours of bright sunshine in the day',
    optional: 'told from the range of temperature'
  },
  setting: {
    kind: { is: 'choice', of: SETTINGS },
    does: 'interior or coast, where radiation is told from the range of temperature',
    optional: 'interior'
  },
  wind: { kind: { is: 'quantity', dimension: 'speed' }, does: 'mean wind', optional: '2 m/s' },
  'wind-height': {
    kind: { is: 'quantity', dimension: 'length' },
    does: 'height that the wind was measured at',
    optional: '2 m'
  },
  'previous-mean': {
    kind: temperature,
    does: 'mean temperature of the month before, for the heat that the soil takes up',
    optional: 'no soil heat'
  },
  'next-mean': { kind: temperature, does: 'mean temperature of the month after', optional: 'the month so far' }
} as const satisfies Readonly<Record<string, InputSpec>>

/** Weather from a card's inputs. Absent where two of them contradict each other or one lacks its other half. */
export function weatherOf(inputs: CalculationInputs): Maybe<Weather> {
  const [maxC, minC] = [numberOf(inputs, 'max'), numberOf(inputs, 'min')]
  const humidity = humidityOf(inputs)
  if (isAbsent(humidity)) return humidity
  const sunlight = sunlightOf(inputs)
  if (isAbsent(sunlight)) return sunlight
  const wind = windOf(inputs)
  if (isAbsent(wind)) return wind
  const soilHeat = soilHeatOf(inputs, (maxC + minC) / 2)
  if (isAbsent(soilHeat)) return soilHeat
  return { elevationM: numberOf(inputs, 'elevation'), maxC, minC, humidity, sunlight, wind, soilHeatMj: soilHeat }
}

function humidityOf(inputs: CalculationInputs): Maybe<Humidity> {
  const read = (name: string) => optionalNumber(inputs, name)
  const [vaporPa, dewC, wetC, dryC] = [read('vapor-pressure'), read('dew-point'), read('wet-bulb'), read('dry-bulb')]
  const [max, min, mean] = [read('humidity-max'), read('humidity-min'), read('humidity-mean')]
  const shares = { 'humidity-max': max, 'humidity-min': min, 'humidity-mean': mean }
  const fault = negative({ 'vapor-pressure': vaporPa, ...shares })
  if (fault) return fault
  const over = Object.entries(shares).find(([, share]) => share !== undefined && share > 1)
  if (over) return absent(`${over[0]} cannot be more than 100 %`)
  if (vaporPa !== undefined) return { by: 'vapor-pressure', kPa: vaporPa / 1000 }
  if (dewC !== undefined) return { by: 'dew-point', dewC }
  if ((wetC === undefined) !== (dryC === undefined)) return absent('wet-bulb and dry-bulb go together')
  if (wetC !== undefined && dryC !== undefined)
    return wetC > dryC ? absent('the wet bulb is warmer than the dry bulb') : { by: 'wet-bulb', wetC, dryC }
  if (min !== undefined && max === undefined) return absent('humidity-min needs humidity-max')
  if (max !== undefined && min !== undefined)
    return min > max ? absent('humidity-min is more than humidity-max') : { by: 'max-min', max, min }
  if (max !== undefined) return { by: 'max', max }
  return mean === undefined ? { by: 'nothing' } : { by: 'mean', mean }
}

function sunlightOf(inputs: CalculationInputs): Maybe<Sunlight> {
  const solarW = optionalNumber(inputs, 'solar-radiation')
  const sunshineS = optionalNumber(inputs, 'sunshine')
  const fault = negative({ 'solar-radiation': solarW, sunshine: sunshineS })
  if (fault) return fault
  if (solarW !== undefined) return { by: 'measured', solarMj: solarW * MJ_PER_W_DAY }
  if (sunshineS !== undefined) return { by: 'sunshine', hours: sunshineS / 3600 }
  return { by: 'temperature', setting: (optionalText(inputs, 'setting') as Setting | undefined) ?? 'interior' }
}

function windOf(inputs: CalculationInputs): Maybe<Wind> {
  const speed = optionalNumber(inputs, 'wind')
  const heightM = optionalNumber(inputs, 'wind-height')
  if (speed === undefined)
    return heightM === undefined ? { speedMPerS: UNKNOWN_WIND_M_PER_S, heightM: 2 } : absent('wind-height needs wind')
  const fault = negative({ wind: speed })
  if (fault) return fault
  if (heightM !== undefined && !(heightM >= LOWEST_WIND_HEIGHT_M)) return absent('wind-height must be at least 0.1 m')
  return { speedMPerS: speed, heightM: heightM ?? 2 }
}

function soilHeatOf(inputs: CalculationInputs, meanC: number): Maybe<number> {
  const [previousC, nextC] = [optionalNumber(inputs, 'previous-mean'), optionalNumber(inputs, 'next-mean')]
  if (previousC === undefined) return nextC === undefined ? 0 : absent('next-mean needs previous-mean')
  return nextC === undefined ? soilHeatSoFarMj(previousC, meanC) : soilHeatMj(previousC, nextC)
}
