import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { PipeSegment } from '../../model/site.ts'
import { PIPE_MATERIALS } from '../../reference/pipe.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'
import { choice, text } from './texts.ts'

export const pipe = record(
  'a length of pipe',
  {
    does: 'A length of one pipe.',
    example: '{ size: 1-1/4 in class 200, inside: 1.502 in, material: plastic, length: 120 ft }'
  },
  {
    size: optional(text('As it is marked; no figure is made from it.', '1-1/4 in class 200')),
    inside: quantity('Inside diameter, as its sheet states: a nominal size is not a diameter.', 'length', '1.502 in'),
    material: choice('What it is made of.', PIPE_MATERIALS, 'plastic'),
    length: quantity('How long it is.', 'length', '120 ft'),
    rise: optional(
      quantity('How much higher its end is than its start; below zero where it falls.', 'length', '-6 ft', 'any')
    )
  }
)

export function makePipe(raw: z.output<typeof pipe>, at: At): PipeSegment {
  return made<PipeSegment>({
    at,
    size: given(raw.size),
    inside: raw.inside,
    material: raw.material,
    length: raw.length,
    rise: given(raw.rise)
  })
}
