import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { COPPER } from '../../reference/copper.ts'
import { showNumber } from '../../units/show.ts'
import { notPositive } from '../amounts.ts'
import type { Calculation, Worked } from '../calculation.ts'
import { figures } from '../figures.ts'
import { numberOf, optionalNumber } from '../inputs.ts'
import { ohmText } from './words.ts'

/** Copper between these is described by the straight line; a box or the ground is never beyond. */
const LEAST_C = -60
const MOST_C = 200

export interface TakenReading {
  readonly ohm: number
  readonly temperatureC?: number
}

export interface ReadingChange {
  /** Left out where one of the two temperatures is not on file: the readings are then compared as they stand. */
  readonly at20Ohm?: number
  /** Fraction: 0.12 is 12 % more than the first reading. */
  readonly change: number
}

/** A reading of copper as it would be at 20 °C: R / (1 + 0.00393 (T − 20)) (NBS Handbook 100, 1966). */
export function at20Ohm({ ohm, temperatureC }: TakenReading): number | undefined {
  return temperatureC === undefined ? undefined : ohm / (1 + COPPER.perC * (temperatureC - COPPER.baseC))
}

/** How far a reading has moved from the first one; both at 20 °C where both temperatures are known. */
export function readingChange(reading: TakenReading, baseline: TakenReading): Maybe<Worked<ReadingChange>> {
  const fault = notPositive({ reading: reading.ohm, baseline: baseline.ohm })
  if (fault) return fault
  const beyond = [reading, baseline].some(
    ({ temperatureC }) => temperatureC !== undefined && (temperatureC < LEAST_C || temperatureC > MOST_C)
  )
  if (beyond) return absent(`a temperature is not between ${LEAST_C} and ${MOST_C} °C`)
  const [now, first] = [at20Ohm(reading), at20Ohm(baseline)]
  if (now === undefined || first === undefined) {
    const change = reading.ohm / baseline.ohm - 1
    const steps = [`${ohmText(reading.ohm)} / ${ohmText(baseline.ohm)} − 1 = ${percent(change)}`]
    return { value: { change, ...(now === undefined ? {} : { at20Ohm: now }) }, steps }
  }
  const change = now / first - 1
  const steps = [
    `reading: ${correction(reading, now)}`,
    `first reading: ${correction(baseline, first)}`,
    `${ohmText(now)} / ${ohmText(first)} − 1 = ${percent(change)}`
  ]
  return { value: { at20Ohm: now, change }, steps }
}

function correction({ ohm, temperatureC = COPPER.baseC }: TakenReading, at20: number): string {
  const factor = 1 + COPPER.perC * (temperatureC - COPPER.baseC)
  const degrees = showNumber(temperatureC, 'temperature', 'metric')
  return `${ohmText(ohm)} / ${figures(factor, 4)} = ${ohmText(at20)} (${degrees} to 20 °C)`
}

const percent = (fraction: number): string => `${figures(fraction * 100, 3)}\u00a0%`

export const readingTrendCard: Calculation = {
  name: 'reading-trend',
  title: 'Change of a meter reading since the first one',
  does: 'Takes a reading of a coil or a loop and the first one to 20 °C, where the temperatures are given, and says how far it has moved.',
  inputs: {
    reading: { kind: { is: 'quantity', dimension: 'resistance' }, does: 'what the meter shows' },
    baseline: { kind: { is: 'quantity', dimension: 'resistance' }, does: 'what it showed at closeout' },
    temperature: {
      kind: { is: 'quantity', dimension: 'temperature' },
      does: 'temperature at the reading',
      optional: 'not known, so the readings are compared as they stand'
    },
    'baseline-temperature': {
      kind: { is: 'quantity', dimension: 'temperature' },
      does: 'temperature at closeout',
      optional: 'not known, so the readings are compared as they stand'
    }
  },
  outputs: {
    'at-20': { does: 'the reading as it would be at 20 °C', unit: 'ohm' },
    change: { does: 'change against the first reading', unit: '%' }
  },
  sources: ['nbs-100'],
  limits: 'All copper at one temperature. Coil in the box and wire in the ground can differ by some degrees.',
  run: inputs => {
    const taken = (ohm: string, temperature: string): TakenReading => {
      const temperatureC = optionalNumber(inputs, temperature)
      return { ohm: numberOf(inputs, ohm), ...(temperatureC === undefined ? {} : { temperatureC }) }
    }
    const worked = readingChange(taken('reading', 'temperature'), taken('baseline', 'baseline-temperature'))
    if (isAbsent(worked)) return worked
    const { at20Ohm: at20, change } = worked.value
    return { value: { ...(at20 === undefined ? {} : { 'at-20': at20 }), change: change * 100 }, steps: worked.steps }
  },
  example: {
    inputs: { reading: '7.6 ohm', temperature: '30 °C', baseline: '6.4 ohm', 'baseline-temperature': '10 °C' },
    outputs: { 'at-20': 7.3126, change: 9.77 }
  }
}
