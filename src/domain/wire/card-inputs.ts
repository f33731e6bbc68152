import type { CalculationInputs, InputSpec } from '../calculation.ts'
import { optionalNumber, optionalText } from '../inputs.ts'
import { COATINGS, CONDUCTORS, SOIL_C } from './make.ts'
import type { Coating, Conductor, WireMake } from './make.ts'

/** Inputs that several wire cards share, worded once. */
export const WIRE_INPUTS = {
  size: { kind: { is: 'wire-size' }, does: 'size of the wire: "0.75 mm²", "18 AWG", "0.8 mm diameter"' },
  length: { kind: { is: 'quantity', dimension: 'length' }, does: 'length of the run, one way' },
  conductor: { kind: { is: 'choice', of: CONDUCTORS }, does: 'how the conductor is made', optional: 'solid' },
  coating: { kind: { is: 'choice', of: COATINGS }, does: 'plain or tinned copper', optional: 'plain' },
  temperature: {
    kind: { is: 'quantity', dimension: 'temperature' },
    does: 'temperature of the wire',
    optional: '20 °C, about that of soil'
  },
  coils: { kind: { is: 'count' }, does: 'equal coils side by side on the output', optional: '1' }
} as const satisfies Record<string, InputSpec>

export function makeOf(inputs: CalculationInputs): WireMake {
  return {
    conductor: (optionalText(inputs, 'conductor') ?? 'solid') as Conductor,
    coating: (optionalText(inputs, 'coating') ?? 'plain') as Coating
  }
}

export const temperatureOf = (inputs: CalculationInputs): number => optionalNumber(inputs, 'temperature') ?? SOIL_C
export const coilsOf = (inputs: CalculationInputs): number => optionalNumber(inputs, 'coils') ?? 1
