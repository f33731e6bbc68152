import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Backflow, Supply } from '../../model/site.ts'
import { optional } from './field.ts'
import { each, given, made, part } from './made.ts'
import { count } from './numbers.ts'
import { makePipe, pipe } from './pipe.ts'
import { quantity } from './quantities.ts'
import { list, record } from './record.ts'
import { id, text } from './texts.ts'
import { date, interval } from './times.ts'

export const backflow = record(
  'the backflow assembly',
  {
    does: 'The assembly that keeps irrigation water out of the drinking water.',
    example: '{ kind: double check, tested: 2026-03-20 }'
  },
  {
    kind: text('Kind of assembly, or "not fitted" with a reason.', 'double check'),
    size: optional(text('Size.', '1 in')),
    model: optional(text('Maker and model.', 'invented RP-100')),
    where: optional(text('Where it is.', 'gray cabinet')),
    installed: optional(date('Day on which it was fitted.', '2025-03-12')),
    'tester-licence': optional(text('License or certificate of the tester.', '"4711"')),
    serial: optional(text('Serial number.', '"BF-2207"')),
    tested: optional(date('Day of the last test.', '2026-03-20')),
    tester: optional(text('Who tested it.', 'M. Example, certificate 4711')),
    interval: optional(interval('How often it is tested; 12 months where nothing is written.', '12 months')),
    reason: optional(text('Why none is fitted.', 'tank with an air gap'))
  }
)

const pressureAtFlow = record(
  'the pressure at a flow',
  {
    does: 'Pressure measured where the static pressure is, with so much water running; goes before the static pressure.',
    example: '{ pressure: 3.6 bar, flow: 40 L/min }'
  },
  {
    pressure: quantity('The pressure.', 'pressure', '3.6 bar'),
    flow: quantity('The flow at which it was measured.', 'flow', '40 L/min')
  }
)

const statedLoss = record(
  'a loss of pressure',
  { does: 'What one fitting takes of the pressure.', example: '{ of: meter, loss: 0.2 bar }' },
  {
    of: text('What takes it.', 'backflow assembly'),
    loss: quantity('How much, at the flow of the largest zone.', 'pressure', '0.8 bar', 'zero')
  }
)

export const supply = record(
  'a supply',
  { does: 'A point of connection.', example: '{ id: S1, kind: potable, limit: 60 L/min }' },
  {
    id: id('Name of the supply.', 'S1'),
    kind: text('potable, reclaimed, well, tank, rainwater, ...', 'potable'),
    'shut-off': optional(
      text('Where and how to shut the water off.', '"meter pit, 2 m N of lamp post 4, quarter turn, T-key"')
    ),
    limit: optional(quantity('The most that may be drawn at once.', 'flow', '60 L/min')),
    'meter-safe-flow': optional(
      quantity('The most that may run through the meter, as the water supplier states it.', 'flow', '50 gpm')
    ),
    'zones-at-once': optional(count('How many zones may run at once, over all controllers.', '1')),
    'static-pressure': optional(quantity('Pressure with nothing running.', 'pressure', '4.1 bar')),
    'pressure-at-flow': optional(pressureAtFlow),
    losses: optional(
      list(statedLoss, {
        does: 'What meter, backflow assembly and filters take of the pressure, as their sheets state it.',
        example: '[{ of: meter, loss: 0.2 bar }, { of: backflow assembly, loss: 0.8 bar }]'
      })
    ),
    pipe: optional(
      list(pipe, {
        does: 'The pipe from the point of connection to where the valves branch off, in the order of the water.',
        example: '[{ inside: 42 mm, material: plastic, length: 60 m }]'
      })
    ),
    meter: optional(text('Size and number of the meter, and the unit it counts in.', '"1 in, no. 1187, m³"')),
    backflow: optional(backflow),
    injection: optional(text('What is dosed into the water, and where.', 'liquid feed, at the pump')),
    signs: optional(text('Signs and marks where the water is not for drinking.', 'purple lids, sign at the gate'))
  }
)

export function makeSupply(raw: z.output<typeof supply>, at: At): Supply {
  return made<Supply>({
    at,
    id: raw.id,
    kind: raw.kind,
    shutOff: given(raw['shut-off']),
    limit: given(raw.limit),
    zonesAtOnce: given(raw['zones-at-once']),
    meterSafeFlow: given(raw['meter-safe-flow']),
    staticPressure: given(raw['static-pressure']),
    pressureAtFlow: part(raw['pressure-at-flow'], at, 'pressure-at-flow', (one, place) => ({
      at: place,
      pressure: one.pressure,
      flow: one.flow
    })),
    losses: each(raw.losses, at, 'losses', (one, place) => ({ at: place, of: one.of, loss: one.loss })),
    pipe: each(raw.pipe, at, 'pipe', makePipe),
    meter: given(raw.meter),
    backflow: part(raw.backflow, at, 'backflow', makeBackflow),
    injection: given(raw.injection),
    signs: given(raw.signs)
  })
}

function makeBackflow(raw: z.output<typeof backflow>, at: At): Backflow {
  return made<Backflow>({
    at,
    kind: raw.kind,
    size: given(raw.size),
    model: given(raw.model),
    where: given(raw.where),
    installed: given(raw.installed),
    testerLicence: given(raw['tester-licence']),
    serial: given(raw.serial),
    tested: given(raw.tested),
    tester: given(raw.tester),
    interval: given(raw.interval),
    reason: given(raw.reason)
  })
}
