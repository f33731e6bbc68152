import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import type { Calculation, Worked } from '../calculation.ts'
import { figures, measure } from '../figures.ts'
import { numberOf, optionalNumber } from '../inputs.ts'
import { MM_PER_MJ, solarDay, solarSteps } from './solar-geometry.ts'
import { monthWhen, WHEN_INPUTS, whenOf } from './when.ts'
import type { When } from './when.ts'

/** Of one day, or the means of a month. */
export interface Temperatures {
  readonly maxC: number
  readonly minC: number
  /** The middle of both where left out, as the paper takes it. */
  readonly meanC?: number
}

export interface HargreavesEto {
  readonly etoMm: number
  /** The estimate less and plus its uncertainty. */
  readonly leastMm: number
  readonly mostMm: number
}

/**
 * How far an estimate from temperatures alone may be off. Against 18 years of daily weather of a dry inland station its monthly means were
 * −12 % to +10 % off; the common allowance is 15 to 20 %, and the wider is printed.
 */
export const HARGREAVES_UNCERTAINTY = 0.2

/**
 * Reference evapotranspiration in mm a day from temperatures, FAO paper 56 (1998), eq. 52, after Hargreaves and Samani (1985). Radiation is
 * that above the air, in MJ/m² a day; the formula itself wants it as water. Below freezing it can fall under zero and is then none. Absent
 * where the maximum is below the minimum.
 */
export function hargreavesMm(temperatures: Temperatures, extraterrestrialMj: number): Maybe<number> {
  const { maxC, minC } = temperatures
  if (maxC < minC) return absent('the maximum temperature is below the minimum')
  const meanC = temperatures.meanC ?? (maxC + minC) / 2
  return Math.max(0, 0.0023 * (meanC + 17.8) * Math.sqrt(maxC - minC) * MM_PER_MJ * extraterrestrialMj)
}

/** The same for a place and a day, with its uncertainty and its working. */
export function hargreaves(temperatures: Temperatures, when: When): Maybe<Worked<HargreavesEto>> {
  const { extraterrestrialMj } = solarDay(when.latitudeDeg, when.dayOfYear)
  const etoMm = hargreavesMm(temperatures, extraterrestrialMj)
  if (isAbsent(etoMm)) return etoMm
  const value = {
    etoMm,
    leastMm: etoMm * (1 - HARGREAVES_UNCERTAINTY),
    mostMm: etoMm * (1 + HARGREAVES_UNCERTAINTY)
  }
  const { maxC, minC } = temperatures
  const meanC = temperatures.meanC ?? (maxC + minC) / 2
  const water = figures(extraterrestrialMj * MM_PER_MJ, 4)
  return {
    value,
    steps: [
      ...solarSteps(when),
      `0.0023 × (${figures(meanC, 3)} + 17.8) × √(${figures(maxC, 3)} − ${figures(minC, 3)}) × ${water} = ${measure(etoMm, 3, 'mm')} a day`,
      `an estimate, give or take 20 %: ${figures(value.leastMm, 3)} to ${measure(value.mostMm, 3, 'mm')} a day`
    ]
  }
}

/** Reference evapotranspiration of a whole month, 1 to 12, in m. */
export function hargreavesMonthM(
  latitudeDeg: number,
  month: number,
  temperatures: Temperatures
): Maybe<Worked<number>> {
  const when = monthWhen(latitudeDeg, month)
  const worked = hargreaves(temperatures, when)
  if (isAbsent(worked)) return worked
  const days = when.monthDays ?? 0
  const monthMm = worked.value.etoMm * days
  return { value: monthMm / 1000, steps: [...worked.steps, monthStep(worked.value.etoMm, days)] }
}

/** "31 days × 5.03 mm = 156 mm". */
export function monthStep(etoMm: number, days: number): string {
  return `${days} days × ${measure(etoMm, 3, 'mm')} = ${measure(etoMm * days, 3, 'mm')} in the month`
}

const temperature = { is: 'quantity', dimension: 'temperature' } as const

export const etoHargreaves: Calculation = {
  name: 'eto-hargreaves',
  title: 'Reference evapotranspiration from temperatures',
  does: 'Estimates the water that a well-watered short grass uses in a day, where nothing but the highest and lowest temperatures is known.',
  inputs: {
    ...WHEN_INPUTS,
    max: { kind: temperature, does: 'highest temperature of the day, or its mean over the month' },
    min: { kind: temperature, does: 'lowest temperature of the day, or its mean over the month' },
    mean: { kind: temperature, does: 'mean temperature', optional: 'the middle of both' }
  },
  outputs: {
    eto: { does: 'reference evapotranspiration', unit: 'mm/d' },
    'eto-us': { does: 'the same in inches', unit: 'in/d' },
    least: { does: 'the estimate less its uncertainty of 20 %', unit: 'mm/d' },
    most: { does: 'the estimate plus its uncertainty of 20 %', unit: 'mm/d' },
    'in-month': { does: 'in the whole month, where a month is given', unit: 'mm' }
  },
  sources: ['fao-56', 'hargreaves-samani'],
  limits:
    'An estimate, often 15 to 20 % off: too little in wind of more than 3 m/s, too much in humid air. It is for grass (ETo), not for alfalfa (ETr), which is about 1.4 to 1.65 times as much.',
  run: inputs => {
    const when = whenOf(inputs)
    if (isAbsent(when)) return when
    const meanC = optionalNumber(inputs, 'mean')
    const temperatures = { maxC: numberOf(inputs, 'max'), minC: numberOf(inputs, 'min') }
    const worked = hargreaves(meanC === undefined ? temperatures : { ...temperatures, meanC }, when)
    if (isAbsent(worked)) return worked
    const { etoMm, leastMm, mostMm } = worked.value
    const outputs = { eto: etoMm, 'eto-us': etoMm / 25.4, least: leastMm, most: mostMm }
    if (when.monthDays === undefined) return { value: outputs, steps: worked.steps }
    return {
      value: { ...outputs, 'in-month': etoMm * when.monthDays },
      steps: [...worked.steps, monthStep(etoMm, when.monthDays)]
    }
  },
  example: {
    inputs: { latitude: '45.72', month: 'Jul', max: '26.6 °C', min: '14.8 °C' },
    outputs: { eto: 5.033, 'eto-us': 0.1981, least: 4.026, most: 6.039, 'in-month': 156.0 }
  }
}
