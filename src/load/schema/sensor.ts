import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Sensor } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { record } from './record.ts'
import { id, text } from './texts.ts'

export const sensor = record(
  'a sensor',
  { does: 'A sensor.', example: '{ id: RS1, kind: rain, controller: K1 }' },
  {
    id: id('Name of the sensor.', 'RS1'),
    kind: text('rain, soil moisture, flow, frost, ...', 'rain'),
    controller: optional(id('The controller it is wired to.', 'K1')),
    box: optional(id('The box it is in.', 'VB1')),
    note: optional(text('What to know of it.', 'on the lamp post, 3 m up'))
  }
)

export function makeSensor(raw: z.output<typeof sensor>, at: At): Sensor {
  return made<Sensor>({
    at,
    id: raw.id,
    kind: raw.kind,
    controller: given(raw.controller),
    box: given(raw.box),
    note: given(raw.note)
  })
}
