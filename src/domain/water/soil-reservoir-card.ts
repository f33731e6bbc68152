import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { ALLOWABLE_DEPLETION, SOIL_TEXTURES } from '../../reference/soil.ts'
import { show } from '../../units/show.ts'
import { notPositive } from '../amounts.ts'
import type { Calculation, CalculationInputs } from '../calculation.ts'
import { figures, measure } from '../figures.ts'
import { optionalNumber, optionalText } from '../inputs.ts'
import { soilWater } from './soil-lookup.ts'
import { allowableM, availableWaterM, longestIntervalDays, longestRunS } from './soil-reservoir.ts'
import { IN_PER_M, MM_PER_M, UNITS_INPUT, unitsOfWorking } from './units.ts'

const length = { is: 'quantity', dimension: 'length' } as const
const ratio = { is: 'quantity', dimension: 'ratio' } as const
const rate = { is: 'quantity', dimension: 'rate' } as const

interface Available {
  readonly m: number
  readonly steps: readonly string[]
}

export const soilReservoirCard: Calculation = {
  name: 'soil-reservoir',
  title: 'What the root zone holds',
  does: 'Gives the water that soil or substrate holds for the plants, how much of it may be used, for how many days that lasts, and the longest run that it takes up.',
  inputs: {
    'available-water': { kind: length, does: 'water held for plants over the whole root depth', optional: 'depth' },
    depth: { kind: length, does: 'root depth, or depth of the substrate', optional: 'available-water' },
    capacity: {
      kind: ratio,
      does: 'water held for plants as a part of the depth: 2 mm in each cm is 20 %',
      optional: 'texture'
    },
    texture: {
      kind: { is: 'choice', of: SOIL_TEXTURES },
      does: 'soil texture, in place of capacity; the low end of its range',
      optional: 'capacity'
    },
    depletion: { kind: ratio, does: 'part of it that may be used before watering', optional: '50 %' },
    need: { kind: rate, does: 'what the plants use in a day: 3.2 mm/d', optional: 'no interval is given' },
    rate: { kind: rate, does: 'application rate', optional: 'no longest run is given' },
    ...UNITS_INPUT
  },
  outputs: {
    available: { does: 'water held for plants', unit: 'mm' },
    'available-us': { does: 'the same in inches', unit: 'in' },
    allowed: { does: 'what may be used of it, and the most that one watering can put on', unit: 'mm' },
    'allowed-us': { does: 'the same in inches', unit: 'in' },
    interval: { does: 'longest interval between waterings', unit: 'days' },
    'longest-run': { does: 'longest run that is taken up', unit: 'min' }
  },
  sources: ['uc-davis-soil', 'ucanr-trials', 'ia-scheduling', 'fao-56'],
  limits:
    'No table covers the substrate of roofs and pots: give what its maker or a test states. The depletion of 50 % is the practice used most; bedding and pots take less, 30 to 40 % (from memory).',
  run: inputs => {
    const system = unitsOfWorking(inputs)
    const available = availableOf(inputs)
    if (isAbsent(available)) return available
    const share = optionalNumber(inputs, 'depletion') ?? ALLOWABLE_DEPLETION
    const [need, rateMPerS] = [optionalNumber(inputs, 'need'), optionalNumber(inputs, 'rate')]
    const fault = notPositive({ 'available water': available.m, depletion: share, rate: rateMPerS })
    if (fault) return fault
    if (share > 1) return absent('depletion cannot be more than 100 %')
    const allowed = allowableM(available.m, share)
    const interval = need === undefined ? undefined : longestIntervalDays(allowed, need * 86_400)
    if (isAbsent(interval)) return interval
    const run = rateMPerS === undefined ? undefined : longestRunS(allowed, rateMPerS)
    const depth = (m: number) => show(m, 'depth', system)
    const steps = [
      ...available.steps,
      `${depth(available.m)} × ${measure(share * 100, 3, '%')} = ${depth(allowed)} may be used`,
      ...(need === undefined || interval === undefined
        ? []
        : [`${depth(allowed)} ÷ ${depth(need * 86_400)} a day = ${interval} whole days`]),
      ...(rateMPerS === undefined || run === undefined
        ? []
        : [
            `60 × ${depth(allowed)} ÷ ${show(rateMPerS, 'rate', system)} = ${show(run, 'minutes', system)} at the longest`
          ])
    ]
    return {
      value: {
        available: available.m * MM_PER_M,
        'available-us': available.m * IN_PER_M,
        allowed: allowed * MM_PER_M,
        'allowed-us': allowed * IN_PER_M,
        ...(interval === undefined ? {} : { interval }),
        ...(run === undefined ? {} : { 'longest-run': run / 60 })
      },
      steps
    }
  },
  example: {
    inputs: { depth: '80 mm', capacity: '20 %', depletion: '50 %', need: '1.6 mm/d', rate: '22.2 mm/h' },
    outputs: { available: 16, allowed: 8, interval: 5, 'longest-run': 21.62 }
  }
}

function availableOf(inputs: CalculationInputs): Maybe<Available> {
  const system = unitsOfWorking(inputs)
  const [stated, depthM, capacity] = [
    optionalNumber(inputs, 'available-water'),
    optionalNumber(inputs, 'depth'),
    optionalNumber(inputs, 'capacity')
  ]
  const texture = optionalText(inputs, 'texture')
  if (stated !== undefined)
    return capacity === undefined && texture === undefined
      ? { m: stated, steps: [`held for plants, as stated: ${show(stated, 'depth', system)}`] }
      : absent('available-water stands for capacity and texture: give it or one of them')
  if (depthM === undefined) return absent('give available-water, or depth with capacity or texture')
  if ((capacity === undefined) === (texture === undefined)) return absent('give capacity or texture, one of them')
  const part = capacity ?? soilWater(texture ?? '')
  if (isAbsent(part)) return part
  const m = availableWaterM(part, depthM)
  const from = texture === undefined ? '' : `${texture}, low end: `
  return {
    m,
    steps: [
      `${from}${show(depthM, 'depth', system)} × ${figures(part, 3)} = ${show(m, 'depth', system)} held for plants`
    ]
  }
}
