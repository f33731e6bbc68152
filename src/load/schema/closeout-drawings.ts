import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { ControllerCharts, RecordDrawing } from '../../model/closeout.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { count } from './numbers.ts'
import { quantity } from './quantities.ts'
import { list, record } from './record.ts'
import { attachment, id, text } from './texts.ts'
import { date } from './times.ts'

export const recordDrawing = record(
  'a record drawing',
  {
    does: 'One sheet of the record drawing.',
    example: '{ number: RD-1, dated: 2025-04-28, file: record-drawing.pdf }'
  },
  {
    number: id('Number of the sheet.', 'RD-1'),
    title: optional(text('What it shows.', 'irrigation as installed')),
    dated: optional(date('Day of the sheet.', '2025-04-28')),
    revision: optional(text('Revision of the sheet.', 'B')),
    scale: optional(text('Scale.', '"1:250"')),
    'signed-by': optional(text('Who signed it.', 'P. Sample')),
    'survey-tolerance': optional(quantity('How exact the positions are.', 'length', '0.1 m')),
    transmittal: optional(text('The letter that it was sent with.', 'T-14 of 2025-04-29')),
    delivered: optional(date('Day on which the owner got it.', '2025-04-29')),
    base: optional(text('What positions are measured from.', 'north-east corner of the pavilion')),
    'tied-every': optional(quantity('Pipes and wires are tied at least so often.', 'length', '30 m')),
    'marked-up': optional(
      text(
        'Who marked up the set, how often, and what before cover.',
        'daily by the foreman, before any trench was closed'
      )
    ),
    copies: optional(
      list(text('Who holds one.', 'owner'), { does: 'Who holds copies.', example: '[owner, "installer, three years"]' })
    ),
    file: optional(attachment('The sheet itself, beside the site file.', 'record-drawing.pdf'))
  }
)

export const charts = record(
  'the controller charts',
  { does: 'The charts of the controllers.', example: '{ copies: 3, fixed: inside the lid of VB1 }' },
  {
    copies: optional(count('How many of each there are.', '3')),
    fixed: optional(text('Where the one at the controller is.', 'inside the lid of VB1')),
    material: optional(text('How it is kept from wet.', 'between two sheets of plastic, sealed')),
    approved: optional(date('Day on which the owner approved it.', '2025-04-29')),
    'schedule-posted': optional(text('Where the schedule in force is posted.', 'inside the lid of VB1')),
    sticker: optional(
      text('What the lasting sticker at the controller says.', 'installer, license, telephone, warranty to 2027-04-30')
    )
  }
)

export function makeRecordDrawing(raw: z.output<typeof recordDrawing>, at: At): RecordDrawing {
  return made<RecordDrawing>({
    at,
    number: raw.number,
    title: given(raw.title),
    dated: given(raw.dated),
    revision: given(raw.revision),
    scale: given(raw.scale),
    signedBy: given(raw['signed-by']),
    surveyTolerance: given(raw['survey-tolerance']),
    transmittal: given(raw.transmittal),
    delivered: given(raw.delivered),
    base: given(raw.base),
    tiedEvery: given(raw['tied-every']),
    markedUp: given(raw['marked-up']),
    copies: raw.copies ?? [],
    file: given(raw.file)
  })
}

export function makeCharts(raw: z.output<typeof charts>, at: At): ControllerCharts {
  return made<ControllerCharts>({
    at,
    copies: given(raw.copies),
    fixed: given(raw.fixed),
    material: given(raw.material),
    approved: given(raw.approved),
    schedulePosted: given(raw['schedule-posted']),
    sticker: given(raw.sticker)
  })
}
