import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { show } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import { negative, notPositive } from '../amounts.ts'
import type { Calculation, CalculationInputs, OutputValue } from '../calculation.ts'
import { numberOf, optionalNumber, optionalText } from '../inputs.ts'
import { longestCycleS, soakS, splitCycles } from './cycle-soak.ts'
import type { LongestCycle } from './cycle-soak.ts'
import { soilIntake, slopeOf } from './soil-lookup.ts'
import { UNITS_INPUT, unitsOfWorking } from './units.ts'
import { SOIL_INTAKES } from '../../reference/soil.ts'

const DEFAULT_STEP_S = 60
const duration = { is: 'quantity', dimension: 'duration' } as const
const rate = { is: 'quantity', dimension: 'rate' } as const

interface Ground {
  readonly intakeMPerS: number
  readonly surfaceM: number
  readonly words?: string
}

export const cycleSoakCard: Calculation = {
  name: 'cycle-soak',
  title: 'Cycles and soak',
  does: 'Gives the longest cycle before water runs off, and splits a run time into cycles with a soak between them.',
  inputs: {
    rate: { kind: rate, does: 'application rate' },
    intake: { kind: rate, does: 'rate at which the soil takes water in', optional: 'texture and slope' },
    surface: {
      kind: { is: 'quantity', dimension: 'length' },
      does: 'depth that may stand before it runs off',
      optional: 'texture and slope'
    },
    texture: {
      kind: { is: 'choice', of: SOIL_INTAKES.map(one => one.texture) },
      does: 'soil texture, in place of intake and surface',
      optional: 'intake and surface'
    },
    slope: { kind: { is: 'text' }, does: 'slope: 4 %, 4:1 (run to rise) or flat', optional: 'intake and surface' },
    time: { kind: duration, does: 'run time to split', optional: 'only the longest cycle is given' },
    'least-soak': { kind: duration, does: 'shortest soak to keep to', optional: 'as long as the soil takes' },
    step: { kind: duration, does: 'step in which run times are set', optional: '1 min' },
    ...UNITS_INPUT
  },
  outputs: {
    limited: { does: 'whether the soil sets a limit', unit: '' },
    longest: { does: 'longest cycle, where there is a limit', unit: 'min' },
    cycles: { does: 'cycles', unit: '' },
    cycle: { does: 'run time of each', unit: 'min' },
    soak: { does: 'soak between two', unit: 'min' },
    elapsed: { does: 'from the first start to the last end', unit: 'min' }
  },
  sources: ['ia-scheduling', 'project-rule'],
  limits:
    'For sprays, rotors and other devices that wet an area; drip is judged by what the root zone holds. The tables are typical: a test on the site comes first. Common practice is a soak of 30 to 60 min.',
  run: inputs => {
    const system = unitsOfWorking(inputs)
    const rateMPerS = numberOf(inputs, 'rate')
    const ground = groundOf(inputs)
    if (isAbsent(ground)) return ground
    const timeS = optionalNumber(inputs, 'time')
    const leastSoakS = optionalNumber(inputs, 'least-soak')
    const fault =
      notPositive({ rate: rateMPerS, intake: ground.intakeMPerS, time: timeS }) ??
      negative({ surface: ground.surfaceM, 'least-soak': leastSoakS })
    if (fault) return fault
    const longest = longestCycleS(rateMPerS, ground.intakeMPerS, ground.surfaceM)
    const value: Record<string, OutputValue> =
      longest === 'no limit' ? { limited: false } : { limited: true, longest: longest / 60 }
    const steps = [...(ground.words ? [ground.words] : []), longestStep(longest, rateMPerS, ground, system)]
    if (timeS === undefined) return { value, steps }
    const soak = Math.max(leastSoakS ?? 0, soakS(ground.surfaceM, ground.intakeMPerS))
    const split = splitCycles(timeS, longest, soak, optionalNumber(inputs, 'step') ?? DEFAULT_STEP_S)
    if (isAbsent(split)) return split
    const minutes = (seconds: number) => show(seconds, 'minutes', system)
    return {
      value: {
        ...value,
        cycles: split.cycles,
        cycle: split.cycleS / 60,
        soak: split.soakS / 60,
        elapsed: split.elapsedS / 60
      },
      steps: [
        ...steps,
        `${minutes(timeS)} in ${split.cycles} × ${minutes(split.cycleS)}`,
        ...(split.cycles > 1 ? [`soak: ${soakWords(ground, soak, leastSoakS, system)}`] : [])
      ]
    }
  },
  example: {
    inputs: {
      rate: '0.91 in/h',
      intake: '0.35 in/h',
      surface: '0.12 in',
      time: '25 min',
      'least-soak': '30 min',
      units: 'us'
    },
    outputs: { limited: true, longest: 12.857, cycles: 3, cycle: 9, soak: 30, elapsed: 87 }
  }
}

function groundOf(inputs: CalculationInputs): Maybe<Ground> {
  const [intake, surface] = [optionalNumber(inputs, 'intake'), optionalNumber(inputs, 'surface')]
  const [texture, slopeText] = [optionalText(inputs, 'texture'), optionalText(inputs, 'slope')]
  if (intake !== undefined && surface !== undefined)
    return texture === undefined && slopeText === undefined
      ? { intakeMPerS: intake, surfaceM: surface }
      : absent('give intake and surface, or texture and slope, not both')
  if (texture === undefined || slopeText === undefined) return absent('give intake and surface, or texture and slope')
  const slope = slopeOf(slopeText)
  if (isAbsent(slope)) return slope
  const table = soilIntake(texture, slope)
  if (isAbsent(table)) return table
  return {
    ...table,
    ...(intake === undefined ? {} : { intakeMPerS: intake }),
    ...(surface === undefined ? {} : { surfaceM: surface })
  }
}

function longestStep(
  longest: LongestCycle,
  rateMPerS: number,
  { intakeMPerS, surfaceM }: Ground,
  system: UnitSystem
): string {
  const [comes, taken] = [show(rateMPerS, 'rate', system), show(intakeMPerS, 'rate', system)]
  if (longest === 'no limit') return `the soil takes ${taken}, as fast as ${comes} comes: no cycle is too long`
  return `60 × ${show(surfaceM, 'depth', system)} ÷ (${comes} − ${taken}) = ${show(longest, 'minutes', system)} at the longest`
}

function soakWords(
  { intakeMPerS, surfaceM }: Ground,
  soak: number,
  least: number | undefined,
  system: UnitSystem
): string {
  const own = soakS(surfaceM, intakeMPerS)
  const taken = `60 × ${show(surfaceM, 'depth', system)} ÷ ${show(intakeMPerS, 'rate', system)} = ${show(own, 'minutes', system)}`
  return least !== undefined && least > own ? `${taken}, but at least ${show(soak, 'minutes', system)}` : taken
}
