import type { z } from 'zod'
import { parseQuantity } from '../../units/quantity.ts'
import type { Quantity } from '../../units/quantity.ts'
import { quantityWrong } from '../improve/unit.ts'
import { field, taken, wrong } from './field.ts'

/** Part of a whole, "70 %": never more than 100 %. */
export function part(
  does: string,
  example: string,
  floor: 'above-zero' | 'zero' = 'above-zero'
): z.ZodType<Quantity<'ratio'>> {
  return field({ does, example }, { type: 'string', pattern: String.raw`^\s*[\d.]+\s*(%|percent)\s*$` }, value => {
    const parsed = parseQuantity(String(value), 'ratio')
    if (!parsed.ok) return quantityWrong(parsed.problem, 'ratio', example, String(value).trim())
    const { si } = parsed.value
    const inRange = (floor === 'zero' ? si >= 0 : si > 0) && si <= 1
    const range = floor === 'zero' ? 'must be 0 % to 100 %' : 'must be more than 0 % and at most 100 %'
    return inRange ? taken(parsed.value) : wrong('file/out-of-range', { range, example })
  })
}
