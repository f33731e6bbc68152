import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { CatchCans } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'
import { quantityRow } from './rows.ts'
import { date } from './times.ts'

const CATCHES = {
  does: 'What each can caught, with the unit once at the end: volumes or depths.',
  example: '"47 42 45 24 13 26 33 34 mL"'
}

export const catchCans = record(
  'a catch-can test',
  {
    does: 'A test with cans set out over the zone: it gives uniformity and application rate.',
    example: '{ on: 2026-04-20, catches: "47 42 45 24 mL", time: 10 min, throat: 16.6 in² }'
  },
  {
    on: optional(date('The day of the test.', '2026-04-20')),
    catches: quantityRow(CATCHES, ['volume', 'length'], {
      expected: 'a row of catches with the unit once at the end',
      trouble: ({ value }) => (value < 0 ? 'must be zero or more' : undefined)
    }),
    time: optional(quantity('How long the zone ran.', 'duration', '10 min')),
    throat: optional(quantity('Area of the opening of one can, where volumes are given.', 'area', '16.6 in²'))
  }
)

export function makeCatchCans(raw: z.output<typeof catchCans>, at: At): CatchCans {
  return made<CatchCans>({
    at,
    on: given(raw.on),
    catches: raw.catches,
    time: given(raw.time),
    throat: given(raw.throat)
  })
}
