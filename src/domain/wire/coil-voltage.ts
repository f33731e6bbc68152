import type { Calculation } from '../calculation.ts'
import { negative, notPositive } from '../amounts.ts'
import { numberOf, optionalNumber } from '../inputs.ts'
import { WIRE_INPUTS, coilsOf } from './card-inputs.ts'
import { ohmText, voltText } from './words.ts'

export interface CoilCircuit {
  /** At the controller's terminals during the pulse. */
  readonly pulseVolt: number
  /** The coil, or coils in parallel. */
  readonly coilOhm: number
  readonly loopOhm: number
  /** Ahead of the terminals; 0 where the pulse volts are those at the terminals. */
  readonly sourceOhm: number
}

/** What the wire leaves for the coil: V × Rc / (Rc + R loop + R source). 8.5 V, 4.2 Ω and a loop of 6.27 Ω leave 3.41 V. */
export function coilVolt({ pulseVolt, coilOhm, loopOhm, sourceOhm }: CoilCircuit): number {
  return (pulseVolt * coilOhm) / (coilOhm + loopOhm + sourceOhm)
}

export function coilVoltStep(circuit: CoilCircuit): string {
  const { pulseVolt, coilOhm, loopOhm, sourceOhm } = circuit
  const source = sourceOhm > 0 ? ` + ${ohmText(sourceOhm)}` : ''
  const all = `(${ohmText(coilOhm)} + ${ohmText(loopOhm)}${source})`
  return `${voltText(pulseVolt)} × ${ohmText(coilOhm)} / ${all} = ${voltText(coilVolt(circuit))}`
}

export const coilVoltage: Calculation = {
  name: 'coil-voltage',
  title: 'Voltage at the coil during the pulse',
  does: 'Gives the volts that the wire leaves for the coil, for one coil or for equal coils side by side on one output.',
  inputs: {
    'pulse-volts': { kind: { is: 'quantity', dimension: 'voltage' }, does: 'volts at the terminals during the pulse' },
    coil: { kind: { is: 'quantity', dimension: 'resistance' }, does: 'resistance of one coil' },
    loop: { kind: { is: 'quantity', dimension: 'resistance' }, does: 'resistance of both wires' },
    coils: WIRE_INPUTS.coils,
    source: {
      kind: { is: 'quantity', dimension: 'resistance' },
      does: 'resistance ahead of the terminals',
      optional: '0, as the pulse volts are those at the terminals'
    }
  },
  outputs: {
    'coil-volts': { does: 'volts at the coil', unit: 'V' },
    'lost-volts': { does: 'volts lost in the wire', unit: 'V' },
    'coils-together': { does: 'resistance of the coils together', unit: 'ohm' }
  },
  sources: ['ohms-law'],
  limits:
    'Direct current. The coil is counted as its resistance alone, so the first millisecond of a pulse is not described.',
  run: inputs => {
    const [pulseVolt, coil, loop] = [
      numberOf(inputs, 'pulse-volts'),
      numberOf(inputs, 'coil'),
      numberOf(inputs, 'loop')
    ]
    const [coils, sourceOhm] = [coilsOf(inputs), optionalNumber(inputs, 'source') ?? 0]
    const fault = notPositive({ 'pulse-volts': pulseVolt, coil, coils }) ?? negative({ loop, source: sourceOhm })
    if (fault) return fault
    const circuit = { pulseVolt, coilOhm: coil / coils, loopOhm: loop, sourceOhm }
    const volts = coilVolt(circuit)
    const together = coils > 1 ? [`${ohmText(coil)} / ${coils} coils = ${ohmText(circuit.coilOhm)}`] : []
    return {
      value: {
        'coil-volts': volts,
        'lost-volts': (volts / circuit.coilOhm) * loop,
        'coils-together': circuit.coilOhm
      },
      steps: [...together, coilVoltStep(circuit)]
    }
  },
  example: {
    inputs: { 'pulse-volts': '8.5 V', coil: '4.2 ohm', loop: '6.272 ohm' },
    outputs: { 'coil-volts': 3.409, 'lost-volts': 5.091, 'coils-together': 4.2 }
  }
}
