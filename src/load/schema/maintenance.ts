import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { MaintenanceTask } from '../../model/maintenance.ts'
import { parseDate } from '../../units/date.ts'
import type { IsoDate } from '../../units/date.ts'
import { dateWrong } from '../improve/date.ts'
import { field, optional, taken } from './field.ts'
import { each, given, made } from './made.ts'
import { quantity } from './quantities.ts'
import { list, record } from './record.ts'
import { id, text } from './texts.ts'
import { date, interval } from './times.ts'
import { makeVisitPart, visitPart } from './visit-facts.ts'

/** "2025-10-20" or "2025-10", which counts from the first of the month, so that a task is never late by a rounding. */
const dayOrMonth = (does: string, example: string): z.ZodType<IsoDate> =>
  field({ does, example }, { type: 'string', pattern: String.raw`^\d{4}-\d{2}(-\d{2})?$` }, value => {
    const written = String(value).trim()
    const day = parseDate(written) ?? parseDate(`${written}-01`)
    return day ? taken(day) : dateWrong(written)
  })

export const maintenance = record(
  'a maintenance task',
  {
    does: 'A task that comes again, or comes once on a day.',
    example: '{ task: monthly inspection, every: 1 month, last: 2026-04-16 }'
  },
  {
    task: text('Name of the task; a visit that lists it under tasks has done it.', 'monthly inspection'),
    every: optional(interval('How often.', '1 month')),
    last: optional(dayOrMonth('When it was last done: a day, or a month, which counts from its first day.', '2025-10')),
    due: optional(date('The one day on which it is due, or the first.', '2026-09-30')),
    box: optional(id('At which box.', 'VB1')),
    minutes: optional(quantity('How long it takes.', 'duration', '30 min')),
    tools: optional(list(text('A tool.', 'T-key'), { does: 'Tools to take along.', example: '[T-key]' })),
    parts: optional(list(visitPart, { does: 'Parts to take along.', example: '[{ item: filter screen, count: 1 }]' }))
  }
)

export function makeMaintenance(raw: z.output<typeof maintenance>, at: At): MaintenanceTask {
  return made<MaintenanceTask>({
    at,
    task: raw.task,
    every: given(raw.every),
    last: given(raw.last),
    due: given(raw.due),
    box: given(raw.box),
    minutes: given(raw.minutes),
    tools: given(raw.tools),
    parts: raw.parts ? each(raw.parts, at, 'parts', makeVisitPart) : undefined
  })
}
