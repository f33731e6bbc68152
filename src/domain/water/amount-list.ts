import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import type { Dimension } from '../../units/dimension.ts'
import { parseQuantity } from '../../units/quantity.ts'

/**
 * Amounts that share the unit behind the last of them: "1.24 1.96 3.41 in", as read off a table or a row of cans, in the coherent unit of the
 * dimension. A comma may follow a number but not stand in it. Absent, with what is wrong, where one cannot be read or the unit is missing.
 */
export function readAmounts(text: string, dimension: Dimension, example: string): Maybe<readonly number[]> {
  const match = /^([-+−\d.,\s]+?)\s*([^-+−\d.,\s].*)$/u.exec(text.trim())
  const digits = match?.[1]
  if (digits === undefined) return absent(`“${text}” has no unit; write it once at the end, like “${example}”`)
  const values: number[] = []
  for (const number of digits.split(/,?\s+/u).filter(part => part !== '')) {
    const value = readAmount(`${number.replace(/,$/u, '')} ${match?.[2] ?? ''}`, dimension, example)
    if (isAbsent(value)) return value
    values.push(value)
  }
  return values
}

/** One amount with its unit, "204 ft²". */
export function readAmount(text: string, dimension: Dimension, example: string): Maybe<number> {
  const parsed = parseQuantity(text, dimension)
  return parsed.ok ? parsed.value.si : absent(`“${text.trim()}” cannot be read; write it like “${example}”`)
}
