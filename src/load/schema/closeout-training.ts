import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Training } from '../../model/closeout.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { quantity } from './quantities.ts'
import { list, record } from './record.ts'
import { attachment, text, yesNo } from './texts.ts'
import { date } from './times.ts'

export const training = record(
  'a training',
  {
    does: 'One training of those who take over.',
    example: '{ on: 2025-04-30, trainer: P. Sample, attendees: [M. Example] }'
  },
  {
    on: optional(date('Day of the training.', '2025-04-30')),
    trainer: optional(text('Who taught.', 'P. Sample')),
    place: optional(text('Where.', 'at VB1')),
    duration: optional(quantity('How long.', 'duration', '90 min')),
    attendees: optional(
      list(text('Who was there.', 'M. Example'), { does: 'Who was there.', example: '[M. Example]' })
    ),
    topics: optional(
      list(text('What was taught.', 'changing a battery'), {
        does: 'What was taught.',
        example: '[changing a battery, why the schedule changes through the year]'
      })
    ),
    signed: optional(yesNo('yes: the list of those present is signed.', 'yes')),
    reviewer: optional(text('Who watched it and read the binder for the owner.', 'C. Sample')),
    file: optional(attachment('The signed list, beside the site file.', 'training.pdf'))
  }
)

export function makeTraining(raw: z.output<typeof training>, at: At): Training {
  return made<Training>({
    at,
    on: given(raw.on),
    trainer: given(raw.trainer),
    place: given(raw.place),
    duration: given(raw.duration),
    attendees: raw.attendees ?? [],
    topics: raw.topics ?? [],
    signed: given(raw.signed),
    reviewer: given(raw.reviewer),
    file: given(raw.file)
  })
}
