import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Suspension } from '../../model/site.ts'
import { addDays } from '../../units/date.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { count } from './numbers.ts'
import { list, record } from './record.ts'
import { text } from './texts.ts'
import { date } from './times.ts'

export const suspension = record(
  'a suspension',
  { does: 'Days on which it is held back.', example: '{ from: 2026-06-12, to: 2026-06-14, why: street party }' },
  {
    from: date('First day without a start.', '2026-06-12'),
    to: optional(date('Last day without a start; one day where neither this nor days is written.', '2026-06-14')),
    days: optional(count('How many days, in place of the last.', '3')),
    why: optional(text('Why.', 'street party'))
  }
)

export const suspensions = list(suspension, {
  does: 'Days on which it is set not to start.',
  example: '[{ from: 2026-06-12, days: 3, why: street party }]'
})

export function makeSuspension(raw: z.output<typeof suspension>, at: At): Suspension {
  const last = raw.to ?? addDays(raw.from, (raw.days ?? 1) - 1)
  return made<Suspension>({ at, from: raw.from, to: last, why: given(raw.why) })
}
