import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import type { WireSize } from '../../units/wire-size.ts'
import { notPositive } from '../amounts.ts'
import type { CalculationInputs, InputSpec } from '../calculation.ts'
import { optionalNumber, optionalText } from '../inputs.ts'
import { WIRE_INPUTS, coilsOf } from './card-inputs.ts'
import type { OutputLimit } from './limit.ts'
import { parseStatedLength } from './stated-length.ts'

const volts = { is: 'quantity', dimension: 'voltage' } as const
const ohms = { is: 'quantity', dimension: 'resistance' } as const

/** The three forms of a product sheet's limit, as inputs of a card. */
export const LIMIT_INPUTS = {
  'limit-length': {
    kind: { is: 'text' },
    does: 'longest run that the sheet states, as printed: "100 ft (30 m)"',
    optional: 'no limit on length'
  },
  'limit-size': {
    kind: { is: 'wire-size' },
    does: 'size at which that length holds',
    optional: 'the length is a cap at any size'
  },
  'limit-loop': { kind: ohms, does: 'greatest loop that the sheet states', optional: 'no limit in ohms' },
  'pulse-volts': { kind: volts, does: 'volts at the terminals during the pulse', optional: 'no limit by voltage' },
  'lowest-volts': { kind: volts, does: 'lowest volts at which the coil works', optional: 'no limit by voltage' },
  coil: { kind: ohms, does: 'resistance of one coil', optional: 'no limit by voltage' },
  coils: WIRE_INPUTS.coils
} as const satisfies Record<string, InputSpec>

/** The limits that were given, or the reason why there is none to hold a run against. */
export function limitsOf(inputs: CalculationInputs): Maybe<readonly OutputLimit[]> {
  const coils = coilsOf(inputs)
  const loop = optionalNumber(inputs, 'limit-loop')
  const fault = notPositive({ coils, 'limit-loop': loop })
  if (fault) return fault
  const length = lengthLimit(inputs, coils)
  if (isAbsent(length)) return length
  const voltage = voltageLimit(inputs, coils)
  if (isAbsent(voltage)) return voltage
  const limits = [...voltage, ...(loop === undefined ? [] : [{ form: 'loop', ohm: loop, coils } as const]), ...length]
  if (limits.length > 0) return limits
  return absent('give a limit: limit-length, limit-loop, or pulse-volts with lowest-volts and coil')
}

function lengthLimit(inputs: CalculationInputs, coils: number): Maybe<readonly OutputLimit[]> {
  const text = optionalText(inputs, 'limit-length')
  if (text === undefined) return []
  const stated = parseStatedLength(text)
  if (!stated) return absent(`limit-length: “${text}” is not a length; write it like “100 ft” or “100 ft (30 m)”`)
  const size = inputs['limit-size'] as WireSize | undefined
  const unit = stated.unit === 'ft' ? 'ft' : 'm'
  return [{ form: 'length', lengthM: stated.si, unit, coils, ...(size === undefined ? {} : { size }) }]
}

function voltageLimit(inputs: CalculationInputs, coils: number): Maybe<readonly OutputLimit[]> {
  const pulseVolt = optionalNumber(inputs, 'pulse-volts')
  const lowestVolt = optionalNumber(inputs, 'lowest-volts')
  const coil = optionalNumber(inputs, 'coil')
  if (pulseVolt === undefined && lowestVolt === undefined && coil === undefined) return []
  if (pulseVolt === undefined || lowestVolt === undefined || coil === undefined)
    return absent('a limit by voltage needs pulse-volts, lowest-volts and coil')
  const fault = notPositive({ 'pulse-volts': pulseVolt, 'lowest-volts': lowestVolt, coil })
  return fault ?? [{ form: 'voltage', pulseVolt, lowestVolt, coilOhm: coil / coils }]
}
