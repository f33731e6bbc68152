import { isAbsent } from '../../base/absent.ts'
import { RAIN_METHODS, RAIN_METHOD_WORDS } from '../../reference/effective-rain.ts'
import type { RainMethod } from '../../reference/effective-rain.ts'
import { show } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import type { Calculation } from '../calculation.ts'
import { figures } from '../figures.ts'
import { numberOf, optionalNumber, textOf } from '../inputs.ts'
import { effectiveRainM, storageFactor } from './effective-rain.ts'
import type { RainFacts } from './effective-rain.ts'
import { IN_PER_M, MM_PER_M, UNITS_INPUT, unitsOfWorking } from './units.ts'

const length = { is: 'quantity', dimension: 'length' } as const

export const effectiveRainCard: Calculation = {
  name: 'effective-rain',
  title: 'Rain that counts',
  does: 'Gives how much of the rain counts for the plants, by a method that is named.',
  inputs: {
    method: { kind: { is: 'choice', of: RAIN_METHODS }, does: 'how it is told' },
    rain: { kind: length, does: 'rain of the month; of one rain for per-event, of the year for quarter-of-annual' },
    use: { kind: length, does: 'what the plants use in the month', optional: 'only tr-21 asks for it' },
    storage: {
      kind: length,
      does: 'what the soil stores: about half of the available water over the root depth',
      optional: 'only tr-21 asks for it'
    },
    ...UNITS_INPUT
  },
  outputs: {
    effective: { does: 'rain that counts', unit: 'mm' },
    'effective-us': { does: 'the same in inches', unit: 'in' }
  },
  sources: ['neh-623', 'fao-46', 'fao-manual-3', 'texas-et', 'ca-effective-rain', 'project-rule'],
  limits:
    'The methods differ by a third and more: the binder names the one used. Where a rain sensor stops the program, none is counted. The breaks of fao-manual-3 are from memory.',
  run: inputs => {
    const method = textOf(inputs, 'method') as RainMethod
    const [useM, storageM] = [optionalNumber(inputs, 'use'), optionalNumber(inputs, 'storage')]
    const facts: RainFacts = {
      rainM: numberOf(inputs, 'rain'),
      ...(useM === undefined ? {} : { useM }),
      ...(storageM === undefined ? {} : { storageM })
    }
    const effective = effectiveRainM(method, facts)
    if (isAbsent(effective)) return effective
    return {
      value: { effective: effective * MM_PER_M, 'effective-us': effective * IN_PER_M },
      steps: rainSteps(method, facts, effective, unitsOfWorking(inputs))
    }
  },
  example: { inputs: { method: 'scs-monthly', rain: '50 mm' }, outputs: { effective: 46, 'effective-us': 1.811 } }
}

/** How the rain that counts came about, one line for the method and one for the figures. */
export function rainSteps(
  method: RainMethod,
  facts: RainFacts,
  effectiveM: number,
  system: UnitSystem
): readonly string[] {
  const counted = show(effectiveM, 'depth', system)
  return [RAIN_METHOD_WORDS[method].words, `${arithmetic(method, facts, system)} = ${counted}`]
}

function arithmetic(method: RainMethod, { rainM, useM, storageM }: RainFacts, system: UnitSystem): string {
  const rain = show(rainM, 'depth', system)
  const [mm, inches] = [figures(rainM * MM_PER_M, 4), figures(rainM * IN_PER_M, 4)]
  switch (method) {
    case 'none':
      return `${rain} × 0`
    case 'tr-21': {
      const factor = figures(storageFactor((storageM ?? 0) * IN_PER_M), 4)
      const bracket = `(0.70917 × ${inches}^0.82416 − 0.11556)`
      return `${factor} × ${bracket} × 10^(0.02426 × ${figures((useM ?? 0) * IN_PER_M, 4)}) in inches, at most what fell and what is used`
    }
    case 'scs-monthly':
      return rainM * MM_PER_M <= 250 ? `${mm} × (125 − 0.2 × ${mm}) / 125 in mm` : `125 + 0.1 × ${mm} in mm`
    case 'fao-manual-3':
      return rainM * MM_PER_M > 75 ? `0.8 × ${mm} − 25 in mm` : `0.6 × ${mm} − 10 in mm, not below 0`
    case 'per-event':
      return `of ${inches} in: none of the first 0.1, all to 1, two thirds from 1 to 2, none beyond`
    case 'quarter-of-annual':
      return `${rain} × 0.25`
  }
}
