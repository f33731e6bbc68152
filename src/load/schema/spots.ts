import type { z } from 'zod'
import type { EastNorth } from '../../domain/drawing/spot.ts'
import type { Circle } from '../../model/drawing.ts'
import type { Quantity } from '../../units/quantity.ts'
import { field, taken, wrong } from './field.ts'
import type { KeyDoc, Read } from './field.ts'
import { readRow } from './rows.ts'
import type { RowForm } from './rows.ts'

const LENGTHS = ['length'] as const
const ROW = String.raw`^\s*([+\-−]?[\d.]+,?\s+)+[+\-−]?[\d.]+\s*\D.*$`

/** "12.4 3.0 m": east and north of the origin. West and south are below zero. */
export function spot(does: string, example: string): z.ZodType<EastNorth> {
  const expected = 'two amounts, east then north, the unit once at the end'
  return rowField({ does, example }, { count: 2, expected, trouble: () => undefined }, ([east, north]) =>
    taken({ eastM: east?.si ?? 0, northM: north?.si ?? 0 })
  )
}

/** "0 0, 10 0, 10 5 m": corners in order. */
export function corners(doc: KeyDoc, least: number): z.ZodType<readonly EastNorth[]> {
  const expected = `${least} corners or more, each east then north, the unit once at the end`
  return rowField(doc, { expected, trouble: () => undefined }, amounts => {
    if (amounts.length % 2 !== 0 || amounts.length < 2 * least)
      return wrong('file/not-understood', { expected, example: doc.example })
    return taken(
      amounts.flatMap((east, index) => {
        const north = amounts[index + 1]
        return index % 2 === 0 && north ? [{ eastM: east.si, northM: north.si }] : []
      })
    )
  })
}

/** "0 0 12 m": middle, east then north, and radius. */
export function circle(does: string, example: string): z.ZodType<Circle> {
  const expected = 'three amounts, east, north and radius, the unit once at the end'
  return rowField({ does, example }, { count: 3, expected, trouble: () => undefined }, ([east, north, radius]) => {
    const radiusM = radius?.si ?? 0
    if (radiusM <= 0) return wrong('file/out-of-range', { range: 'must have a radius of more than zero', example })
    return taken({ eastM: east?.si ?? 0, northM: north?.si ?? 0, radiusM })
  })
}

function rowField<T>(
  doc: KeyDoc,
  form: RowForm,
  make: (amounts: readonly Quantity<'length'>[]) => Read<T>
): z.ZodType<T> {
  return field(doc, { type: 'string', pattern: ROW }, value => {
    const row = readRow(String(value).trim(), doc, LENGTHS, form)
    return row.ok ? make(row.value) : row
  })
}
