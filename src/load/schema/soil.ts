import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Soil } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'
import { text } from './texts.ts'

export const soil = record(
  'the soil',
  { does: 'What they grow in.', example: '{ texture: loam, root-depth: 200 mm }' },
  {
    texture: optional(text('sand, loam, clay, substrate, ...', 'loam')),
    'root-depth': optional(quantity('How deep the roots draw.', 'length', '200 mm')),
    'available-water': optional(quantity('Water that it holds for the plants over the root depth.', 'length', '16 mm')),
    'allowable-depletion': optional(quantity('Share of that water that may be used before watering.', 'ratio', '50 %')),
    intake: optional(quantity('How fast it takes water in.', 'rate', '9 mm/h')),
    'surface-storage': optional(quantity('Water that may stand on it before it runs off.', 'length', '3 mm'))
  }
)

export function makeSoil(raw: z.output<typeof soil>, at: At): Soil {
  return made<Soil>({
    at,
    texture: given(raw.texture),
    rootDepth: given(raw['root-depth']),
    availableWater: given(raw['available-water']),
    allowableDepletion: given(raw['allowable-depletion']),
    intake: given(raw.intake),
    surfaceStorage: given(raw['surface-storage'])
  })
}
