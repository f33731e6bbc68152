import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { COEFFICIENT_RANGES, PLANT_FACTORS } from '../../reference/plant-factors.ts'
import { show } from '../../units/show.ts'
import { negative } from '../amounts.ts'
import type { Calculation, CalculationInputs, OutputValue } from '../calculation.ts'
import { figures } from '../figures.ts'
import { optionalNumber, optionalText } from '../inputs.ts'
import { IN_PER_M, MM_PER_M, UNITS_INPUT, unitsOfWorking } from './units.ts'

/** Share of reference evapotranspiration that a mixed planting uses: species × density × microclimate. 0.5 × 1.0 × 1.2 is 0.6. */
export function landscapeCoefficient(species: number, density: number, microclimate: number): number {
  return species * density * microclimate
}

interface Factor {
  readonly value: number
  readonly steps: readonly string[]
}

const number = { is: 'number' } as const

export const landscapeCoefficientCard: Calculation = {
  name: 'landscape-coefficient',
  title: 'Landscape coefficient',
  does: 'Gives the share of reference evapotranspiration that a planting uses, from species, density and microclimate or from one plant factor, and the depth that is.',
  inputs: {
    species: { kind: number, does: 'species factor', optional: 'factor or kind' },
    density: { kind: number, does: 'density factor: 1.0 where the ground is covered', optional: '1.0' },
    microclimate: {
      kind: number,
      does: 'microclimate factor: 1.0 in the open, more beside pavement, less in shade',
      optional: '1.0'
    },
    factor: { kind: number, does: 'one plant factor in place of all three', optional: 'species or kind' },
    kind: {
      kind: { is: 'choice', of: PLANT_FACTORS.map(one => one.kind) },
      does: 'kind of planting, for its factor in the table',
      optional: 'species or factor'
    },
    eto: {
      kind: { is: 'quantity', dimension: 'length' },
      does: 'reference evapotranspiration over a period',
      optional: 'no depth is given'
    },
    ...UNITS_INPUT
  },
  outputs: {
    coefficient: { does: 'share of reference evapotranspiration', unit: '' },
    use: { does: 'what the planting uses over the period', unit: 'mm' },
    'use-us': { does: 'the same in inches', unit: 'in' }
  },
  sources: ['wucols-guide', 'wucols-classes', 'asabe-s623', 'from-memory'],
  limits:
    'For plantings that are established and need only look acceptable. A zone of mixed plants goes by the one that wants most. Ranges of density and microclimate are from memory.',
  run: inputs => {
    const factor = factorOf(inputs)
    if (isAbsent(factor)) return factor
    const eto = optionalNumber(inputs, 'eto')
    const fault = negative({ eto })
    if (fault) return fault
    const value: Record<string, OutputValue> = { coefficient: factor.value }
    if (eto === undefined) return { value, steps: factor.steps }
    const system = unitsOfWorking(inputs)
    const use = eto * factor.value
    return {
      value: { ...value, use: use * MM_PER_M, 'use-us': use * IN_PER_M },
      steps: [
        ...factor.steps,
        `${show(eto, 'depth', system)} × ${figures(factor.value, 3)} = ${show(use, 'depth', system)}`
      ]
    }
  },
  example: {
    inputs: { species: '0.5', density: '1.0', microclimate: '1.2', eto: '118 mm' },
    outputs: { coefficient: 0.6, use: 70.8, 'use-us': 2.787 }
  }
}

function factorOf(inputs: CalculationInputs): Maybe<Factor> {
  const [species, density, microclimate] = [
    optionalNumber(inputs, 'species'),
    optionalNumber(inputs, 'density'),
    optionalNumber(inputs, 'microclimate')
  ]
  const [factor, kind] = [optionalNumber(inputs, 'factor'), optionalText(inputs, 'kind')]
  const fault = negative({ species, density, microclimate, factor })
  if (fault) return fault
  if ([species, factor, kind].filter(given => given !== undefined).length !== 1)
    return absent('give one of species, factor and kind')
  if (species === undefined && (density ?? microclimate) !== undefined)
    return absent('density and microclimate go with species: a plant factor has them in it')
  if (factor !== undefined) return { value: factor, steps: [`plant factor, as given: ${figures(factor, 3)}`] }
  const row = PLANT_FACTORS.find(one => one.kind === kind)
  if (row) return { value: row.factor, steps: [`${row.kind}, ${rangeWords(row)}: ${figures(row.factor, 3)}`] }
  const parts = { species: species ?? 0, density: density ?? 1, microclimate: microclimate ?? 1 }
  const value = landscapeCoefficient(parts.species, parts.density, parts.microclimate)
  const product = `${figures(parts.species, 3)} × ${figures(parts.density, 3)} × ${figures(parts.microclimate, 3)} = ${figures(value, 3)}`
  return { value, steps: [...strayWords(parts), `species × density × microclimate: ${product}`] }
}

const rangeWords = ({ least, most }: { readonly least: number; readonly most: number }): string =>
  least === most ? `${figures(least, 2)} in the table` : `${figures(least, 2)} to ${figures(most, 2)} in the table`

/** A part outside of its range is computed with, and said. */
function strayWords(parts: Readonly<Record<keyof typeof COEFFICIENT_RANGES, number>>): readonly string[] {
  return (Object.keys(COEFFICIENT_RANGES) as (keyof typeof COEFFICIENT_RANGES)[]).flatMap(name => {
    const { least, most } = COEFFICIENT_RANGES[name]
    const stray = parts[name] < least || parts[name] > most
    return stray
      ? [`${name} ${figures(parts[name], 3)} lies outside of ${figures(least, 2)} to ${figures(most, 2)}`]
      : []
  })
}
