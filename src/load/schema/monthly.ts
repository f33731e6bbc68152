import type { Monthly } from '../../model/site.ts'
import { MONTHS } from '../../units/date.ts'
import type { Month } from '../../units/date.ts'
import type { Dimension } from '../../units/dimension.ts'
import type { Quantity } from '../../units/quantity.ts'
import { optional } from './field.ts'
import type { KeyDoc } from './field.ts'
import { quantity } from './quantities.ts'
import type { Ceiling, Floor } from './quantities.ts'
import { either, record } from './record.ts'
import { quantityRow } from './rows.ts'

interface Of<D extends Dimension> {
  /** "the mean high". */
  readonly what: string
  readonly does: string
  /** What one month's amount is: "the whole month". */
  readonly of: string
  readonly dimension: D
  /** One amount: "118 mm". */
  readonly one: string
  /** Twelve of them as a row. */
  readonly row: string
  readonly floor: Floor
  /** The most that an amount may be, in the coherent unit, and what to say of more. */
  readonly most?: Ceiling
}

/** Twelve keys Jan to Dec, each of which may be left out, or a pasted row of twelve amounts with one unit behind it. */
export function monthly<D extends Dimension>(facts: Of<D>) {
  const { what, does, of, dimension, one, row, floor, most } = facts
  const month = (name: Month) => optional(quantity(`${name}, ${of}.`, dimension, one, floor, most))
  type Shape = Record<Month, ReturnType<typeof month>>
  const map: KeyDoc = { does, example: `{ Jun: ${one}, Jul: ${one} }` }
  const shape = Object.fromEntries(MONTHS.map(name => [name, month(name)])) as Shape
  const example = `"${row}"`
  const expected = 'twelve amounts, January first, with the unit once at the end'
  const form = { count: 12, expected, trouble: (amount: Quantity) => troubleWith(amount, facts) }
  return either({ does, example }, quantityRow({ does, example }, [dimension], form), record(what, map, shape))
}

function troubleWith<D extends Dimension>({ si, value }: Quantity, { floor, most }: Of<D>): string | undefined {
  if (floor !== 'any' && value < 0) return 'must be zero or more'
  return most !== undefined && si > most.si * (1 + 1e-9) ? most.words : undefined
}

type Written<D extends Dimension> =
  readonly Quantity<D>[] | Readonly<Partial<Record<Month, Quantity<D> | null | undefined>>>

/** By month, however it was written; undefined where nothing was. */
export function monthsOf<D extends Dimension>(raw: Written<D> | null | undefined): Monthly<D> | undefined {
  if (raw === null || raw === undefined) return undefined
  const amountOf = (month: Month, index: number) => (Array.isArray(raw) ? rowOf(raw)[index] : mapOf(raw)[month])
  return Object.fromEntries(
    MONTHS.flatMap((month, index) => {
      const amount = amountOf(month, index)
      return amount ? [[month, amount]] : []
    })
  )
}

const rowOf = <D extends Dimension>(raw: Written<D>) => raw as readonly Quantity<D>[]
const mapOf = <D extends Dimension>(raw: Written<D>) => raw as Readonly<Partial<Record<Month, Quantity<D>>>>
