import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import { BUDGET_FORMS } from '../../model/site.ts'
import type { WaterBudget } from '../../model/site.ts'
import { LAND_USES } from '../../reference/water-budget.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { number } from './numbers.ts'
import { quantity } from './quantities.ts'
import { list, record } from './record.ts'
import { choice, id, text } from './texts.ts'

export const budget = record(
  'the water budget',
  {
    does: 'The water that the site may use in a year.',
    example: '{ form: annual volume, annual: 4200 m³, authority: Port Sable Water }'
  },
  {
    form: choice(
      'ordinance 2015: the model ordinance, by evapotranspiration and area; annual volume: so much a year.',
      BUDGET_FORMS,
      'annual volume'
    ),
    authority: optional(text('Who set it.', 'Port Sable Water')),
    annual: optional(quantity('The volume of a year.', 'volume', '4200 m³')),
    kind: optional(choice('residential counts 0.55, non-residential 0.45.', LAND_USES, 'non-residential')),
    adjustment: optional(
      number('Evapotranspiration adjustment, where the local rule has its own.', '0.42', {
        least: 0.01,
        most: 1,
        words: 'must be more than 0 and at most 1'
      })
    ),
    area: optional(
      quantity('The whole irrigated landscape; the zones together where nothing is written.', 'area', '22620 ft²')
    ),
    'special-area': optional(quantity('Ground that counts in full and hangs on no station: a pond.', 'area', '68 ft²')),
    'special-stations': optional(
      list(id('A station whose ground counts in full.', 'K1/3'), {
        does: 'Stations whose ground counts in full: food plants, play, public assembly, recycled water.',
        example: '["K1/3"]'
      })
    )
  }
)

export function makeBudget(raw: z.output<typeof budget>, at: At): WaterBudget {
  return made<WaterBudget>({
    at,
    form: raw.form,
    authority: given(raw.authority),
    annual: given(raw.annual),
    kind: given(raw.kind),
    adjustment: given(raw.adjustment),
    area: given(raw.area),
    specialArea: given(raw['special-area']),
    specialStations: raw['special-stations'] ?? []
  })
}
