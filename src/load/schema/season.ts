import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Season } from '../../model/site.ts'
import { made } from './made.ts'
import { record } from './record.ts'
import { monthDay } from './times.ts'

export const season = record(
  'the season',
  {
    does: 'The watering season. Without one the controllers run all year. It may run over the end of the year.',
    example: '{ from: 04-01, to: 10-15 }'
  },
  {
    from: monthDay('First day, month then day.', '04-01'),
    to: monthDay('Last day, month then day.', '10-15')
  }
)

export function makeSeason(raw: z.output<typeof season>, at: At): Season {
  return made<Season>({ at, from: raw.from, to: raw.to })
}
