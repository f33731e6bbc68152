import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import { VALVE_ANSWERS } from '../../model/site.ts'
import type { Reading } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'
import { choice, text } from './texts.ts'
import { date } from './times.ts'

export const reading = record(
  'a reading',
  { does: 'What a meter showed.', example: '{ on: 2026-03-20, coil: 4.3 ohm, by: installer }' },
  {
    on: date('The day.', '2026-03-20'),
    coil: optional(quantity('At the coil, leads off.', 'resistance', '4.3 ohm', 'zero')),
    loop: optional(quantity('At the controller, leads off: both wires and the coil.', 'resistance', '5.1 ohm', 'zero')),
    'closing-coil': optional(
      quantity(
        'At the coil of three leads, common to close; `coil` is then common to open.',
        'resistance',
        '12.4 ohm',
        'zero'
      )
    ),
    'closing-loop': optional(
      quantity('At the controller, common to close, of a coil of three leads.', 'resistance', '14.1 ohm', 'zero')
    ),
    temperature: optional(quantity('Of the air.', 'temperature', '12 °C', 'any')),
    answers: optional(choice('What the valve did when it was told to open and to close.', VALVE_ANSWERS, 'as told')),
    by: optional(text('Who read it.', 'installer'))
  }
)

export function makeReading(raw: z.output<typeof reading>, at: At): Reading {
  return made<Reading>({
    at,
    on: raw.on,
    coil: given(raw.coil),
    loop: given(raw.loop),
    closingCoil: given(raw['closing-coil']),
    closingLoop: given(raw['closing-loop']),
    temperature: given(raw.temperature),
    answers: given(raw.answers),
    by: given(raw.by)
  })
}
