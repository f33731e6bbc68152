import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { HandedOver } from '../../model/closeout.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { count } from './numbers.ts'
import { record } from './record.ts'
import { text } from './texts.ts'
import { date } from './times.ts'

export const handedOver = record(
  'a thing handed over',
  {
    does: 'Something handed over, counted and receipted.',
    example: '{ item: coil, count: 2, received-by: M. Example }'
  },
  {
    item: text('What it is.', 'DC latching coil, 2-wire'),
    count: optional(count('How many were handed over.', '2')),
    installed: optional(count('How many of it are installed.', '12')),
    source: optional(text('Where more come from.', 'Sample Irrigation')),
    'received-by': optional(text('Who received it.', 'M. Example')),
    on: optional(date('Day of the receipt.', '2025-04-30'))
  }
)

export function makeHandedOver(raw: z.output<typeof handedOver>, at: At): HandedOver {
  return made<HandedOver>({
    at,
    item: raw.item,
    count: given(raw.count),
    installed: given(raw.installed),
    source: given(raw.source),
    receivedBy: given(raw['received-by']),
    on: given(raw.on)
  })
}
