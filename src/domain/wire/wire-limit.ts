import { isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import type { Calculation } from '../calculation.ts'
import { sortedBy } from '../../base/collections.ts'
import { numberOf, wireSizeOf } from '../inputs.ts'
import { WIRE_INPUTS, makeOf } from './card-inputs.ts'
import { LIMIT_INPUTS, limitsOf } from './limit-inputs.ts'
import { allowedLoopOhm, judge } from './limit.ts'
import type { Judged, OutputLimit, Run } from './limit.ts'
import { SOIL_C } from './make.ts'
import type { WireMake } from './make.ts'
import { loopOhm } from './wire-loop.ts'
import { lengthText, ohmText, unitOf } from './words.ts'

export interface JudgedLimit extends Judged {
  readonly limit: OutputLimit
  readonly steps: readonly string[]
}

/** Every limit with its verdict, the tightest first: the one that allows the shortest run. A limit at a size that cannot be read is absent. */
export function judgeAll(limits: readonly OutputLimit[], run: Run, make: WireMake): Maybe<readonly JudgedLimit[]> {
  const judged: JudgedLimit[] = []
  for (const limit of limits) {
    const verdict = judge(limit, run, make)
    if (isAbsent(verdict)) return verdict
    const allowed = allowedLoopOhm(limit, make)
    judged.push({ ...verdict, limit, steps: isAbsent(allowed) ? [] : allowed.steps })
  }
  return sortedBy(judged, one => one.longestM)
}

/** "loop 6.27 Ω is over 2.29 Ω; longest run 46.8 m (voltage)". */
export function verdictStep(judged: JudgedLimit, run: Run, make: WireMake, unit: 'm' | 'ft'): string {
  const longest = `longest run ${lengthText(judged.longestM, unit)}`
  const allowed = allowedLoopOhm(judged.limit, make)
  if (isAbsent(allowed) || allowed.value === Infinity)
    return `${lengthText(run.lengthM, unit)} ${judged.passes ? 'keeps to' : 'is over'} the cap of ${lengthText(judged.longestM, unit)}`
  const against = `loop ${ohmText(run.loopOhm)} ${judged.passes ? 'keeps to' : 'is over'} ${ohmText(Math.max(0, allowed.value))}`
  return `${against}; ${longest}`
}

export const wireLimit: Calculation = {
  name: 'wire-limit',
  title: "A run against the limits of a controller's output",
  does: "Holds a run against the limits on a product sheet, as a length, as loop ohms, or as pulse volts with the coil's lowest volts, and names the tightest.",
  inputs: {
    size: WIRE_INPUTS.size,
    length: WIRE_INPUTS.length,
    conductor: WIRE_INPUTS.conductor,
    coating: WIRE_INPUTS.coating,
    ...LIMIT_INPUTS
  },
  outputs: {
    passes: { does: 'whether the run keeps to every limit', unit: '' },
    governing: { does: 'the form of the tightest limit: length, loop or voltage', unit: '' },
    loop: { does: 'resistance of both wires of the run', unit: 'ohm' },
    longest: { does: 'longest run at this size', unit: 'm' }
  },
  sources: ['product-sheet', 'ohms-law', 'iec-60228', 'astm-b258'],
  limits:
    'At 20 °C. A limit printed in one unit is compared in that unit. A length at a size stands for the loop of that length, in wire made like the run’s.',
  run: inputs => {
    const size = wireSizeOf(inputs, 'size')
    const [make, unit] = [makeOf(inputs), unitOf(size)]
    const lengthM = numberOf(inputs, 'length')
    const limits = limitsOf(inputs)
    if (isAbsent(limits)) return limits
    const loop = loopOhm([{ size, lengthM, unit, make }], SOIL_C)
    if (isAbsent(loop)) return loop
    const run = { lengthM, loopOhm: loop.value }
    const judged = judgeAll(limits, run, make)
    if (isAbsent(judged)) return judged
    const tightest = judged[0] as JudgedLimit
    return {
      value: {
        passes: judged.every(one => one.passes),
        governing: tightest.limit.form,
        loop: loop.value,
        longest: tightest.longestM
      },
      steps: [
        ...loop.steps,
        ...judged.flatMap(one => [...one.steps, `${one.limit.form}: ${verdictStep(one, run, make, unit)}`])
      ]
    }
  },
  example: {
    inputs: {
      size: '18 AWG',
      length: '410 ft',
      'pulse-volts': '9 V',
      'lowest-volts': '6 V',
      coil: '8 ohm',
      'limit-length': '100 m',
      'limit-size': '14 AWG'
    },
    outputs: { passes: false, governing: 'length', loop: 5.2357, longest: 39.55 }
  }
}
