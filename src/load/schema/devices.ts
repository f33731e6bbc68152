import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Devices } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { count } from './numbers.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'
import { text, yesNo } from './texts.ts'

export const devices = record(
  'the devices',
  { does: 'What gives the water.', example: '{ kind: spray, flow: 38 L/min }' },
  {
    kind: text('spray, rotor, drip, bubbler, micro-spray, ...', 'spray'),
    model: optional(text('Maker and model.', 'invented SP-4')),
    nozzle: optional(text('Nozzle.', '12 ft, half circle')),
    spacing: optional(quantity('From one to the next.', 'length', '3.6 m')),
    flow: optional(quantity('Flow of all of them together.', 'flow', '38 L/min')),
    each: optional(quantity('Flow of one.', 'flow', '2.3 L/h')),
    count: optional(count('How many.', '22')),
    pressure: optional(quantity('The least on which they work, as their sheet states.', 'pressure', '2.1 bar')),
    drop: optional(
      quantity('How far the lowest of them lies below the highest part of their pipe.', 'length', '2.5 m', 'zero')
    ),
    'check-valves': optional(yesNo('yes: each holds the water back when the valve is shut.', 'yes'))
  }
)

export function makeDevices(raw: z.output<typeof devices>, at: At): Devices {
  return made<Devices>({
    at,
    kind: raw.kind,
    model: given(raw.model),
    nozzle: given(raw.nozzle),
    spacing: given(raw.spacing),
    flow: given(raw.flow),
    each: given(raw.each),
    count: given(raw.count),
    pressure: given(raw.pressure),
    drop: given(raw.drop),
    checkValves: given(raw['check-valves'])
  })
}
