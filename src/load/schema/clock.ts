import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { ControllerClock } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'
import { choice, text } from './texts.ts'
import { interval } from './times.ts'

const DAYLIGHT_SAVING = ['by itself', 'moved by hand', 'not followed'] as const

export const controllerClock = record(
  'the clock',
  { does: 'How the clock of the controller is kept.', example: '{ daylight-saving: moved by hand }' },
  {
    'daylight-saving': choice('by itself, moved by hand, or not followed.', DAYLIGHT_SAVING, 'moved by hand'),
    'moved-by': optional(text('Who moves it.', 'maintainer')),
    drift: optional(quantity('How far it may go off in a month.', 'duration', '2 min')),
    set: optional(interval('How often it is set right; 6 months where nothing is written.', '3 months'))
  }
)

export function makeClock(raw: z.output<typeof controllerClock>, at: At): ControllerClock {
  return made<ControllerClock>({
    at,
    daylightSaving: raw['daylight-saving'],
    movedBy: given(raw['moved-by']),
    drift: given(raw.drift),
    set: given(raw.set)
  })
}
