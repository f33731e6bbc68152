import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import { PHOTO_KINDS } from '../../model/closeout.ts'
import type { CloseoutPhoto, Unfinished } from '../../model/closeout.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { record } from './record.ts'
import { choice, pattern, text } from './texts.ts'
import { date } from './times.ts'

export const unfinished = record(
  'an unfinished item',
  {
    does: 'What was still to be done.',
    example: '{ item: mulch around VB2, value: "120", reason: weather, by: 2025-05-20 }'
  },
  {
    item: text('What is to be done.', 'mulch around VB2'),
    value: optional(text('What it is worth, with its currency.', '"120 EUR"')),
    reason: optional(text('Why it was not done.', 'weather')),
    owner: optional(text('Who does it.', 'installer')),
    by: optional(date('Until when.', '2025-05-20'))
  }
)

export const closeoutPhoto = record(
  'a photograph of the closeout',
  { does: 'A photograph in the photos folder.', example: '{ file: trench-north.jpg, kind: open trench }' },
  {
    file: pattern(
      'File in the photos folder.',
      'trench-north.jpg',
      /^[^/\\]+\.(?:jpe?g|png)$/iu,
      'the name of a JPEG or PNG file'
    ),
    kind: choice('What it shows.', PHOTO_KINDS, 'open trench'),
    of: optional(text('The box, station or supply that it shows.', 'VB1')),
    caption: optional(text('What stands below it.', 'sleeve under the north arm')),
    taken: optional(date('Day on which it was taken.', '2025-04-11'))
  }
)

export function makeUnfinished(raw: z.output<typeof unfinished>, at: At): Unfinished {
  return made<Unfinished>({
    at,
    item: raw.item,
    value: given(raw.value),
    reason: given(raw.reason),
    owner: given(raw.owner),
    by: given(raw.by)
  })
}

export function makeCloseoutPhoto(raw: z.output<typeof closeoutPhoto>, at: At): CloseoutPhoto {
  return made<CloseoutPhoto>({
    at,
    file: raw.file,
    kind: raw.kind,
    of: given(raw.of),
    caption: given(raw.caption),
    taken: given(raw.taken)
  })
}
