import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { roundedText } from '../../units/show.ts'
import { notPositive } from '../amounts.ts'
import type { Calculation, CalculationInputs } from '../calculation.ts'
import { numberOf, optionalNumber, optionalText } from '../inputs.ts'

/** Flow spread over an area, m³/s over m², in m/s. In trade units mm/h = 60 × L/min ÷ m² and in/h = 96.25 × gpm ÷ ft². */
export function applicationRate(flowM3PerS: number, areaM2: number): number {
  return flowM3PerS / areaM2
}

/** Depth in m that a rate in m/s gives in so many seconds. */
export function appliedDepthM(rateMPerS: number, timeS: number): number {
  return rateMPerS * timeS
}

const LAYOUTS = ['square', 'triangle'] as const
export type Layout = (typeof LAYOUTS)[number]

/** Rows of an equilateral triangle lie closer than its side, by √3 / 2. */
const TRIANGLE_ROWS = Math.sqrt(3) / 2

/**
 * Area in m² that one sprinkler or emitter waters: spacing along the row times spacing of the rows. `triangle` where the rows are shifted and
 * `rowM` is again the distance to the next sprinkler, not that of the rows.
 */
export function spacingAreaM2(alongM: number, rowM: number, layout: Layout): number {
  return alongM * rowM * (layout === 'triangle' ? TRIANGLE_ROWS : 1)
}

/** "60 × 38 L/min ÷ 210 m² = 10.9 mm/h". */
export function rateStep(flowM3PerS: number, areaM2: number): string {
  const mmPerH = applicationRate(flowM3PerS, areaM2) * 3_600_000
  return `60 × ${roundedText(flowM3PerS * 60_000, 2)} L/min ÷ ${roundedText(areaM2, 1)} m² = ${roundedText(mmPerH, 1)} mm/h`
}

export const applicationRateCard: Calculation = {
  name: 'application-rate',
  title: 'Application rate',
  does: 'How fast a zone puts water on its area: flow divided by area.',
  inputs: {
    flow: {
      kind: { is: 'quantity', dimension: 'flow' },
      does: 'flow of the zone; of one full circle or one emitter where a spacing is given'
    },
    area: { kind: { is: 'quantity', dimension: 'area' }, does: 'area it waters', optional: 'spacing and row-spacing' },
    spacing: {
      kind: { is: 'quantity', dimension: 'length' },
      does: 'from one sprinkler or emitter to the next in its row',
      optional: 'area'
    },
    'row-spacing': { kind: { is: 'quantity', dimension: 'length' }, does: 'from row to row', optional: 'area' },
    layout: {
      kind: { is: 'choice', of: LAYOUTS },
      does: 'triangle, where row-spacing is measured to the nearest sprinkler of a shifted row',
      optional: 'square'
    }
  },
  outputs: {
    rate: { does: 'application rate', unit: 'mm/h' },
    rateUs: { does: 'the same in inches', unit: 'in/h' }
  },
  sources: ['volume-over-area'],
  limits: 'With a spacing, a half circle counts with twice its flow, a quarter with four times.',
  run: inputs => {
    const areaM2 = areaOf(inputs)
    if (isAbsent(areaM2)) return areaM2
    const flow = numberOf(inputs, 'flow')
    const fault = notPositive({ flow, area: areaM2.value })
    if (fault) return fault
    const mmPerH = applicationRate(flow, areaM2.value) * 3_600_000
    return { value: { rate: mmPerH, rateUs: mmPerH / 25.4 }, steps: [...areaM2.steps, rateStep(flow, areaM2.value)] }
  },
  example: { inputs: { flow: '38 L/min', area: '210 m²' }, outputs: { rate: 10.857, rateUs: 0.4274 } }
}

function areaOf(inputs: CalculationInputs): Maybe<{ readonly value: number; readonly steps: readonly string[] }> {
  const area = optionalNumber(inputs, 'area')
  const [along, row] = [optionalNumber(inputs, 'spacing'), optionalNumber(inputs, 'row-spacing')]
  if (area !== undefined)
    return along === undefined && row === undefined
      ? { value: area, steps: [] }
      : absent('give an area or a spacing, not both')
  if (along === undefined || row === undefined) return absent('give an area, or spacing and row-spacing')
  const layout = (optionalText(inputs, 'layout') as Layout | undefined) ?? 'square'
  const value = spacingAreaM2(along, row, layout)
  const triangle = layout === 'triangle' ? ' × 0.866' : ''
  const step = `${roundedText(along, 2)} m × ${roundedText(row, 2)} m${triangle} = ${roundedText(value, 3)} m² each`
  return { value, steps: [step] }
}
