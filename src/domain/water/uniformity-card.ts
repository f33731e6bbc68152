import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { notPositive } from '../amounts.ts'
import type { Calculation, CalculationInputs } from '../calculation.ts'
import { figures, measure } from '../figures.ts'
import { optionalNumber, textOf } from '../inputs.ts'
import { readAmounts } from './amount-list.ts'
import { catchDepthM, catchRateMPerS, scheduleMultiplier, uniformity } from './uniformity.ts'
import type { Uniformity } from './uniformity.ts'

const EXAMPLE = '47 42 45 24 mL'

interface Catches {
  readonly si: readonly number[]
  readonly of: 'volume' | 'length'
}

export const uniformityCard: Calculation = {
  name: 'uniformity',
  title: 'Uniformity from catch cans',
  does: 'Gives the uniformity of a zone from a row of catch cans, the multiplier that goes with it, and the application rate where the time is known.',
  inputs: {
    catches: {
      kind: { is: 'text' },
      does: `what each can caught, the unit once at the end: ${EXAMPLE}, or depths in mm or in`
    },
    time: {
      kind: { is: 'quantity', dimension: 'duration' },
      does: 'how long the zone ran',
      optional: 'no application rate is given'
    },
    throat: {
      kind: { is: 'quantity', dimension: 'area' },
      does: 'area of the opening of a can, where volumes are given',
      optional: 'no application rate is given from volumes'
    }
  },
  outputs: {
    dulq: { does: 'distribution uniformity of the lowest quarter', unit: '%' },
    dulh: { does: 'distribution uniformity of the lower half', unit: '%' },
    cu: { does: 'coefficient of uniformity (Christiansen)', unit: '%' },
    multiplier: { does: 'multiplier of the need', unit: '' },
    rate: { does: 'application rate', unit: 'mm/h' },
    'rate-us': { does: 'the same in inches', unit: 'in/h' }
  },
  sources: ['low-quarter', 'christiansen', 'ia-scheduling', 'project-rule'],
  limits:
    'A quarter is the nearest whole number of cans, the upper one where both are as near: 3 of 10, 4 of 15 (rule of this project). The multiplier is for a distribution uniformity only; a zone with an application efficiency takes none.',
  run: inputs => {
    const catches = catchesOf(textOf(inputs, 'catches'))
    if (isAbsent(catches)) return catches
    const found = uniformity(catches.si)
    if (isAbsent(found)) return found
    const rate = rateOf(inputs, catches, found)
    if (isAbsent(rate)) return rate
    const multiplier = scheduleMultiplier(found.lowQuarter)
    const value = {
      dulq: found.lowQuarter * 100,
      dulh: found.lowHalf * 100,
      cu: found.christiansen * 100,
      multiplier,
      ...(rate ? { rate: rate.mPerS * 3_600_000, 'rate-us': (rate.mPerS * 3600) / 0.0254 } : {})
    }
    const steps = [
      ...uniformitySteps(found, catches),
      `multiplier: 1 / (0.4 + 0.6 × ${figures(found.lowQuarter, 3)}) = ${figures(multiplier, 4)}`,
      ...(rate?.steps ?? [])
    ]
    return { value, steps }
  },
  example: {
    inputs: { catches: '47 42 45 24 13 26 33 34 27 30 40 44 32 12 12 mL' },
    outputs: { dulq: 49.62, dulh: 71.584, cu: 69.14, multiplier: 1.4333 }
  }
}

function catchesOf(text: string): Maybe<Catches> {
  const volumes = readAmounts(text, 'volume', EXAMPLE)
  if (!isAbsent(volumes)) return { si: volumes, of: 'volume' }
  const depths = readAmounts(text, 'length', EXAMPLE)
  return isAbsent(depths) ? volumes : { si: depths, of: 'length' }
}

function uniformitySteps(found: Uniformity, { si, of }: Catches): readonly string[] {
  const unit = of === 'volume' ? 'mL' : 'mm'
  const scale = of === 'volume' ? 1e6 : 1000
  const shown = (amount: number) => measure(amount * scale, 4, unit)
  const { mean, quarterCans, quarterMean, halfCans, halfMean } = found
  return [
    `mean of ${si.length} cans: ${shown(mean)}`,
    `lowest quarter, ${quarterCans} cans: ${shown(quarterMean)} / ${shown(mean)} = ${percent(found.lowQuarter)}`,
    `lower half, ${halfCans} cans: ${shown(halfMean)} / ${shown(mean)} = ${percent(found.lowHalf)}`,
    `mean distance from the mean: ${shown((1 - found.christiansen) * mean)}; 1 − ${shown((1 - found.christiansen) * mean)} / ${shown(mean)} = ${percent(found.christiansen)}`
  ]
}

interface Rate {
  readonly mPerS: number
  readonly steps: readonly string[]
}

function rateOf(inputs: CalculationInputs, { of }: Catches, { mean }: Uniformity): Maybe<Rate> | undefined {
  const timeS = optionalNumber(inputs, 'time')
  const throatM2 = optionalNumber(inputs, 'throat')
  const fault = notPositive({ time: timeS, throat: throatM2 })
  if (fault) return fault
  if (of === 'length' && throatM2 !== undefined) return absent('throat goes with volumes; these are depths')
  if (timeS === undefined) return undefined
  if (of === 'volume' && throatM2 === undefined) return absent('with volumes, time needs the throat of the cans')
  const depthM = throatM2 === undefined ? mean : catchDepthM(mean, throatM2)
  const mPerS = catchRateMPerS(depthM, timeS)
  const depth = measure(depthM * 1000, 4, 'mm')
  return {
    mPerS,
    steps: [
      ...(throatM2 === undefined
        ? []
        : [`${measure(mean * 1e6, 4, 'mL')} over ${measure(throatM2 * 1e4, 4, 'cm²')}: ${depth}`]),
      `${depth} in ${measure(timeS / 60, 4, 'min')}: ${measure(mPerS * 3_600_000, 4, 'mm/h')}`
    ]
  }
}

const percent = (fraction: number): string => measure(fraction * 100, 4, '%')
