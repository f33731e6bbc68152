import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Battery } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { count } from './numbers.ts'
import { record } from './record.ts'
import { text } from './texts.ts'
import { date, interval } from './times.ts'

export const battery = record(
  'the battery',
  { does: 'The cells in the controller.', example: '{ kind: 9 V alkaline, count: 1, fitted: 2026-03-20 }' },
  {
    kind: text('Size and chemistry.', '9 V alkaline'),
    count: count('How many cells.', '1'),
    fitted: optional(date('Day on which these were fitted; a visit that changes them is newer.', '2026-03-20')),
    interval: optional(interval('How often they are changed; 12 months where nothing is written.', '12 months')),
    'date-code': optional(date('Use-by date printed on the cells.', '2029-03-31'))
  }
)

export function makeBattery(raw: z.output<typeof battery>, at: At): Battery {
  return made<Battery>({
    at,
    kind: raw.kind,
    count: raw.count,
    fitted: given(raw.fitted),
    interval: given(raw.interval),
    dateCode: given(raw['date-code'])
  })
}
