import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import { PHASE_NAMES } from '../../model/site.ts'
import type { Phase } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { number } from './numbers.ts'
import { quantity } from './quantities.ts'
import { list, record } from './record.ts'
import { choice } from './texts.ts'
import { date } from './times.ts'

const phase = record(
  'a phase',
  {
    does: 'A time in the life of a planting in which it wants more or less than later on.',
    example: '{ name: establishment, to: 2026-06-14, percent: 130 % }'
  },
  {
    name: choice('establishment, established or temporary.', PHASE_NAMES, 'establishment'),
    from: optional(date('First day; from the beginning where nothing is written.', '2025-11-03')),
    to: optional(date('Last day; without end where nothing is written.', '2026-06-14')),
    factor: optional(
      number('Share of reference ET in this phase, in place of that of the plants.', '0.8', {
        least: 0,
        most: 1.5,
        words: 'must be from 0 to 1.5'
      })
    ),
    percent: optional(quantity('The same as a percentage of the factor of the plants.', 'ratio', '130 %'))
  }
)

export const phases = list(phase, {
  does: 'Establishment, established and temporary phases, with their days.',
  example: '[{ name: establishment, to: 2026-06-14, percent: 130 % }]'
})

export function makePhase(raw: z.output<typeof phase>, at: At): Phase {
  return made<Phase>({
    at,
    name: raw.name,
    from: given(raw.from),
    to: given(raw.to),
    factor: given(raw.factor),
    percent: given(raw.percent)
  })
}
