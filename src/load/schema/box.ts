import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Box } from '../../model/site.ts'
import { optional } from './field.ts'
import { below, given, made, part } from './made.ts'
import { makePhoto, photo } from './photo.ts'
import { makePosition, position } from './position.ts'
import { list, record } from './record.ts'
import { id, text } from './texts.ts'

export const box = record(
  'a valve box',
  {
    does: 'A valve box.',
    example: '{ id: VB1, where: "centre island, NE", ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }'
  },
  {
    id: id('Name of the box, as marked on its lid.', 'VB1'),
    tag: optional(text('Its permanent code; `underlid tag` draws one.', '7KQ3F9X')),
    where: optional(text('Where it is, in words.', '"centre island, NE"')),
    ties: optional(
      list(text('A distance to something that stays.', '"4.2 m from lamp post 7"'), {
        does: 'Distances to things that stay, two at least.',
        example: '["4.2 m from lamp post 7", "6.0 m from curb"]'
      })
    ),
    position: optional(position),
    'load-rating': optional(text('Class of the lid.', 'B125')),
    lid: optional(text('Its cover, and how it is held.', '"bolted, two M10 hex bolts"')),
    lock: optional(text('What locks it; the key stands under `keys:`.', 'padlock')),
    mounting: optional(text('Where a cabinet or a box above ground is fixed.', '"on a post, 1.2 m up"')),
    photos: optional(list(photo, { does: 'Pictures, beside the site file.', example: '[vb1-open.jpg]' })),
    status: optional(text('Where it is not simply in use.', 'taken away for street works')),
    hazards: optional(
      list(text('One hazard.', 'wasps in summer'), {
        does: 'What can hurt a hand or the kit in this box.',
        example: '[wasps in summer]'
      })
    )
  }
)

export function makeBox(raw: z.output<typeof box>, at: At): Box {
  return made<Box>({
    at,
    id: raw.id,
    tag: given(raw.tag),
    where: given(raw.where),
    ties: raw.ties ?? [],
    position: part(raw.position, at, 'position', makePosition),
    loadRating: given(raw['load-rating']),
    lid: given(raw.lid),
    lock: given(raw.lock),
    mounting: given(raw.mounting),
    photos: (raw.photos ?? []).map((one, index) => makePhoto(one, below(at, 'photos', index))),
    status: given(raw.status),
    hazards: raw.hazards ?? []
  })
}
