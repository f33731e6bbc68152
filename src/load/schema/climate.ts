import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Climate } from '../../model/site.ts'
import { MONTHS } from '../../units/date.ts'
import type { Month } from '../../units/date.ts'
import type { Quantity } from '../../units/quantity.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'
import { text } from './texts.ts'

type Months<T> = Readonly<Partial<Record<Month, T>>>

const rainOrEt = (month: Month) => optional(quantity(`${month}, the whole month.`, 'length', '118 mm', 'zero'))

type MonthShape = Record<Month, ReturnType<typeof rainOrEt>>

/** Twelve keys, Jan to Dec, each of which may be left out. */
function monthly(what: string, does: string) {
  const doc = { does, example: '{ Jun: 105 mm, Jul: 118 mm, Aug: 96 mm }' }
  return record(what, doc, Object.fromEntries(MONTHS.map(month => [month, rainOrEt(month)])) as MonthShape)
}

export const CLIMATE_KEYS = {
  name: optional(text('Where the figures come from: the station or the table.', 'North coast, 1991-2020')),
  'reference-et': optional(monthly('the reference ET', 'Reference evapotranspiration, month by month.')),
  'effective-rain': optional(text('How rain is counted: none, or the method.', 'none'))
}

export const climate = record(
  'the climate',
  {
    does: 'Month-by-month figures, here or in a shared file.',
    example: '{ reference-et: { Jul: 118 mm }, effective-rain: none }'
  },
  CLIMATE_KEYS
)

/** A climate in a file of its own: the same keys, and a title. */
export const climateFile = record(
  'a climate file',
  { does: 'The climate that several sites share.', example: 'title: North coast' },
  { title: optional(text('Name of the climate.', 'North coast')), ...CLIMATE_KEYS }
)

export function makeClimate(raw: z.output<typeof climate>, at: At): Climate {
  return made<Climate>({
    at,
    name: given(raw.name),
    referenceEt: raw['reference-et'] ? written(raw['reference-et']) : undefined,
    effectiveRain: given(raw['effective-rain'])
  })
}

export function makeClimateFile(raw: z.output<typeof climateFile>, at: At): Climate {
  return makeClimate({ ...raw, name: raw.name ?? raw.title }, at)
}

function written(months: Readonly<Partial<Record<Month, Quantity<'length'> | null>>>): Months<Quantity<'length'>> {
  return Object.fromEntries(MONTHS.flatMap(month => (months[month] ? [[month, months[month]]] : [])))
}
