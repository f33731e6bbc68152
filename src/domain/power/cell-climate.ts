import { sum } from '../../base/collections.ts'
import { COLD_FACTOR } from '../../reference/batteries.ts'
import { selfDischargeAt } from './self-discharge.ts'

/** Part of the capacity that is left at a temperature below that of the full figure. */
export interface ColdPoint {
  readonly atC: number
  readonly share: number
}

/** Capacities are stated at room temperature. */
const FULL_AT_C = 20

/**
 * Part of the capacity that counts at a temperature. Between 20 °C and the point that a sheet states it falls in a straight line, and below the
 * point nothing is known, so it stays; without a point it is halved below 0 °C (rule of this project). Colder is never more.
 */
export function coldShare(temperatureC: number, stated?: ColdPoint): number {
  if (stated === undefined) return temperatureC < COLD_FACTOR.belowC ? COLD_FACTOR.usable : 1
  if (temperatureC >= FULL_AT_C) return 1
  const { atC, share } = stated
  if (temperatureC <= atC || atC >= FULL_AT_C) return share
  return share + ((1 - share) * (temperatureC - atC)) / (FULL_AT_C - atC)
}

/**
 * Self-discharge over a year of mean temperatures, twelve of them. Heat adds to it; cold is given no credit, since the pulse suffers from it:
 * 3 % a year is 3 % at 10 °C and 6 % at 35 °C.
 */
export function yearlyLoss(statedAt25: number, meansC: readonly number[]): number {
  const losses = meansC.map(meanC => Math.max(statedAt25, selfDischargeAt(statedAt25, meanC)))
  return losses.length === 0 ? statedAt25 : sum(losses) / losses.length
}
