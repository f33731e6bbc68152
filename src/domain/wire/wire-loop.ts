import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { showWireSize } from '../../units/wire-size.ts'
import type { WireSize } from '../../units/wire-size.ts'
import { negative, notPositive } from '../amounts.ts'
import type { Calculation, Worked } from '../calculation.ts'
import { numberOf, optionalNumber, wireSizeOf } from '../inputs.ts'
import { WIRE_INPUTS, makeOf, temperatureOf } from './card-inputs.ts'
import { resistancePerM } from './resistance.ts'
import type { RunSegment } from './run.ts'
import { lengthText, ohmText, perLengthNumber, perLengthText, unitOf } from './words.ts'

/**
 * Loop of a run in ohms: each stretch out and back, added up. 128 m of 0.75 mm² is 2 × 128 m × 24.5 Ω/km = 6.27 Ω.
 * Absent where there is no wire, a length is not above zero, or a size cannot be used; splices are not in it.
 */
export function loopOhm(segments: readonly RunSegment[], temperatureC: number): Maybe<Worked<number>> {
  if (segments.length === 0) return absent('no wire is recorded')
  const parts: number[] = []
  const steps: string[] = []
  for (const segment of segments) {
    const part = segmentOhm(segment, temperatureC)
    if (isAbsent(part)) return part
    parts.push(part.value)
    steps.push(...part.steps)
  }
  const value = parts.reduce((sum, part) => sum + part, 0)
  if (parts.length > 1) steps.push(`${parts.map(ohmText).join(' + ')} = ${ohmText(value)}`)
  return { value, steps }
}

/** A loop with the contacts of its splices, where they were measured. */
export function withSplices(loop: Worked<number>, spliceOhm: number): Worked<number> {
  if (!(spliceOhm > 0)) return loop
  const value = loop.value + spliceOhm
  return {
    value,
    steps: [...loop.steps, `${ohmText(loop.value)} + ${ohmText(spliceOhm)} of splices = ${ohmText(value)}`]
  }
}

function segmentOhm(segment: RunSegment, temperatureC: number): Maybe<Worked<number>> {
  const { size, common, lengthM, unit, make } = segment
  const fault = notPositive({ length: lengthM })
  if (fault) return fault
  const out = resistancePerM(size, make, temperatureC)
  if (isAbsent(out)) return out
  if (common === undefined) {
    const value = 2 * lengthM * out.ohmPerM
    const product = `2 × ${lengthText(lengthM, unit)} × ${perLengthText(out.ohmPerM, unit)}`
    return { value, steps: [`${product} = ${ohmText(value)} (${out.basis})`] }
  }
  const back = resistancePerM(common, make, temperatureC)
  if (isAbsent(back)) return back
  const value = lengthM * (out.ohmPerM + back.ohmPerM)
  const both = `(${perLengthNumber(out.ohmPerM, unit)} + ${perLengthText(back.ohmPerM, unit)})`
  const bases = `${showWireSize(size)} out: ${out.basis}; ${showWireSize(common)} back: ${back.basis}`
  return { value, steps: [`${lengthText(lengthM, unit)} × ${both} = ${ohmText(value)} (${bases})`] }
}

export const wireLoop: Calculation = {
  name: 'wire-loop',
  title: 'Loop resistance of a run',
  does: 'Gives the resistance of the two wires of a run, out and back, with a common of another size if there is one.',
  inputs: {
    size: WIRE_INPUTS.size,
    length: WIRE_INPUTS.length,
    common: { kind: { is: 'wire-size' }, does: 'size of the common wire back', optional: 'the same size' },
    conductor: WIRE_INPUTS.conductor,
    coating: WIRE_INPUTS.coating,
    temperature: WIRE_INPUTS.temperature,
    splices: {
      kind: { is: 'quantity', dimension: 'resistance' },
      does: 'resistance of all splices together',
      optional: '0, as a sound splice reads next to nothing'
    }
  },
  outputs: { loop: { does: 'resistance of both wires, and of splices where given', unit: 'ohm' } },
  sources: ['ohms-law', 'iec-60228', 'astm-b258', 'nbs-100', 'nec-ch9-t8'],
  limits: 'The coil is not in it, and splices only where their resistance is given.',
  run: inputs => {
    const size = wireSizeOf(inputs, 'size')
    const common = inputs['common'] as WireSize | undefined
    const segment: RunSegment = {
      size,
      lengthM: numberOf(inputs, 'length'),
      unit: unitOf(size),
      make: makeOf(inputs),
      ...(common === undefined ? {} : { common })
    }
    const spliceOhm = optionalNumber(inputs, 'splices') ?? 0
    const fault = negative({ splices: spliceOhm })
    if (fault) return fault
    const wires = loopOhm([segment], temperatureOf(inputs))
    if (isAbsent(wires)) return wires
    const loop = withSplices(wires, spliceOhm)
    return { value: { loop: loop.value }, steps: loop.steps }
  },
  example: { inputs: { size: '0.75 mm²', length: '128 m' }, outputs: { loop: 6.272 } }
}
