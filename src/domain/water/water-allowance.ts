import { absent, isAbsent } from '../../base/absent.ts'
import { PEAK_MONTH_SHARE } from '../../reference/water-budget.ts'
import { show } from '../../units/show.ts'
import { negative, notPositive } from '../amounts.ts'
import type { Calculation } from '../calculation.ts'
import { figures } from '../figures.ts'
import { numberOf, optionalNumber } from '../inputs.ts'
import { UNITS_INPUT, unitsOfWorking } from './units.ts'

/** Landscape water allowance of the peak month in m³: 70 % of its reference evapotranspiration on the whole area. EPA, 2009; the equation from memory. */
export function peakAllowanceM3(etoM: number, areaM2: number): number {
  return PEAK_MONTH_SHARE * etoM * areaM2
}

export interface RequirementFacts {
  readonly etoM: number
  readonly coefficient: number
  /** Rain of the peak month that counts: at most a quarter of it. */
  readonly rainM: number
  /** Uniformity of the lowest quarter, a fraction: this budget divides by it as it stands. */
  readonly lowQuarter: number
  readonly areaM2: number
}

/** What one zone requires in the peak month in m³: (ETo × coefficient − rain) / DULQ on its area. EPA, 2009; the equation from memory. */
export function peakRequirementM3({ etoM, coefficient, rainM, lowQuarter, areaM2 }: RequirementFacts): number {
  return (Math.max(0, etoM * coefficient - rainM) / lowQuarter) * areaM2
}

/** Volume in m³ of a depth on an area: "14 gallons a square foot" is a depth of 22.46 in. */
export const volumeM3 = (depthM: number, areaM2: number): number => depthM * areaM2

export const waterAllowance: Calculation = {
  name: 'water-allowance',
  title: 'Water allowance of the peak month',
  does: 'Gives the landscape water allowance of the month that wants most, 70 % of its reference evapotranspiration on the whole area, and what a zone requires.',
  inputs: {
    eto: {
      kind: { is: 'quantity', dimension: 'length' },
      does: 'reference evapotranspiration of the month that wants most'
    },
    area: { kind: { is: 'quantity', dimension: 'area' }, does: 'area' },
    coefficient: {
      kind: { is: 'number' },
      does: 'landscape coefficient of a zone of this area; goes with dulq',
      optional: 'only the allowance is given'
    },
    dulq: {
      kind: { is: 'quantity', dimension: 'ratio' },
      does: 'uniformity of the lowest quarter',
      optional: 'only the allowance is given'
    },
    rain: {
      kind: { is: 'quantity', dimension: 'length' },
      does: 'rain of that month that counts, at most a quarter of it',
      optional: 'none'
    },
    ...UNITS_INPUT
  },
  outputs: {
    allowance: { does: 'allowance of the month', unit: 'm³' },
    'allowance-us': { does: 'the same', unit: 'gal' },
    requirement: { does: 'what the zone requires', unit: 'm³' },
    'requirement-us': { does: 'the same', unit: 'gal' }
  },
  sources: ['epa-water-budget', 'from-memory'],
  limits:
    'The share of 70 % is published; the equations are from memory. The requirement divides by the uniformity itself, as that budget does, so it is larger than a run time for the same need.',
  run: inputs => {
    const system = unitsOfWorking(inputs)
    const [etoM, areaM2] = [numberOf(inputs, 'eto'), numberOf(inputs, 'area')]
    const [coefficient, lowQuarter] = [optionalNumber(inputs, 'coefficient'), optionalNumber(inputs, 'dulq')]
    const rainM = optionalNumber(inputs, 'rain') ?? 0
    const fault = notPositive({ eto: etoM, area: areaM2, dulq: lowQuarter }) ?? negative({ coefficient, rain: rainM })
    if (isAbsent(fault)) return fault
    if ((coefficient === undefined) !== (lowQuarter === undefined)) return absent('coefficient and dulq go together')
    if (lowQuarter !== undefined && lowQuarter > 1) return absent('dulq cannot be more than 100 %')
    const allowance = peakAllowanceM3(etoM, areaM2)
    const [depth, area] = [show(etoM, 'depth', system), show(areaM2, 'area', system)]
    const step = `${figures(PEAK_MONTH_SHARE, 2)} × ${depth} × ${area} = ${show(allowance, 'volume', system)}`
    const value = { allowance, 'allowance-us': gallons(allowance) }
    if (coefficient === undefined || lowQuarter === undefined) return { value, steps: [step] }
    const requirement = peakRequirementM3({ etoM, coefficient, rainM, lowQuarter, areaM2 })
    const rain = rainM > 0 ? ` − ${show(rainM, 'depth', system)}` : ''
    return {
      value: { ...value, requirement, 'requirement-us': gallons(requirement) },
      steps: [
        step,
        `(${depth} × ${figures(coefficient, 3)}${rain}) / ${figures(lowQuarter, 3)} × ${area} = ${show(requirement, 'volume', system)}`
      ]
    }
  },
  example: {
    inputs: { eto: '6.1 in', area: '1000 ft²', coefficient: '0.6', dulq: '70 %', units: 'us' },
    outputs: { 'allowance-us': 2661.8, 'requirement-us': 3259.4, allowance: 10.076 }
  }
}

/** A gallon is 231 cubic inches. */
const gallons = (m3: number): number => m3 / (231 * 0.0254 ** 3)
