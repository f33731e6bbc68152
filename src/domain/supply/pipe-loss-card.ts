import { absent } from '../../base/absent.ts'
import { MOST_VELOCITY_M_PER_S, PIPE_MATERIALS, PIPE_ROUGHNESS } from '../../reference/pipe.ts'
import type { PipeMaterial } from '../../reference/pipe.ts'
import { show } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import { notPositive } from '../amounts.ts'
import type { Calculation } from '../calculation.ts'
import { figures, measure } from '../figures.ts'
import { numberOf, optionalNumber, optionalText } from '../inputs.ts'
import { UNITS_INPUT, unitsOfWorking } from '../water/units.ts'
import { atMost } from '../within.ts'
import { leastInsideM, pipeHeadLossM, pipeLossPa, pipeVelocityMPerS } from './pipe-loss.ts'

const length = { is: 'quantity', dimension: 'length' } as const
const M_PER_FT = 0.3048
const PA_PER_PSI = 6894.757

export const pipeLoss: Calculation = {
  name: 'pipe-loss',
  title: 'Pressure lost in a pipe',
  does: 'Gives the pressure that friction takes from a flow in a pipe, how fast the water goes, and whether that keeps to 5 ft/s.',
  inputs: {
    flow: { kind: { is: 'quantity', dimension: 'flow' }, does: 'flow in the pipe' },
    inside: { kind: length, does: 'inside diameter' },
    length: { kind: length, does: 'length of the pipe' },
    material: {
      kind: { is: 'choice', of: PIPE_MATERIALS },
      does: 'material, for its roughness C: plastic 150, new steel 140, old steel 120, copper 140 (from memory)',
      optional: 'roughness'
    },
    roughness: { kind: { is: 'number' }, does: 'roughness C of Hazen and Williams', optional: 'material' },
    ...UNITS_INPUT
  },
  outputs: {
    loss: { does: 'pressure lost', unit: 'kPa' },
    'loss-us': { does: 'the same', unit: 'psi' },
    head: { does: 'the same as head', unit: 'm' },
    'head-us': { does: 'the same as head', unit: 'ft' },
    'head-per-100': { does: 'head lost in 100 of the same unit', unit: '' },
    velocity: { does: 'how fast the water goes', unit: 'm/s' },
    'velocity-us': { does: 'the same', unit: 'ft/s' },
    'within-limit': { does: 'whether that keeps to 5 ft/s', unit: '' },
    'least-inside': { does: 'inside diameter that would keep to it', unit: 'mm' }
  },
  sources: ['hazen-williams', 'osu-912'],
  limits:
    'Straight pipe, full, cold water; fittings, valves, the meter and the backflow assembly come on top. The exponent of the diameter is 4.8655; the form with 4.871 gives some 1 % less.',
  run: inputs => {
    const [flow, inside, lengthM] = [numberOf(inputs, 'flow'), numberOf(inputs, 'inside'), numberOf(inputs, 'length')]
    const material = optionalText(inputs, 'material') as PipeMaterial | undefined
    const stated = optionalNumber(inputs, 'roughness')
    if ((material === undefined) === (stated === undefined)) return absent('give material or roughness, one of them')
    const roughness = stated ?? PIPE_ROUGHNESS[material as PipeMaterial]
    const fault = notPositive({ flow, inside, length: lengthM, roughness })
    if (fault) return fault
    const head = pipeHeadLossM(flow, inside, lengthM, roughness)
    const velocity = pipeVelocityMPerS(flow, inside)
    const withinLimit = atMost(velocity, MOST_VELOCITY_M_PER_S)
    const least = leastInsideM(flow, MOST_VELOCITY_M_PER_S)
    return {
      value: {
        loss: pipeLossPa(head) / 1000,
        'loss-us': pipeLossPa(head) / PA_PER_PSI,
        head,
        'head-us': head / M_PER_FT,
        'head-per-100': (head / lengthM) * 100,
        velocity,
        'velocity-us': velocity / M_PER_FT,
        'within-limit': withinLimit,
        'least-inside': least * 1000
      },
      steps: pipeSteps({ flow, inside, lengthM, roughness }, unitsOfWorking(inputs))
    }
  },
  example: {
    inputs: { flow: '200 gpm', inside: '3.048 in', length: '30 ft', roughness: '140', units: 'us' },
    outputs: { 'head-us': 2.702, 'head-per-100': 9.007, 'loss-us': 1.171, 'velocity-us': 8.799, 'within-limit': false }
  }
}

interface Pipe {
  readonly flow: number
  readonly inside: number
  readonly lengthM: number
  readonly roughness: number
}

/** The working in gpm and inches, as the formula wants it, whatever the units of the rest. */
export function pipeSteps({ flow, inside, lengthM, roughness }: Pipe, system: UnitSystem): readonly string[] {
  const head = pipeHeadLossM(flow, inside, lengthM, roughness)
  const per100 = (head / lengthM) * 100
  const velocity = pipeVelocityMPerS(flow, inside)
  const us = system === 'us'
  const length = (m: number, digits: number) => measure(us ? m / M_PER_FT : m, digits, us ? 'ft' : 'm')
  const speed = (mPerS: number) => measure(us ? mPerS / M_PER_FT : mPerS, 3, us ? 'ft/s' : 'm/s')
  const [gpm, inches] = [figures(flow * (1 / 0.0254) ** 3 * (60 / 231), 4), figures(inside / 0.0254, 4)]
  const verdict = atMost(velocity, MOST_VELOCITY_M_PER_S) ? 'keeps to' : 'is over'
  return [
    `0.2083 × (100 / ${figures(roughness, 3)})^1.852 × ${gpm}^1.852 / ${inches}^4.8655 (gpm, in) = ${figures(per100, 3)} in 100`,
    `${length(lengthM, 4)} × ${figures(per100, 3)} / 100 = ${length(head, 3)} of head, ${show(pipeLossPa(head), 'pressure', system)}`,
    `${show(flow, 'flow', system)} through ${show(inside, 'diameter', system)}: ${speed(velocity)}, which ${verdict} ${speed(MOST_VELOCITY_M_PER_S)}`
  ]
}
