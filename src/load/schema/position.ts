import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Position } from '../../model/maintenance.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { number } from './numbers.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'

export const position = record(
  'a position',
  {
    does: 'Where it stands, WGS 84, as a surveyor or a phone gives it. Office data only; no public page shows it.',
    example: '{ latitude: 54.97012, longitude: -1.61034 }'
  },
  {
    latitude: number('Degrees north; south is negative.', '54.97012', {
      least: -90,
      most: 90,
      words: 'must be from -90 to 90'
    }),
    longitude: number('Degrees east; west is negative.', '-1.61034', {
      least: -180,
      most: 180,
      words: 'must be from -180 to 180'
    }),
    accuracy: optional(quantity('How far it may be off.', 'length', '0.5 m'))
  }
)

export function makePosition(raw: z.output<typeof position>, at: At): Position {
  return made<Position>({ at, latitude: raw.latitude, longitude: raw.longitude, accuracy: given(raw.accuracy) })
}
