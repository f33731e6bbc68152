import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { ControllerClock } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { record } from './record.ts'
import { choice, text } from './texts.ts'

const DAYLIGHT_SAVING = ['by itself', 'moved by hand', 'not followed'] as const

export const controllerClock = record(
  'the clock',
  { does: 'How the clock of the controller is kept.', example: '{ daylight-saving: moved by hand }' },
  {
    'daylight-saving': choice('by itself, moved by hand, or not followed.', DAYLIGHT_SAVING, 'moved by hand'),
    'moved-by': optional(text('Who moves it.', 'maintainer'))
  }
)

export function makeClock(raw: z.output<typeof controllerClock>, at: At): ControllerClock {
  return made<ControllerClock>({ at, daylightSaving: raw['daylight-saving'], movedBy: given(raw['moved-by']) })
}
