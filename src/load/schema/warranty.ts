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
    start: given(raw.start),
    end: given(raw.end),
    inspections: given(raw.inspections),
    terms: given(raw.terms),
    contact: given(raw.contact)
  })
}
