import type { CalculationInputs } from './calculation.ts'
import type { WireSize } from '../units/wire-size.ts'
import type { Interval, IsoDate } from '../units/date.ts'

/** Narrowing of parsed inputs; the caller has checked them against the card, so a mismatch is a fault of ours. */
export function numberOf(inputs: CalculationInputs, name: string): number {
  const value = inputs[name]
  if (typeof value !== 'number') throw new Error(`input ${name} was not given as a number`)
  return value
}

export function optionalNumber(inputs: CalculationInputs, name: string): number | undefined {
  return inputs[name] === undefined ? undefined : numberOf(inputs, name)
}

export function textOf(inputs: CalculationInputs, name: string): string {
  const value = inputs[name]
  if (typeof value !== 'string') throw new Error(`input ${name} was not given as text`)
  return value
}

export function optionalText(inputs: CalculationInputs, name: string): string | undefined {
  return inputs[name] === undefined ? undefined : textOf(inputs, name)
}

export const wireSizeOf = (inputs: CalculationInputs, name: string): WireSize => inputs[name] as WireSize
export const dateOf = (inputs: CalculationInputs, name: string): IsoDate => inputs[name] as IsoDate
export const intervalOf = (inputs: CalculationInputs, name: string): Interval | undefined =>
  inputs[name] as Interval | undefined
