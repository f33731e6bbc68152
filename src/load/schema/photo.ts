import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Photo } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { either, record } from './record.ts'
import { text } from './texts.ts'

const photoRecord = record(
  'a photo',
  { does: 'A picture with words under it.', example: '{ file: vb1-open.jpg, caption: "lid open, tag readable" }' },
  {
    file: text('Name of the file, in the folder photos or beside the site file.', 'vb1-open.jpg'),
    caption: optional(text('Words under the picture.', '"lid open, tag readable"'))
  }
)

/** A picture of a box or of a visit. */
export const photo = either(
  { does: 'A picture: the name of its file, or the file and words under it.', example: 'vb1-open.jpg' },
  text('Name of the file, in the folder photos or beside the site file.', 'vb1-open.jpg'),
  photoRecord
)

export function makePhoto(raw: z.output<typeof photo>, at: At): Photo {
  return typeof raw === 'string'
    ? made<Photo>({ at, file: raw, caption: undefined })
    : made<Photo>({ at, file: raw.file, caption: given(raw.caption) })
}
