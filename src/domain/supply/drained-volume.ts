import { absent } from '../../base/absent.ts'
import { fromSi } from '../../units/quantity.ts'
import { show } from '../../units/show.ts'
import { negative, notPositive } from '../amounts.ts'
import type { Calculation } from '../calculation.ts'
import { figures } from '../figures.ts'
import { numberOf, optionalNumber } from '../inputs.ts'
import { UNITS_INPUT, unitsOfWorking } from '../water/units.ts'

/** What a pipe holds, m³. */
export const pipeVolumeM3 = (insideM: number, lengthM: number): number => (Math.PI / 4) * insideM ** 2 * lengthM

export const lowHeadVolume: Calculation = {
  name: 'low-head-volume',
  title: 'Water that drains at low heads',
  does: 'Gives the most that runs out of the lowest heads of a slope when the valve has shut: what the pipe holds, after every cycle.',
  inputs: {
    inside: {
      kind: { is: 'quantity', dimension: 'length' },
      does: 'inside diameter of the pipe above the lowest heads'
    },
    length: { kind: { is: 'quantity', dimension: 'length' }, does: 'its length' },
    cycles: { kind: { is: 'number' }, does: 'cycles in a month, each of which drains it anew', optional: 'one cycle' },
    ...UNITS_INPUT
  },
  outputs: {
    volume: { does: 'the most that drains', unit: 'L' },
    'volume-us': { does: 'the same', unit: 'gal' }
  },
  sources: ['volume-over-area', 'project-rule'],
  limits:
    'The most, as if the whole pipe ran empty: what lies below the lowest head stays, and a vacuum may hold some back.',
  run: inputs => {
    const system = unitsOfWorking(inputs)
    const [inside, length] = [numberOf(inputs, 'inside'), numberOf(inputs, 'length')]
    const cycles = optionalNumber(inputs, 'cycles') ?? 1
    const fault = notPositive({ inside, length }) ?? negative({ cycles })
    if (fault) return fault
    if (!Number.isFinite(cycles)) return absent('cycles must be a number')
    const once = pipeVolumeM3(inside, length)
    const shown = (m3: number) =>
      `${figures(fromSi(m3, system === 'us' ? 'gal' : 'L', 'volume'), 3)}\u00a0${system === 'us' ? 'gal' : 'L'}`
    return {
      value: { volume: once * cycles * 1000, 'volume-us': fromSi(once * cycles, 'gal', 'volume') },
      steps: [
        `π / 4 × (${show(inside, 'inside', system)})² × ${show(length, 'run', system)} = ${shown(once)}`,
        ...(cycles === 1 ? [] : [`${shown(once)} × ${figures(cycles, 4)} cycles = ${shown(once * cycles)}`])
      ]
    }
  },
  example: {
    inputs: { inside: '26 mm', length: '30 m', cycles: '24' },
    outputs: { volume: 382.3, 'volume-us': 101 }
  }
}
