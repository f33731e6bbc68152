import type { z } from 'zod'
import type { WateringRule } from '../../model/site.ts'
import { parseQuantity } from '../../units/quantity.ts'
import { quantityWrong } from '../improve/unit.ts'
import { field, taken, wrong } from './field.ts'
import { beyondThisWorld } from './of-this-world.ts'

/** "8 min" or "12 mm": time or depth, told apart by the unit. */
export function dailyCap(does: string, example: string): z.ZodType<NonNullable<WateringRule['atMost']>> {
  return field({ does, example }, { type: 'string', pattern: String.raw`\d\s*[A-Za-z]` }, value => {
    const written = String(value).trim()
    const time = parseQuantity(written, 'duration')
    const depth = parseQuantity(written, 'length')
    const parsed = depth.ok ? depth : time
    if (!parsed.ok) return quantityWrong(parsed.problem, 'duration', example, written)
    const range = parsed.value.si > 0 ? beyondThisWorld(parsed.value) : 'must be more than zero'
    return range === undefined ? taken(parsed.value) : wrong('file/out-of-range', { range, example })
  })
}
