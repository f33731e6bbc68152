import { isAbsent } from '../../base/absent.ts'
import { fromSi } from '../../units/quantity.ts'
import { showWireSize } from '../../units/wire-size.ts'
import type { Calculation } from '../calculation.ts'
import { optionalNumber, wireSizeOf } from '../inputs.ts'
import { negative } from '../amounts.ts'
import { WIRE_INPUTS, makeOf, temperatureOf } from './card-inputs.ts'
import { resistancePerM } from './resistance.ts'
import { lengthText, ohmText, perLengthText, unitOf } from './words.ts'

export const resistanceAt: Calculation = {
  name: 'resistance-at',
  title: 'Resistance of one wire at a temperature',
  does: 'Gives the resistance of one wire for its length and for a kilometer and a thousand feet, from the table or formula that fits its size.',
  inputs: {
    size: WIRE_INPUTS.size,
    temperature: WIRE_INPUTS.temperature,
    conductor: WIRE_INPUTS.conductor,
    coating: WIRE_INPUTS.coating,
    length: { ...WIRE_INPUTS.length, does: 'length of the one wire', optional: '1 km' }
  },
  outputs: {
    'per-km': { does: 'resistance of a kilometer', unit: 'ohm/km' },
    'per-kft': { does: 'resistance of a thousand feet', unit: 'ohm/kft' },
    resistance: { does: 'resistance of the length', unit: 'ohm' },
    basis: { does: 'where the figure comes from', unit: '' }
  },
  sources: ['astm-b258', 'nbs-100', 'iec-60228', 'nec-ch9-t8'],
  limits:
    'Copper only, −60 to 200 °C. IEC figures are the greatest a conductor may have; a new cable reads a little less.',
  run: inputs => {
    const size = wireSizeOf(inputs, 'size')
    const lengthM = optionalNumber(inputs, 'length') ?? 1000
    const fault = negative({ length: lengthM })
    if (fault) return fault
    const wire = resistancePerM(size, makeOf(inputs), temperatureOf(inputs))
    if (isAbsent(wire)) return wire
    const unit = unitOf(size)
    const resistance = wire.ohmPerM * lengthM
    return {
      value: {
        'per-km': wire.ohmPerM * 1000,
        'per-kft': fromSi(wire.ohmPerM, 'ohm/kft', 'resistance-per-length'),
        resistance,
        basis: wire.basis
      },
      steps: [
        `${showWireSize(size)}: ${perLengthText(wire.ohmPerM, unit)} (${wire.basis})`,
        `${lengthText(lengthM, unit)} × ${perLengthText(wire.ohmPerM, unit)} = ${ohmText(resistance)}`
      ]
    }
  },
  example: {
    inputs: { size: '12 AWG', temperature: '75 °C', length: '1000 ft' },
    outputs: { 'per-km': 6.3372, 'per-kft': 1.9316, resistance: 1.9316 }
  }
}
