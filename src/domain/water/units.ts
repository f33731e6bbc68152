import type { UnitSystem } from '../../units/show.ts'
import type { CalculationInputs, InputSpec } from '../calculation.ts'
import { optionalText } from '../inputs.ts'

const UNIT_SYSTEMS = ['metric', 'us'] as const satisfies readonly UnitSystem[]

/** Which units a card's working is written in; its results carry their own. */
export const UNITS_INPUT = {
  units: { kind: { is: 'choice', of: UNIT_SYSTEMS }, does: 'units of the working', optional: 'metric' }
} as const satisfies Readonly<Record<string, InputSpec>>

export const unitsOfWorking = (inputs: CalculationInputs): UnitSystem =>
  (optionalText(inputs, 'units') as UnitSystem | undefined) ?? 'metric'

export const MM_PER_M = 1000
export const IN_PER_M = 1 / 0.0254
export const S_PER_MIN = 60
