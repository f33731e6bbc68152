import { isAbsent } from '../../base/absent.ts'
import { AWG } from '../../reference/awg.ts'
import { showWireSize } from '../../units/wire-size.ts'
import type { Calculation } from '../calculation.ts'
import { figures, measure } from '../figures.ts'
import { wireSizeOf } from '../inputs.ts'
import { circleDiameterMm, gaugeOfDiameter } from './awg.ts'
import { WIRE_INPUTS } from './card-inputs.ts'
import { sectionMm2 } from './section.ts'

/** Circular mils: the square of the diameter in thousandths of an inch. */
export const circularMils = (diameterMm: number): number => (diameterMm / 0.0254) ** 2

/** The nearest gauge there is, 4/0 (-3) to 40. */
export function nearestGauge(diameterMm: number): number {
  return Math.min(AWG.thinnest, Math.max(AWG.thickest, Math.round(gaugeOfDiameter(diameterMm / 1000))))
}

export const wireSize: Calculation = {
  name: 'wire-size',
  title: 'Wire size: gauge, diameter and area',
  does: 'Turns a gauge, a diameter or an area into the other two, with circular mils and the nearest gauge.',
  inputs: { size: WIRE_INPUTS.size },
  outputs: {
    diameter: { does: 'diameter of a solid conductor', unit: 'mm' },
    area: { does: 'metal area', unit: 'mm²' },
    'circular-mils': { does: 'area in circular mils', unit: 'cmil' },
    'gauge-exact': { does: 'gauge, not rounded; 1/0 counts as 0, 4/0 as −3', unit: '' },
    'nearest-gauge': { does: 'nearest gauge', unit: '' }
  },
  sources: ['astm-b258'],
  limits:
    'A nominal area of IEC 60228 is a name: its conductor is judged by resistance, so compare ohms, not areas. Printed gauge tables carry four figures.',
  run: inputs => {
    const size = wireSizeOf(inputs, 'size')
    const area = sectionMm2(size)
    if (isAbsent(area)) return area
    const diameter = circleDiameterMm(area)
    const exact = gaugeOfDiameter(diameter / 1000)
    const gauge = showWireSize({ kind: 'awg', gauge: nearestGauge(diameter) }).replaceAll('\u00a0', ' ')
    const mm = measure(diameter, 5, 'mm')
    const fromGauge = size.kind === 'awg' || size.kind === 'pair'
    const steps = [
      fromGauge
        ? `0.127\u00a0mm × 92^((36 − ${figures(size.gauge, 3)}) / 39) = ${mm} (ASTM B258)`
        : `√(4 × ${measure(area, 5, 'mm²')} / π) = ${mm}`,
      `π × (${mm})² / 4 = ${measure(area, 5, 'mm²')}`,
      `(${mm} / 0.0254\u00a0mm)² = ${measure(circularMils(diameter), 5, 'cmil')}`
    ]
    return {
      value: {
        diameter,
        area,
        'circular-mils': circularMils(diameter),
        'gauge-exact': exact,
        'nearest-gauge': gauge
      },
      steps: fromGauge ? steps : [...steps, `36 − 39 × ln(${mm} / 0.127\u00a0mm) / ln 92 = ${figures(exact, 4)}`]
    }
  },
  example: {
    inputs: { size: '12 AWG' },
    outputs: {
      diameter: 2.0525,
      area: 3.3088,
      'circular-mils': 6530,
      'gauge-exact': 12,
      'nearest-gauge': '12 AWG'
    }
  }
}
