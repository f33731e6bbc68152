import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import { SIGN_OFF_KINDS } from '../../model/closeout.ts'
import type { SignOff } from '../../model/closeout.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { list, record } from './record.ts'
import { attachment, choice, text } from './texts.ts'
import { date } from './times.ts'

export const signOff = record(
  'a sign-off',
  { does: 'What was signed, or refused.', example: '{ kind: walk-through, by: M. Example, on: 2025-04-30 }' },
  {
    kind: choice('What was signed.', SIGN_OFF_KINDS, 'walk-through'),
    by: optional(text('Who signed.', 'M. Example')),
    role: optional(text('For whom.', 'owner')),
    on: optional(date('Day of the signature.', '2025-04-30')),
    refused: optional(text('When and why it was refused.', '"2025-04-30 15:20, no time for the walk-through"')),
    'copies-to': optional(
      list(text('Who gets a copy.', 'owner'), { does: 'Who gets a copy.', example: '[owner, water supplier]' })
    ),
    words: optional(text('Words that the authority asks for.', '"The system was tested and adjusted."')),
    file: optional(attachment('The signed sheet, beside the site file.', 'walk-through.pdf'))
  }
)

export function makeSignOff(raw: z.output<typeof signOff>, at: At): SignOff {
  return made<SignOff>({
    at,
    kind: raw.kind,
    by: given(raw.by),
    role: given(raw.role),
    on: given(raw.on),
    refused: given(raw.refused),
    copiesTo: raw['copies-to'] ?? [],
    words: given(raw.words),
    file: given(raw.file)
  })
}
