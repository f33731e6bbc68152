import { absent } from '../base/absent.ts'
import type { Absent } from '../base/absent.ts'

/** The first amount that is not more than zero, as a reason; undefined where all are. Amounts left out are passed over. */
export function notPositive(amounts: Readonly<Record<string, number | undefined>>): Absent | undefined {
  const name = Object.keys(amounts).find(key => amounts[key] !== undefined && !(amounts[key]! > 0))
  return name === undefined ? undefined : absent(`${name} must be more than zero`)
}

/** The same for amounts that may be zero. */
export function negative(amounts: Readonly<Record<string, number | undefined>>): Absent | undefined {
  const name = Object.keys(amounts).find(key => amounts[key] !== undefined && !(amounts[key]! >= 0))
  return name === undefined ? undefined : absent(`${name} must not be below zero`)
}
