import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Warranty } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { list, record } from './record.ts'
import { text } from './texts.ts'
import { date, interval } from './times.ts'

export const warranty = record(
  'a warranty',
  { does: 'A warranty.', example: '{ item: whole system, start: 2025-04-30, end: 2026-04-30 }' },
  {
    item: text('What it covers.', 'whole system'),
    model: optional(text('Model.', 'six-station post unit')),
    serial: optional(text('Serial number.', '"HS-60921"')),
    where: optional(text('Where it is.', 'VB1')),
    maker: optional(text('Maker or supplier, with how to reach them.', 'Sample Irrigation, 555-0112')),
    'spare-parts': optional(text('Where spare parts come from.', 'Sample Irrigation')),
    certificate: optional(text('Number of the certificate, or where it is.', 'W-31, behind this page')),
    upkeep: optional(text('What keeps it in force.', 'fresh cells every 12 months')),
    manual: optional(text('Where the operating instructions are.', 'product sheet')),
    response: optional(text('How soon they come.', 'two working days')),
    tagged: optional(text('How the thing is marked at its place.', 'tag with the end date on the post')),
    start: optional(date('First day, as a rule that of acceptance.', '2025-04-30')),
    end: optional(date('Last day.', '2026-04-30')),
    inspections: optional(
      list(interval('So long after the start.', '4 months'), {
        does: 'When the work is looked at under the warranty, counted from the start.',
        example: '[4 months, 9 months]'
      })
    ),
    terms: optional(text('What is promised.', 'parts and labor')),
    contact: optional(text('Whom to call.', 'installer'))
  }
)

export function makeWarranty(raw: z.output<typeof warranty>, at: At): Warranty {
  return made<Warranty>({
    at,
    item: raw.item,
    model: given(raw.model),
    serial: given(raw.serial),
    where: given(raw.where),
    maker: given(raw.maker),
    spareParts: given(raw['spare-parts']),
    certificate: given(raw.certificate),
    upkeep: given(raw.upkeep),
    manual: given(raw.manual),
    response: given(raw.response),
    tagged: given(raw.tagged),
    start: given(raw.start),
    end: given(raw.end),
    inspections: given(raw.inspections),
    terms: given(raw.terms),
    contact: given(raw.contact)
  })
}
