import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Winter } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'
import { choice } from './texts.ts'

export const winter = record(
  'the winter rules',
  { does: 'How the lines are emptied before frost.', example: '{ method: drain }' },
  {
    method: choice('none, drain or air.', ['none', 'drain', 'air'], 'drain'),
    'air-pressure': optional(quantity('What the regulator of the compressor is set to.', 'pressure', '2.5 bar')),
    'lowest-rated': optional(quantity('Rating of the weakest part that the air passes.', 'pressure', '4 bar'))
  }
)

export function makeWinter(raw: z.output<typeof winter>, at: At): Winter {
  return made<Winter>({
    at,
    method: raw.method,
    airPressure: given(raw['air-pressure']),
    lowestRated: given(raw['lowest-rated'])
  })
}
