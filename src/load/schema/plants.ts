import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Plants } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { number } from './numbers.ts'
import { record } from './record.ts'
import { text } from './texts.ts'

export const plants = record(
  'the plants',
  { does: 'What grows there.', example: '{ kind: shrubs, factor: 0.5 }' },
  {
    factor: optional(
      number('Share of reference ET that they need.', '0.5', { least: 0, most: 1.5, words: 'must be from 0 to 1.5' })
    ),
    'species-factor': optional(
      number(
        'Species factor, in place of factor; times density and microclimate it is the landscape coefficient.',
        '0.5',
        {
          least: 0,
          most: 1.5,
          words: 'must be from 0 to 1.5'
        }
      )
    ),
    density: optional(
      number('Density factor: 1.0 where the ground is covered; 1.0 where nothing is written.', '1.1', {
        least: 0.1,
        most: 2,
        words: 'must be from 0.1 to 2'
      })
    ),
    microclimate: optional(
      number('Microclimate factor: more beside pavement, less in shade; 1.0 where nothing is written.', '1.2', {
        least: 0.1,
        most: 2,
        words: 'must be from 0.1 to 2'
      })
    ),
    kind: optional(text('What they are.', 'shrubs'))
  }
)

export function makePlants(raw: z.output<typeof plants>, at: At): Plants {
  return made<Plants>({
    at,
    factor: given(raw.factor),
    speciesFactor: given(raw['species-factor']),
    density: given(raw.density),
    microclimate: given(raw.microclimate),
    kind: given(raw.kind)
  })
}
