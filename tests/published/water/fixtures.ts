import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import Papa from 'papaparse'

export const FIXTURES = fileURLToPath(new URL('../../fixtures/', import.meta.url))

export const readFixture = (name: string): string => readFileSync(`${FIXTURES}${name}`, 'utf8')

/** One worked example, its inputs and expected values in a shape of its own. */
export interface Example {
  readonly id: string
  readonly inputs: never
  readonly expected: never
  readonly source: string
}

export const EXAMPLES = JSON.parse(readFixture('water-examples.json')) as readonly Example[]

/** Inputs and expected values of an example, in the shape that its caller knows it has. */
export function example<I, E>(id: string): { readonly inputs: I; readonly expected: E } {
  const found = EXAMPLES.find(one => one.id === id)
  if (!found) throw new Error(`no example ${id}`)
  return { inputs: found.inputs, expected: found.expected }
}

export interface WeatherDay {
  readonly date: string
  readonly maxC: number
  readonly minC: number
  readonly solarMj: number
  readonly windMPerS: number
  readonly dewC: number
  readonly etoMm: number
}

export function weatherDays(): readonly WeatherDay[] {
  const { data } = Papa.parse<Record<string, string>>(readFixture('daily-weather-eto.csv').trim(), { header: true })
  return data.map(row => ({
    date: row['date'] ?? '',
    maxC: Number(row['tmax_c']),
    minC: Number(row['tmin_c']),
    solarMj: Number(row['rs_mj_m2']),
    windMPerS: Number(row['wind_ms_at_3m']),
    dewC: Number(row['tdew_c']),
    etoMm: Number(row['fao56_eto_mm'])
  }))
}
