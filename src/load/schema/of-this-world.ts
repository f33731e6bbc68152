import type { Quantity } from '../../units/quantity.ts'

/**
 * Beyond any amount of these sites, in the coherent unit: 10 GΩ, 10,000 km², three centuries. Between the two, what is worked out from amounts
 * stays a number.
 */
const MOST = 1e10
const LEAST = 1e-15

/** Wider than any air, ground or product sheet, narrow enough that what grows with heat stays a number. */
const COLDEST_C = -100
const WARMEST_C = 200

/** What is wrong with an amount that nobody meets with; undefined where nothing is. */
export function beyondThisWorld({ dimension, si }: Quantity): string | undefined {
  if (dimension === 'temperature')
    return si >= COLDEST_C && si <= WARMEST_C ? undefined : `must be from ${COLDEST_C} to ${WARMEST_C} °C`
  const inside = si === 0 || (Math.abs(si) <= MOST && Math.abs(si) >= LEAST)
  return inside ? undefined : 'must be an amount that can be met with'
}
