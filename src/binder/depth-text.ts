import { fromSi } from '../units/quantity.ts'
import { unitFor } from '../units/show.ts'
import type { UnitSystem } from '../units/show.ts'

/** A depth for a column whose head carries the unit, with its zeros kept, so that the points stand under each other: "4.00", "86.0". */
export function depthText(m: number, system: UnitSystem): string {
  return fromSi(m, unitFor('depth', system), 'length').toFixed(system === 'us' ? 2 : 1)
}
