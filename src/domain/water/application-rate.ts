import type { Calculation } from '../calculation.ts'
import { numberOf } from '../inputs.ts'
import { roundedText } from '../../units/show.ts'

/** Flow spread over an area, m³/s over m², in m/s. In trade units mm/h = 60 × L/min ÷ m² and in/h = 96.25 × gpm ÷ ft². */
export function applicationRate(flowM3PerS: number, areaM2: number): number {
  return flowM3PerS / areaM2
}

export const applicationRateCard: Calculation = {
  name: 'application-rate',
  title: 'Application rate',
  does: 'How fast a zone puts water on its area: flow divided by area.',
  inputs: {
    flow: { kind: { is: 'quantity', dimension: 'flow' }, does: 'flow of the zone' },
    area: { kind: { is: 'quantity', dimension: 'area' }, does: 'area it waters' }
  },
  outputs: {
    rate: { does: 'application rate', unit: 'mm/h' },
    rateUs: { does: 'the same in inches', unit: 'in/h' }
  },
  sources: ['volume-over-area'],
  run: inputs => {
    const rate = applicationRate(numberOf(inputs, 'flow'), numberOf(inputs, 'area'))
    const mmPerH = rate * 1000 * 3600
    return {
      value: { rate: mmPerH, rateUs: mmPerH / 25.4 },
      steps: [rateStep(numberOf(inputs, 'flow'), numberOf(inputs, 'area'))]
    }
  },
  example: { inputs: { flow: '38 L/min', area: '210 m²' }, outputs: { rate: 10.857, rateUs: 0.4274 } }
}

/** "60 × 38 L/min ÷ 210 m² = 10.9 mm/h". */
export function rateStep(flowM3PerS: number, areaM2: number): string {
  const mmPerH = applicationRate(flowM3PerS, areaM2) * 3_600_000
  return `60 × ${roundedText(flowM3PerS * 60_000, 2)} L/min ÷ ${roundedText(areaM2, 1)} m² = ${roundedText(mmPerH, 1)} mm/h`
}
