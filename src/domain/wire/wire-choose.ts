import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { showWireSize } from '../../units/wire-size.ts'
import type { WireSize } from '../../units/wire-size.ts'
import type { Calculation } from '../calculation.ts'
import { notPositive } from '../amounts.ts'
import { numberOf, textOf } from '../inputs.ts'
import { WIRE_INPUTS, makeOf } from './card-inputs.ts'
import { coilVolt } from './coil-voltage.ts'
import { AWG_LADDER, METRIC_LADDER } from './ladder.ts'
import { LIMIT_INPUTS, limitsOf } from './limit-inputs.ts'
import type { OutputLimit } from './limit.ts'
import { SOIL_C } from './make.ts'
import type { WireMake } from './make.ts'
import { resistancePerM } from './resistance.ts'
import { judgeAll } from './wire-limit.ts'
import { lengthText, ohmText, unitOf, voltText } from './words.ts'

/** One size of the ladder, used out and back for the whole length. */
export interface Rung {
  readonly size: WireSize
  readonly loopOhm: number
  readonly longestM: number
  readonly passes: boolean
  /** Where a limit by voltage is given. */
  readonly coilVolt?: number
}

/**
 * Climbs a ladder of sizes for a run of one length, up to and including the first size that keeps to every limit. Where none does, the last
 * rung does not pass. Absent where a size of the ladder or of a limit cannot be used, or no limit is given.
 */
export function climb(
  ladder: readonly WireSize[],
  lengthM: number,
  limits: readonly OutputLimit[],
  make: WireMake,
  spliceOhm?: number
): Maybe<readonly Rung[]> {
  if (limits.length === 0) return absent('the product sheet states no limit to hold the run against')
  const rungs: Rung[] = []
  for (const size of ladder) {
    const rung = stand(size, lengthM, limits, make, spliceOhm)
    if (isAbsent(rung)) return rung
    rungs.push(rung)
    if (rung.passes) break
  }
  return rungs
}

function stand(
  size: WireSize,
  lengthM: number,
  limits: readonly OutputLimit[],
  make: WireMake,
  spliceOhm = 0
): Maybe<Rung> {
  const wire = resistancePerM(size, make, SOIL_C)
  if (isAbsent(wire)) return wire
  const run = { lengthM, loopOhm: 2 * lengthM * wire.ohmPerM + spliceOhm, spliceOhm }
  const judged = judgeAll(limits, run, make)
  if (isAbsent(judged)) return judged
  const voltage = limits.find(limit => limit.form === 'voltage')
  return {
    size,
    loopOhm: run.loopOhm,
    longestM: Math.min(...judged.map(one => one.longestM)),
    passes: judged.every(one => one.passes),
    ...(voltage ? { coilVolt: coilVolt({ ...voltage, loopOhm: run.loopOhm, sourceOhm: 0 }) } : {})
  }
}

/** "1.5 mm²: loop 3.1 Ω, 4.89 V at the coil, longest run 94.68 m: too thin". */
export function rungStep(rung: Rung, unit: 'm' | 'ft'): string {
  const volts = rung.coilVolt === undefined ? '' : `, ${voltText(rung.coilVolt)} at the coil`
  const verdict = rung.passes ? 'passes' : 'does not pass'
  const longest = lengthText(rung.longestM, unit)
  return `${showWireSize(rung.size)}: loop ${ohmText(rung.loopOhm)}${volts}, longest run ${longest}: ${verdict}`
}

export const wireChoose: Calculation = {
  name: 'wire-choose',
  title: 'The size that a run needs',
  does: 'Climbs the sizes that field wire is sold in to the first that keeps to every limit, and gives the longest run of each on the way.',
  inputs: {
    length: WIRE_INPUTS.length,
    ladder: { kind: { is: 'choice', of: ['metric', 'AWG'] }, does: 'sizes in mm² or in gauges' },
    conductor: WIRE_INPUTS.conductor,
    coating: WIRE_INPUTS.coating,
    ...LIMIT_INPUTS
  },
  outputs: {
    size: { does: 'first size that passes', unit: '' },
    loop: { does: 'loop at that size', unit: 'ohm' },
    longest: { does: 'longest run at that size', unit: 'm' },
    'coil-volts': { does: 'volts at the coil at that size, where a limit by voltage is given', unit: 'V' }
  },
  sources: ['product-sheet', 'ohms-law', 'iec-60228', 'astm-b258', 'common-practice'],
  limits: 'At 20 °C, the same size out and back. Sizes: 0.5 to 10 mm², 20 to 8 AWG (common practice, no source).',
  run: inputs => {
    const lengthM = numberOf(inputs, 'length')
    const fault = notPositive({ length: lengthM })
    if (fault) return fault
    const limits = limitsOf(inputs)
    if (isAbsent(limits)) return limits
    const ladder = textOf(inputs, 'ladder') === 'AWG' ? AWG_LADDER : METRIC_LADDER
    const rungs = climb(ladder, lengthM, limits, makeOf(inputs))
    if (isAbsent(rungs)) return rungs
    const last = rungs.at(-1) as Rung
    const unit = unitOf(last.size)
    if (!last.passes)
      return absent(
        `no size up to ${showWireSize(last.size)} passes at this length; ${lengthText(last.longestM, unit)} would`
      )
    return {
      value: {
        size: showWireSize(last.size).replaceAll('\u00a0', ' '),
        loop: last.loopOhm,
        longest: last.longestM,
        ...(last.coilVolt === undefined ? {} : { 'coil-volts': last.coilVolt })
      },
      steps: rungs.map(rung => rungStep(rung, unit))
    }
  },
  example: {
    inputs: { length: '128 m', ladder: 'metric', 'pulse-volts': '8.5 V', 'lowest-volts': '5.5 V', coil: '4.2 ohm' },
    outputs: { size: '2.5 mm²', loop: 1.897, longest: 154.58, 'coil-volts': 5.855 }
  }
}
