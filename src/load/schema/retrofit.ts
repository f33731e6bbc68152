import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Retrofit } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { record } from './record.ts'
import { text } from './texts.ts'
import { date } from './times.ts'

export const retrofit = record(
  'a coil that was swapped',
  {
    does: 'A valve made for alternating current that now carries a latching coil.',
    example: '{ was: "1 in, 24 V AC, 2009", adapter: "threaded ring, new plunger", checked: 2026-03-20 }'
  },
  {
    was: optional(text('What the valve was.', '"1 in, 24 V AC, 2009"')),
    adapter: optional(
      text('Thread, adapter and plunger that the new coil needs; none where it fits.', 'threaded ring')
    ),
    swapped: optional(date('The day of the swap.', '2026-03-18')),
    checked: optional(date('The day on which it was seen to open and to close under pressure.', '2026-03-20'))
  }
)

export function makeRetrofit(raw: z.output<typeof retrofit>, at: At): Retrofit {
  return made<Retrofit>({
    at,
    was: given(raw.was),
    adapter: given(raw.adapter),
    swapped: given(raw.swapped),
    checked: given(raw.checked)
  })
}
