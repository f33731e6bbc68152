import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { fromSi } from '../../units/quantity.ts'
import type { WireSize } from '../../units/wire-size.ts'
import { negative } from '../amounts.ts'
import type { Calculation, CalculationInputs, Worked } from '../calculation.ts'
import { figures, measure } from '../figures.ts'
import { numberOf, optionalNumber } from '../inputs.ts'
import { WIRE_INPUTS, makeOf, temperatureOf } from './card-inputs.ts'
import { resistancePerM } from './resistance.ts'
import { lengthText, ohmText, perLengthNumber, perLengthText, unitOf, voltText } from './words.ts'

/** Volts lost in both wires: length × (ohms out + ohms back) × current. */
export function dropVolt(lengthM: number, outOhmPerM: number, backOhmPerM: number, currentA: number): number {
  return lengthM * (outOhmPerM + backOhmPerM) * currentA
}

const perLength = { is: 'quantity', dimension: 'resistance-per-length' } as const

export const voltageDrop: Calculation = {
  name: 'voltage-drop',
  title: 'Voltage drop of a steady current',
  does: 'Gives the volts lost in the two wires for a current, from a size or from ohms that are stated for the wire.',
  inputs: {
    length: WIRE_INPUTS.length,
    current: { kind: { is: 'quantity', dimension: 'current' }, does: 'steady current' },
    size: { ...WIRE_INPUTS.size, optional: 'the stated resistance is used' },
    resistance: { kind: perLength, does: 'stated resistance of the wire out', optional: 'worked out from the size' },
    'return-resistance': { kind: perLength, does: 'stated resistance of the wire back', optional: 'the same as out' },
    supply: { kind: { is: 'quantity', dimension: 'voltage' }, does: 'supply voltage', optional: 'no percentage' },
    conductor: WIRE_INPUTS.conductor,
    coating: WIRE_INPUTS.coating,
    temperature: WIRE_INPUTS.temperature
  },
  outputs: {
    drop: { does: 'volts lost in both wires', unit: 'V' },
    loop: { does: 'resistance of both wires', unit: 'ohm' },
    'drop-share': { does: 'part of the supply that is lost, where a supply is given', unit: '%' },
    left: { does: 'volts left at the far end, where a supply is given', unit: 'V' }
  },
  sources: ['ohms-law', 'iec-60228', 'astm-b258', 'nec-ch9-t8'],
  limits: 'Direct current, two wires. Tables differ by base temperature; stated ohms are used as they stand.',
  run: inputs => {
    const [lengthM, currentA] = [numberOf(inputs, 'length'), numberOf(inputs, 'current')]
    const supply = optionalNumber(inputs, 'supply')
    const fault = negative({ length: lengthM, current: currentA, supply })
    if (fault) return fault
    const out = outOhm(inputs)
    if (isAbsent(out)) return out
    const back = optionalNumber(inputs, 'return-resistance') ?? out.ohmPerM
    const drop = dropVolt(lengthM, out.ohmPerM, back, currentA)
    const loop = lengthM * (out.ohmPerM + back)
    const both =
      back === out.ohmPerM
        ? `2 × ${perLengthText(back, out.unit)}`
        : `(${perLengthNumber(out.ohmPerM, out.unit)} + ${perLengthText(back, out.unit)})`
    const steps = [
      `${lengthText(lengthM, out.unit)} × ${both} = ${ohmText(loop)} (${out.basis})`,
      `${measure(currentA, 4, 'A')} × ${ohmText(loop)} = ${voltText(drop)}`
    ]
    const far = supply === undefined || supply === 0 ? undefined : farEnd(supply, drop)
    return { value: { drop, loop, ...far?.value }, steps: [...steps, ...(far?.steps ?? [])] }
  },
  example: {
    inputs: { length: '100 ft', current: '4 A', resistance: '4.99 ohm/kft', supply: '24 V' },
    outputs: { drop: 3.992, loop: 0.998, 'drop-share': 16.63, left: 20.008 }
  }
}

function farEnd(supply: number, drop: number): Worked<Record<string, number>> {
  const share = (drop / supply) * 100
  return {
    value: { 'drop-share': share, left: supply - drop },
    steps: [
      `${voltText(drop)} / ${voltText(supply)} = ${figures(share, 3)}\u00a0%`,
      `${voltText(supply)} − ${voltText(drop)} = ${measure(supply - drop, 4, 'V')} left`
    ]
  }
}

interface OutWire {
  readonly ohmPerM: number
  readonly unit: 'm' | 'ft'
  readonly basis: string
}

function outOhm(inputs: CalculationInputs): Maybe<OutWire> {
  const stated = optionalNumber(inputs, 'resistance')
  const size = inputs['size'] as WireSize | undefined
  if (stated !== undefined) {
    const whole = (unit: string) =>
      Number(fromSi(stated, unit, 'resistance-per-length').toPrecision(10)).toString().length
    // Nobody told the unit; the one in which the figure is shorter is the one it was written in.
    return { ohmPerM: stated, unit: whole('ohm/kft') < whole('ohm/km') ? 'ft' : 'm', basis: 'ohms as stated' }
  }
  if (size === undefined) return absent('give the size of the wire, or its resistance for a length')
  const wire = resistancePerM(size, makeOf(inputs), temperatureOf(inputs))
  return isAbsent(wire) ? wire : { ohmPerM: wire.ohmPerM, unit: unitOf(size), basis: wire.basis }
}
