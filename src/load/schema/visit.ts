import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import { VALVE_ANSWERS } from '../../model/site.ts'
import type { Visit, VisitBattery, VisitReading } from '../../model/site.ts'
import { optional } from './field.ts'
import { below, each, given, made } from './made.ts'
import { count } from './numbers.ts'
import { makePhoto, photo } from './photo.ts'
import { quantity } from './quantities.ts'
import { list, record } from './record.ts'
import { choice, id, text, yesNo } from './texts.ts'
import { clock, date } from './times.ts'
import { makeVisitPart, makeVisitProgram, makeVisitTest, visitPart, visitProgram, visitTest } from './visit-facts.ts'

const battery = record(
  'a battery of the visit',
  {
    does: 'Cells measured or changed.',
    example: '{ controller: K1, fitted: 2026-05-04, kind: 9 V alkaline, count: 1 }'
  },
  {
    controller: id('Whose cells.', 'K1'),
    fitted: optional(date('Day on which new ones were fitted; left out where they were only measured.', '2026-05-04')),
    kind: optional(text('Size and chemistry.', '9 V alkaline')),
    count: optional(count('How many.', '1')),
    rest: optional(quantity('Volts with nothing drawn.', 'voltage', '9.4 V', 'zero')),
    'under-load': optional(quantity('Volts under the test load.', 'voltage', '8.9 V', 'zero'))
  }
)

const reading = record(
  'a reading of the visit',
  { does: 'What a meter showed.', example: '{ station: K1/1, loop: 4.4 ohm }' },
  {
    station: optional(id('At which station.', 'K1/1')),
    supply: optional(id('At which supply.', 'S1')),
    coil: optional(quantity('At the coil, leads off.', 'resistance', '4.3 ohm', 'zero')),
    loop: optional(quantity('At the controller, leads off.', 'resistance', '4.4 ohm', 'zero')),
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
    temperature: optional(
      quantity('Of the air, so that ohms can be held against those of another day.', 'temperature', '12 °C', 'any')
    ),
    answers: optional(choice('What the valve did when it was told to open and to close.', VALVE_ANSWERS, 'as told')),
    meter: optional(quantity('What the water meter showed.', 'volume', '1284 m³', 'zero')),
    flow: optional(quantity('Flow with the station running.', 'flow', '38 L/min', 'zero')),
    pressure: optional(quantity('Pressure at that time.', 'pressure', '3.9 bar', 'zero')),
    opened: optional(yesNo('yes: it was seen to open.', 'yes')),
    closed: optional(yesNo('yes: it closed fully.', 'yes'))
  }
)

const lines = (does: string, example: string) =>
  optional(list(text(does, example), { does, example: `["${example}"]` }))

/** The front matter of a file in visits/. */
export const visit = record(
  'a visit',
  { does: 'One visit.', example: 'on: 2026-05-04' },
  {
    on: date('The day.', '2026-05-04'),
    by: optional(text('Who came.', '"M. Example, Example Landscapes"')),
    reason: optional(text('route, call, season, ...', 'route')),
    boxes: optional(list(id('A box that was opened.', 'VB1'), { does: 'Boxes that were opened.', example: '[VB1]' })),
    arrived: optional(clock('When they came.', '"09:40"')),
    left: optional(clock('When they went.', '"10:25"')),
    minutes: optional(quantity('Time on the site.', 'duration', '45 min')),
    programs: optional(
      list(visitProgram, { does: 'Controllers as found and left.', example: '[{ controller: K1, clock: right }]' })
    ),
    tests: optional(list(visitTest, { does: 'Backflow tests.', example: '[{ supply: S1, passed: yes }]' })),
    tasks: lines('What of the maintenance was done, by the name it has there.', 'monthly inspection'),
    batteries: optional(list(battery, { does: 'Cells.', example: '[{ controller: K1, fitted: 2026-05-04 }]' })),
    readings: optional(list(reading, { does: 'Readings.', example: '[{ station: K1/1, loop: 4.4 ohm }]' })),
    found: lines('What was found.', 'Z3 opens slowly'),
    done: lines('What was done.', 'cleaned VB2'),
    open: lines('What is left open.', 'Z3 coil to be swapped'),
    owner: optional(text('Who sees to what is left open.', 'Example Landscapes')),
    repaired: lines('What an earlier visit left open and is now done, in the same words.', 'Z3 coil to be swapped'),
    parts: optional(list(visitPart, { does: 'Parts that were used.', example: '[{ item: diaphragm, count: 1 }]' })),
    photos: optional(
      list(photo, {
        does: 'Pictures, in the folder photos. They stand in the binder and on the office page of the site, never on a public page: one that anybody may see is named at its box.',
        example: '[{ file: vb1-2026-05-04.jpg, caption: torn diaphragm of Z3 }]'
      })
    ),
    'drawing-change': optional(yesNo('yes: the record drawing has to be changed.', 'no'))
  }
)

export function makeVisit(raw: z.output<typeof visit>, at: At): Visit {
  return made<Visit>({
    at,
    on: raw.on,
    by: given(raw.by),
    reason: given(raw.reason),
    batteries: each(raw.batteries, at, 'batteries', makeBattery),
    readings: each(raw.readings, at, 'readings', makeReading),
    found: raw.found ?? [],
    done: raw.done ?? [],
    open: raw.open ?? [],
    boxes: given(raw.boxes),
    arrived: given(raw.arrived),
    left: given(raw.left),
    minutes: given(raw.minutes),
    programs: raw.programs ? each(raw.programs, at, 'programs', makeVisitProgram) : undefined,
    tests: raw.tests ? each(raw.tests, at, 'tests', makeVisitTest) : undefined,
    tasks: given(raw.tasks),
    owner: given(raw.owner),
    repaired: given(raw.repaired),
    parts: raw.parts ? each(raw.parts, at, 'parts', makeVisitPart) : undefined,
    photos: raw.photos?.map((one, index) => makePhoto(one, below(at, 'photos', index))),
    drawingChange: given(raw['drawing-change'])
  })
}

function makeBattery(raw: z.output<typeof battery>, at: At): VisitBattery {
  return made<VisitBattery>({
    at,
    controller: raw.controller,
    fitted: given(raw.fitted),
    kind: given(raw.kind),
    count: given(raw.count),
    rest: given(raw.rest),
    underLoad: given(raw['under-load'])
  })
}

function makeReading(raw: z.output<typeof reading>, at: At): VisitReading {
  return made<VisitReading>({
    at,
    station: given(raw.station),
    supply: given(raw.supply),
    coil: given(raw.coil),
    loop: given(raw.loop),
    closingCoil: given(raw['closing-coil']),
    closingLoop: given(raw['closing-loop']),
    temperature: given(raw.temperature),
    answers: given(raw.answers),
    meter: given(raw.meter),
    flow: given(raw.flow),
    pressure: given(raw.pressure),
    opened: given(raw.opened),
    closed: given(raw.closed)
  })
}
