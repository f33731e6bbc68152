import { isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { COPPER } from '../../reference/copper.ts'
import { negative, notPositive } from '../amounts.ts'
import type { Calculation, Worked } from '../calculation.ts'
import { figures } from '../figures.ts'
import { numberOf, optionalNumber } from '../inputs.ts'
import { atLeast, atMost } from '../within.ts'
import { ohmText } from './words.ts'

/** How far a sound coil may be off its data plate, and a sound reading off the first one: rule of this project. */
export const READING_SPREAD = 0.2
/** Coldest and warmest copper that the band allows for: ground and box in a watering season. */
export const BAND_C = { least: 0, most: 35 } as const

export interface ReadingFacts {
  /** The coil as stated, or coils in parallel. */
  readonly coilOhm: Maybe<number>
  /** Both wires at 20 °C; 0 at the valve. */
  readonly wireOhm: Maybe<number>
  /** What the meter said here at closeout. */
  readonly baselineOhm?: number
  /** Of the copper on the day; left out, the band holds a whole season. */
  readonly temperatureC?: number
}

export interface ExpectedReading {
  readonly expectedOhm: number
  readonly leastOhm: number
  readonly mostOhm: number
  readonly heldAgainst: 'closeout reading' | 'coil and wire'
  /** A closeout reading is on file that coil and wire cannot give: it is left out, and to be looked at. */
  readonly baselineOff?: true
}

/**
 * What a meter should show, with its band. Around the closeout reading ±20 % (which holds the temperature too) where one is on file and
 * coil and wire can give it; else coil ±20 % and wire, all copper at 0 to 35 °C, or at the temperature of the day where that is given and
 * nothing was read at closeout. Absent where neither can be had.
 */
export function expectedReading({
  coilOhm,
  wireOhm,
  baselineOhm,
  temperatureC
}: ReadingFacts): Maybe<Worked<ExpectedReading>> {
  const fault = notPositive({ baseline: baselineOhm })
  if (fault) return fault
  const computed = ofCoilAndWire(coilOhm, wireOhm, baselineOhm === undefined ? temperatureC : undefined)
  if (baselineOhm === undefined) return computed
  if (isAbsent(computed)) return aroundBaseline(baselineOhm)
  const { leastOhm, mostOhm } = computed.value
  if (atLeast(baselineOhm, leastOhm) && atMost(baselineOhm, mostOhm)) return aroundBaseline(baselineOhm)
  const left = `the closeout reading of ${ohmText(baselineOhm)} is outside that, so it is left out`
  return { value: { ...computed.value, baselineOff: true }, steps: [...computed.steps, left] }
}

function aroundBaseline(baselineOhm: number): Worked<ExpectedReading> {
  const [leastOhm, mostOhm] = [baselineOhm * (1 - READING_SPREAD), baselineOhm * (1 + READING_SPREAD)]
  const band = `${ohmText(leastOhm)} to ${ohmText(mostOhm)}`
  return {
    value: { expectedOhm: baselineOhm, leastOhm, mostOhm, heldAgainst: 'closeout reading' },
    steps: [`closeout reading ${ohmText(baselineOhm)}, 20 % either way: ${band}`]
  }
}

function ofCoilAndWire(
  coilOhm: Maybe<number>,
  wireOhm: Maybe<number>,
  temperatureC: number | undefined
): Maybe<Worked<ExpectedReading>> {
  if (isAbsent(coilOhm)) return coilOhm
  if (isAbsent(wireOhm)) return wireOhm
  const fault = notPositive({ coil: coilOhm }) ?? negative({ loop: wireOhm })
  if (fault) return fault
  const [leastC, mostC] = [temperatureC ?? BAND_C.least, temperatureC ?? BAND_C.most]
  const [cold, warm] = [copperFactor(leastC), copperFactor(mostC)]
  const onTheDay = temperatureC === undefined ? 1 : cold
  const expectedOhm = (coilOhm + wireOhm) * onTheDay
  const leastOhm = (coilOhm * (1 - READING_SPREAD) + wireOhm) * cold
  const mostOhm = (coilOhm * (1 + READING_SPREAD) + wireOhm) * warm
  const end = (spread: string, factor: number, ohm: number): string =>
    `(${spread} × ${ohmText(coilOhm)} + ${ohmText(wireOhm)}) × ${figures(factor, 4)} = ${ohmText(ohm)}`
  return {
    value: { expectedOhm, leastOhm, mostOhm, heldAgainst: 'coil and wire' },
    steps: [
      temperatureC === undefined
        ? `${ohmText(coilOhm)} + ${ohmText(wireOhm)} = ${ohmText(expectedOhm)}`
        : `(${ohmText(coilOhm)} + ${ohmText(wireOhm)}) × ${figures(onTheDay, 4)} = ${ohmText(expectedOhm)}`,
      `least, at ${figures(leastC, 3)} °C: ${end('0.8', cold, leastOhm)}`,
      `most, at ${figures(mostC, 3)} °C: ${end('1.2', warm, mostOhm)}`
    ]
  }
}

/** 1 + 0.00393 (T − 20) (NBS Handbook 100, 1966). */
export const copperFactor = (temperatureC: number): number => 1 + COPPER.perC * (temperatureC - COPPER.baseC)

export const expectedReadingCard: Calculation = {
  name: 'expected-reading',
  title: 'Expected meter reading and its band',
  does: 'Gives the ohms that a meter should show across a pair at the controller, or across the coil at the valve, and how far a sound pair may be off.',
  inputs: {
    coil: {
      kind: { is: 'quantity', dimension: 'resistance' },
      does: 'resistance of the coil, or of the coils together'
    },
    loop: {
      kind: { is: 'quantity', dimension: 'resistance' },
      does: 'resistance of both wires at 20 °C',
      optional: '0, as at the valve'
    },
    baseline: {
      kind: { is: 'quantity', dimension: 'resistance' },
      does: 'what the meter said at closeout',
      optional: 'none, so the band is that of coil and wire'
    },
    temperature: {
      kind: { is: 'quantity', dimension: 'temperature' },
      does: 'of the copper on the day, where nothing was read at closeout',
      optional: 'not known: 0 to 35 °C'
    }
  },
  outputs: {
    expected: { does: 'what the meter should show', unit: 'ohm' },
    least: { does: 'lower end of the band', unit: 'ohm' },
    most: { does: 'upper end of the band', unit: 'ohm' },
    'held-against': { does: 'what the band is around', unit: '' }
  },
  sources: ['ohms-law', 'nbs-100', 'project-rule'],
  limits:
    'Copper at 0 to 35 °C, where no temperature is given. Splices and meter leads are not in it. The 20 % is a rule of this project, for want of a published one.',
  run: inputs => {
    const [coilOhm, wireOhm] = [numberOf(inputs, 'coil'), optionalNumber(inputs, 'loop') ?? 0]
    const baselineOhm = optionalNumber(inputs, 'baseline')
    const fault = notPositive({ coil: coilOhm }) ?? negative({ loop: wireOhm })
    if (fault) return fault
    const temperatureC = optionalNumber(inputs, 'temperature')
    const reading = expectedReading({
      coilOhm,
      wireOhm,
      ...(baselineOhm === undefined ? {} : { baselineOhm }),
      ...(temperatureC === undefined ? {} : { temperatureC })
    })
    if (isAbsent(reading)) return reading
    const { expectedOhm, leastOhm, mostOhm, heldAgainst } = reading.value
    return {
      value: { expected: expectedOhm, least: leastOhm, most: mostOhm, 'held-against': heldAgainst },
      steps: reading.steps
    }
  },
  example: {
    inputs: { coil: '4.2 ohm', loop: '6.272 ohm' },
    outputs: { expected: 10.472, least: 8.875, most: 11.979, 'held-against': 'coil and wire' }
  }
}
