import type { z } from 'zod'
import { DIMENSIONS } from '../../units/dimension.ts'
import type { Dimension } from '../../units/dimension.ts'
import { parseQuantity, unitsOf } from '../../units/quantity.ts'
import type { Quantity } from '../../units/quantity.ts'
import { parseWireSize } from '../../units/wire-size.ts'
import type { WireSize } from '../../units/wire-size.ts'
import { quantityWrong } from '../improve/unit.ts'
import { field, taken, wrong } from './field.ts'
import type { JsonShape } from './field.ts'
import { beyondThisWorld } from './of-this-world.ts'

/** How low an amount may be: an area is more than nothing, a wire may be 0 m long, a temperature may be below zero. */
export type Floor = 'above-zero' | 'zero' | 'any'

/** How high an amount may be, in the coherent unit, and what is wrong with more. */
export interface Ceiling {
  readonly si: number
  readonly words: string
}

/** An amount with its unit, "38 L/min". A bare number is never taken. */
export function quantity<D extends Dimension>(
  does: string,
  dimension: D,
  example: string,
  floor: Floor = 'above-zero',
  most?: Ceiling
): z.ZodType<Quantity<D>> {
  return field({ does, example }, quantityShape(dimension), value => {
    const parsed = parseQuantity(String(value), dimension)
    if (!parsed.ok) return quantityWrong(parsed.problem, dimension, example, String(value).trim())
    const amount = parsed.value
    const low = floor === 'any' ? false : floor === 'zero' ? amount.value < 0 : amount.value <= 0
    const range = low ? `must be ${floor === 'zero' ? 'zero or more' : 'more than zero'}` : beyondThisWorld(amount)
    if (range !== undefined) return wrong('file/out-of-range', { range, example })
    if (most && amount.si > most.si * (1 + 1e-9)) return wrong('file/out-of-range', { range: most.words, example })
    return taken(amount)
  })
}

/** "12 AWG", "2.5 mm²", "0.8 mm diameter". A bare "mm" is taken, since a check of its own asks which is meant. */
export function wireSize(does: string, example: string): z.ZodType<WireSize> {
  return field(
    { does, example },
    { type: 'string', pattern: String.raw`^(AWG\s*)?\d.*(AWG|awg|ga|gauge|mm|\d)` },
    value => {
      const written = String(value).trim()
      const size = parseWireSize(written)
      if (size) return taken(size)
      if (/^\d+,\d+/u.test(written))
        return wrong('file/decimal-comma', { noun: 'a wire size' }, written.replace(',', '.'))
      if (/^\d+(?:\.\d+)?$/u.test(written)) {
        const units = Number(written) >= 8 ? ['AWG', 'mm²'] : ['mm²', 'AWG']
        return wrong('file/unit-missing', { noun: 'a wire size', number: written, units }, `${written} ${units[0]}`)
      }
      return wrong('file/not-understood', { expected: 'a wire size', example: '14 AWG, 2.5 mm² or 0.8 mm diameter' })
    }
  )
}

function quantityShape(dimension: Dimension): JsonShape {
  const units = [...unitsOf(dimension)].sort((a, b) => b.length - a.length).map(escaped)
  return {
    type: 'string',
    pattern: String.raw`^\s*[+\-−]?(\d+\.?\d*|\.\d+)([eE][+\-]?\d+)?\s*(${units.join('|')})\s*$`,
    title: `${DIMENSIONS[dimension].noun} with its unit`
  }
}

function escaped(unit: string): string {
  return unit.replace(/[.*+?^${}()|[\]\\/]/gu, String.raw`\$&`)
}
