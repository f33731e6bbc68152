import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Controller, ProductSheet } from '../../model/site.ts'
import { battery, makeBattery } from './battery.ts'
import { controllerClock, makeClock } from './clock.ts'
import { optional } from './field.ts'
import { each, given, made, part } from './made.ts'
import { makePanel, panel } from './panel.ts'
import { makeProgram, program } from './program.ts'
import { quantity } from './quantities.ts'
import { list, record } from './record.ts'
import { makeSuspension, suspensions } from './suspension.ts'
import { choice, id, sharedFile, text, yesNo } from './texts.ts'
import { makeMasterValve, masterValve } from './valve.ts'

export const controller = record(
  'a controller',
  { does: 'A controller.', example: '{ id: K1, box: VB1, sheet: _shared/sheets/four-station-in-box.md }' },
  {
    id: id('Name of the controller.', 'K1'),
    box: optional(id('The box it is in.', 'VB1')),
    where: optional(text('Where it is, if in no box.', 'on the pump house wall')),
    sheet: optional(sharedFile('File of its product sheet.', '_shared/sheets/four-station-in-box.md')),
    serial: optional(text('Serial number.', '"K-0001"')),
    power: optional(
      choice('battery, solar or adapter; battery where nothing is written.', ['battery', 'solar', 'adapter'], 'battery')
    ),
    panel: optional(panel),
    battery: optional(battery),
    clock: optional(controllerClock),
    programs: optional(
      list(program, {
        does: 'Its programs.',
        example: '[{ id: A, days: every day, starts: ["23:10"], stations: { 1: 25 min } }]'
      })
    ),
    'delay-between-stations': optional(quantity('Pause between one station and the next.', 'duration', '5 s', 'zero')),
    'delay-for': optional(text('What the delay is for.', 'slow valves')),
    'master-valve': optional(masterValve),
    'pump-start': optional(yesNo('yes: it starts a pump.', 'no')),
    'pump-relay': optional(text('The relay that starts the pump, and where it is.', '"relay PR1 in the pump house"')),
    stand: optional(
      text('Where to stand with the phone, for a unit that is set by radio.', '"on the path beside the box"')
    ),
    lock: optional(text('What locks its cabinet; the key stands under `keys:`.', 'cam lock')),
    supply: optional(id('The supply it draws from; the only one where there is one.', 'S1')),
    'out-of-service': optional(text('Why it is not running.', 'taken away for street works until September')),
    suspensions: optional(suspensions)
  }
)

/** `sheet` is the product sheet that the path leads to, where one was found. */
export function makeController(raw: z.output<typeof controller>, at: At, sheet?: ProductSheet): Controller {
  return made<Controller>({
    at,
    id: raw.id,
    box: given(raw.box),
    where: given(raw.where),
    sheetPath: given(raw.sheet),
    sheet,
    serial: given(raw.serial),
    power: raw.power ?? 'battery',
    panel: raw.panel ? makePanel(raw.panel) : undefined,
    battery: part(raw.battery, at, 'battery', makeBattery),
    clock: part(raw.clock, at, 'clock', makeClock),
    programs: each(raw.programs, at, 'programs', makeProgram),
    delayBetweenStations: given(raw['delay-between-stations']),
    delayFor: given(raw['delay-for']),
    masterValve: part(raw['master-valve'], at, 'master-valve', makeMasterValve),
    pumpStart: given(raw['pump-start']),
    pumpRelay: given(raw['pump-relay']),
    stand: given(raw.stand),
    lock: given(raw.lock),
    supply: given(raw.supply),
    outOfService: given(raw['out-of-service']),
    suspensions: raw.suspensions ? each(raw.suspensions, at, 'suspensions', makeSuspension) : undefined
  })
}
