import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import { COIL_KINDS } from '../../model/site.ts'
import type { Controller, Valve } from '../../model/site.ts'
import { optional } from './field.ts'
import { each, given, made, part } from './made.ts'
import { quantity } from './quantities.ts'
import { list, record } from './record.ts'
import { makeRetrofit, retrofit } from './retrofit.ts'
import { choice, id, text } from './texts.ts'
import { makeWire, wire } from './wire.ts'

const VALVE_KEYS = {
  box: optional(id('The box it is in.', 'VB1')),
  size: optional(text('Size of the valve.', '1 in')),
  model: optional(text('Maker, product and catalog number of what is there.', 'invented LV-100')),
  coil: optional(choice('Kind of coil, as marked on it.', COIL_KINDS, 'DC latching 2-wire')),
  'coil-resistance': optional(quantity('As its sheet states.', 'resistance', '4.2 ohm')),
  'closing-resistance': optional(
    quantity('Of the closing winding of a coil with three leads, where it differs.', 'resistance', '5.1 ohm')
  ),
  'lowest-volts': optional(quantity('The least the coil works on, as its sheet states.', 'voltage', '5.5 V')),
  'normal-flow': optional(quantity('Flow when all is well.', 'flow', '38 L/min')),
  'minimum-flow': optional(quantity('The least the valve closes on, as its sheet states.', 'flow', '1.9 L/min')),
  'normal-pressure': optional(quantity('Pressure at the valve when it runs.', 'pressure', '2.8 bar')),
  loss: optional(
    quantity(
      'What it takes of the pressure at the flow of its zone, as its sheet states.',
      'pressure',
      '0.3 bar',
      'zero'
    )
  ),
  'by-hand': optional(text('How to open and close it by hand.', 'quarter turn of the coil')),
  retrofit: optional(retrofit)
}

export const valve = record(
  'a valve',
  { does: 'The valve of the station.', example: '{ box: VB1, size: 1 in, coil: DC latching 2-wire }' },
  VALVE_KEYS
)

export const masterValve = record(
  'the master valve',
  { does: 'The master valve.', example: '{ box: VB1, size: 1-1/2 in, coil: DC latching 2-wire }' },
  { ...VALVE_KEYS, wire: optional(list(wire, { does: 'Its wires.', example: '[{ size: 1.5 mm², length: 3 m }]' })) }
)

export function makeValve(raw: z.output<typeof valve>, at: At): Valve {
  return made<Valve>({
    at,
    box: given(raw.box),
    size: given(raw.size),
    model: given(raw.model),
    coil: given(raw.coil),
    coilResistance: given(raw['coil-resistance']),
    closingResistance: given(raw['closing-resistance']),
    lowestVolts: given(raw['lowest-volts']),
    normalFlow: given(raw['normal-flow']),
    minimumFlow: given(raw['minimum-flow']),
    normalPressure: given(raw['normal-pressure']),
    loss: given(raw.loss),
    byHand: given(raw['by-hand']),
    retrofit: part(raw.retrofit, at, 'retrofit', makeRetrofit)
  })
}

export function makeMasterValve(raw: z.output<typeof masterValve>, at: At): NonNullable<Controller['masterValve']> {
  return { ...makeValve(raw, at), wire: each(raw.wire, at, 'wire', makeWire) }
}
