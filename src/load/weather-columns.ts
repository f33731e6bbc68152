import type { WeatherDay } from '../model/site.ts'
import type { Dimension } from '../units/dimension.ts'

/** A column of a daily record: which fact it is, the unit it may have, and what is still believed. Limits are in the coherent unit. */
export interface WeatherColumn {
  readonly name: string
  readonly fact: Exclude<keyof WeatherDay, 'on'>
  readonly dimension: Dimension
  /** How its head may be written: "high (°C)". */
  readonly example: string
  readonly least: number
  readonly most: number
  readonly range: string
}

const HUMID = { dimension: 'ratio', least: 0, most: 1, range: 'must be from 0 to 100 %' } as const
/** Wider than any day on record, narrow enough for the numbers that stand for "missing", -99 or 9999. */
const WARM = { dimension: 'temperature', least: -60, most: 60, range: 'must be from -60 to 60 °C' } as const

export const WEATHER_COLUMNS: readonly WeatherColumn[] = [
  { name: 'high', fact: 'highC', example: 'high (°C)', ...WARM },
  { name: 'low', fact: 'lowC', example: 'low (°C)', ...WARM },
  { name: 'dew-point', fact: 'dewPointC', example: 'dew point (°C)', ...WARM },
  { name: 'humidity', fact: 'humidity', example: 'humidity (%)', ...HUMID },
  { name: 'humidity-high', fact: 'humidityHigh', example: 'humidity high (%)', ...HUMID },
  { name: 'humidity-low', fact: 'humidityLow', example: 'humidity low (%)', ...HUMID },
  {
    name: 'wind',
    fact: 'windMPerS',
    dimension: 'speed',
    example: 'wind (m/s)',
    least: 0,
    most: 60,
    range: 'must be from 0 to 60 m/s'
  },
  {
    name: 'sunshine',
    fact: 'sunshineS',
    dimension: 'duration',
    example: 'sunshine (h)',
    least: 0,
    most: 86_400,
    range: 'must be from 0 to 24 h'
  },
  {
    name: 'solar-radiation',
    fact: 'solarWPerM2',
    dimension: 'radiation',
    example: 'solar radiation (MJ/m²/d)',
    least: 0,
    most: 580,
    range: 'must be from 0 to 50 MJ/m²/d'
  },
  {
    name: 'rain',
    fact: 'rainM',
    dimension: 'length',
    example: 'rain (mm)',
    least: 0,
    most: 2,
    range: 'must be from 0 to 2,000 mm'
  }
]

/** "Dew point (°C)" is dew-point in °C; a head without brackets has no unit. */
export function headOf(cell: string): { readonly name: string; readonly unit?: string } {
  const [, words = cell, inside] = /^(.*)[([]([^()[\]]*)[)\]]$/u.exec(cell.trim()) ?? []
  const unit = inside?.trim()
  const name = words
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/gu, '-')
  return unit === undefined || unit === '' ? { name } : { name, unit }
}
