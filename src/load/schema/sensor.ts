import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import { SENSOR_ACTS, SENSOR_WIRINGS } from '../../model/site.ts'
import type { Sensor } from '../../model/site.ts'
import { optional } from './field.ts'
import { each, given, made } from './made.ts'
import { list, record } from './record.ts'
import { stationParts } from './station.ts'
import { choice, id, text } from './texts.ts'
import { makeWire, wire } from './wire.ts'

export const sensor = record(
  'a sensor',
  { does: 'A sensor.', example: '{ id: RS1, kind: rain, controller: K1 }' },
  {
    id: id('Name of the sensor.', 'RS1'),
    kind: text('rain, soil moisture, flow, frost, ...', 'rain'),
    controller: optional(id('The controller it is wired to.', 'K1')),
    box: optional(id('The box it is in.', 'VB1')),
    stations: optional(
      list(id('A station.', 'K1/3'), {
        does: 'The stations that it acts on; all of its controller where nothing is written.',
        example: '[K1/1, K1/3]'
      })
    ),
    acts: optional(
      choice('What it does as it is wired: stops all, stops its stations, or only reports.', SENSOR_ACTS, 'stops all')
    ),
    wired: optional(choice('in the common, own terminals or by radio.', SENSOR_WIRINGS, 'in the common')),
    normally: optional(
      choice('closed or open: its contact while it lets the controller water.', ['closed', 'open'], 'closed')
    ),
    wire: optional(list(wire, { does: 'Its wires.', example: '[{ size: 18 AWG, length: 20 ft }]' })),
    bypass: optional(
      text('How to leave it out for a test.', '"take its wires off SEN, put the jumper on; off again after the test"')
    ),
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
    stations: given(raw.stations?.map(stationName)),
    acts: given(raw.acts),
    wired: given(raw.wired),
    normally: given(raw.normally),
    wire: each(raw.wire, at, 'wire', makeWire),
    bypass: given(raw.bypass),
    note: given(raw.note)
  })
}

/** "K1/03" is K1/3. */
function stationName(name: string): string {
  return stationParts(name)?.join('/') ?? name
}
