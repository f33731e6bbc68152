import { parseQuantity } from '../../units/quantity.ts'
import type { Quantity } from '../../units/quantity.ts'

/**
 * A length as a sheet prints it, often with a rounded copy in the other unit: "100 ft (30 m)", "30 m / 100 ft". The first is the authority
 * and the copy is dropped, so that a run of 100 ft keeps to it although 30.48 m is more than 30. Undefined where it is no length.
 */
export function parseStatedLength(text: string): Quantity<'length'> | undefined {
  const first = text.split(/\s*(?:\(|\/|,|=|\bor\b)/u)[0] ?? ''
  const parsed = parseQuantity(first, 'length')
  return parsed.ok && parsed.value.si > 0 ? parsed.value : undefined
}
