import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { sum } from '../../base/collections.ts'
import { ADJUSTMENTS, LAND_USES } from '../../reference/water-budget.ts'
import type { LandUse } from '../../reference/water-budget.ts'
import { fromSi, quantity } from '../../units/quantity.ts'
import { negative, notPositive } from '../amounts.ts'
import type { Calculation, CalculationInputs } from '../calculation.ts'
import { figures, measure } from '../figures.ts'
import { numberOf, optionalNumber, optionalText } from '../inputs.ts'
import { atLeast, atMost } from '../within.ts'
import { readAmount } from './amount-list.ts'
import { allowanceGal, meanAdjustment, specialUseGal, zoneUseGal } from './water-budget.ts'
import type { AllowanceFacts, Hydrozone } from './water-budget.ts'

const ZONE_EXAMPLE = '0.5, 81 %, 204 ft²; 0.8, 75 %, 677 ft²'
const area = { is: 'quantity', dimension: 'area' } as const
const length = { is: 'quantity', dimension: 'length' } as const

export const waterBudgetCard: Calculation = {
  name: 'water-budget',
  title: 'Water budget of a year',
  does: 'Gives the most that may be applied to a landscape in a year by the California model ordinance, and what its zones are estimated to use.',
  inputs: {
    eto: { kind: length, does: 'reference evapotranspiration of the year' },
    area: { kind: area, does: 'whole irrigated landscape, special areas included' },
    'special-area': {
      kind: area,
      does: 'part of it that counts in full: food plants, play, water features, recycled water',
      optional: 'none'
    },
    use: {
      kind: { is: 'choice', of: LAND_USES },
      does: 'residential 0.55, non-residential 0.45',
      optional: 'adjustment'
    },
    adjustment: { kind: { is: 'number' }, does: 'evapotranspiration adjustment of the local rule', optional: 'use' },
    rain: { kind: length, does: 'rain of the year that counts; at most a quarter of what falls', optional: 'none' },
    zones: {
      kind: { is: 'text' },
      does: `hydrozones as plant factor, efficiency, area: ${ZONE_EXAMPLE}`,
      optional: 'only the allowance is given'
    }
  },
  outputs: {
    allowance: { does: 'most that may be applied in the year', unit: 'm³' },
    'allowance-us': { does: 'the same', unit: 'gal' },
    estimated: { does: 'estimated use of the zones', unit: 'm³' },
    'estimated-us': { does: 'the same', unit: 'gal' },
    'mean-adjustment': { does: 'adjustment that the zones come to, special areas left out', unit: '' },
    'site-adjustment': { does: 'adjustment of the whole site', unit: '' },
    within: { does: 'whether the estimate keeps to the allowance', unit: '' }
  },
  sources: ['ca-title-23-490', 'ca-effective-rain'],
  limits:
    'By the ordinance of 2015, which counts 0.62 gal for an inch on a square foot (0.5 % less than it is). Overhead 75 % and drip 81 % are its efficiencies. Local rules may be tighter; the authority decides.',
  run: inputs => {
    const facts = factsOf(inputs)
    if (isAbsent(facts)) return facts
    const allowed = allowanceGal(facts)
    const value = { allowance: cubic(allowed), 'allowance-us': allowed }
    const text = optionalText(inputs, 'zones')
    if (text === undefined) return { value, steps: [allowanceStep(facts, allowed)] }
    const zones = zonesOf(text)
    if (isAbsent(zones)) return zones
    const zoned = sum(zones.map(zone => zone.areaM2)) + facts.specialAreaM2
    if (!atMost(zoned, facts.areaM2)) return absent('the zones and the special areas are larger than the area')
    const used = [...zones.map(zone => zoneUseGal(facts.etoM, zone)), specialUseGal(facts.etoM, facts.specialAreaM2)]
    const total = sum(used)
    return {
      value: {
        ...value,
        estimated: cubic(total),
        'estimated-us': total,
        'mean-adjustment': meanAdjustment(zones, 0),
        'site-adjustment': meanAdjustment(zones, facts.specialAreaM2),
        within: atMost(total, allowed)
      },
      steps: [allowanceStep(facts, allowed), ...zones.map(zone => zoneStep(facts.etoM, zone)), totalStep(facts, total)]
    }
  },
  example: {
    inputs: {
      eto: '43 in',
      area: '2453 ft²',
      'special-area': '68 ft²',
      use: 'residential',
      zones: '0.5, 81 %, 204 ft²; 0.2, 81 %, 1310 ft²; 0.8, 75 %, 677 ft²; 0.2, 81 %, 194 ft²'
    },
    outputs: {
      'allowance-us': 36784.1,
      'estimated-us': 34322.54,
      'mean-adjustment': 0.5114,
      'site-adjustment': 0.525,
      within: true
    }
  }
}

const cubic = (gallons: number): number => quantity(gallons, 'gal', 'volume').si
const inches = (m: number): string => measure(fromSi(m, 'in', 'length'), 4, 'in')
const feet = (m2: number): string => measure(fromSi(m2, 'ft²', 'area'), 5, 'ft²')

function factsOf(inputs: CalculationInputs): Maybe<AllowanceFacts> {
  const use = optionalText(inputs, 'use') as LandUse | undefined
  const stated = optionalNumber(inputs, 'adjustment')
  if ((use === undefined) === (stated === undefined)) return absent('give use or adjustment, one of them')
  const facts = {
    etoM: numberOf(inputs, 'eto'),
    rainM: optionalNumber(inputs, 'rain') ?? 0,
    adjustment: stated ?? ADJUSTMENTS[use as LandUse],
    areaM2: numberOf(inputs, 'area'),
    specialAreaM2: optionalNumber(inputs, 'special-area') ?? 0
  }
  const fault =
    notPositive({ eto: facts.etoM, area: facts.areaM2, adjustment: facts.adjustment }) ??
    negative({ rain: facts.rainM, 'special-area': facts.specialAreaM2 })
  if (fault) return fault
  if (facts.adjustment > 1) return absent('adjustment is a part of evapotranspiration, at most 1')
  if (!atLeast(facts.areaM2, facts.specialAreaM2)) return absent('special-area is a part of area and cannot be larger')
  return facts
}

function zonesOf(text: string): Maybe<readonly Hydrozone[]> {
  const zones: Hydrozone[] = []
  for (const part of text.split(';').filter(one => one.trim() !== '')) {
    const [factorText = '', efficiencyText = '', areaText = '', more] = part.split(/,\s+/u)
    const [factor, efficiency] = [Number(factorText.trim() || 'x'), readAmount(efficiencyText, 'ratio', '81 %')]
    const areaM2 = readAmount(areaText, 'area', '204 ft²')
    if (isAbsent(efficiency)) return efficiency
    if (isAbsent(areaM2)) return areaM2
    if (!(factor >= 0) || more !== undefined)
      return absent(`“${part.trim()}” is not a zone; write it like “0.5, 81 %, 204 ft²”`)
    if (!(efficiency > 0 && efficiency <= 1)) return absent('the efficiency of a zone is more than 0 and at most 100 %')
    if (!(areaM2 > 0)) return absent('the area of a zone is more than zero')
    zones.push({ factor, efficiency, areaM2 })
  }
  return zones.length > 0 ? zones : absent(`no zone is written; write them like “${ZONE_EXAMPLE}”`)
}

function allowanceStep({ etoM, rainM, adjustment, areaM2, specialAreaM2 }: AllowanceFacts, gallons: number): string {
  const depth = rainM > 0 ? `(${inches(etoM)} − ${inches(rainM)})` : inches(etoM)
  const rest = figures(1 - adjustment, 3)
  return `allowance: ${depth} × 0.62 × (${figures(adjustment, 3)} × ${feet(areaM2)} + ${rest} × ${feet(specialAreaM2)}) = ${measure(gallons, 6, 'gal')}`
}

function zoneStep(etoM: number, zone: Hydrozone): string {
  const { factor, efficiency, areaM2 } = zone
  return `zone: ${inches(etoM)} × 0.62 × ${figures(factor, 3)} / ${figures(efficiency, 3)} × ${feet(areaM2)} = ${measure(zoneUseGal(etoM, zone), 6, 'gal')}`
}

function totalStep({ etoM, specialAreaM2 }: AllowanceFacts, total: number): string {
  const special =
    specialAreaM2 > 0 ? `, with ${measure(specialUseGal(etoM, specialAreaM2), 5, 'gal')} for the special areas` : ''
  return `estimated use${special}: ${measure(total, 6, 'gal')}`
}
