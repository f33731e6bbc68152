import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { LengthLimit, ProductSheet } from '../../model/site.ts'
import { optional } from './field.ts'
import { below, each, given, made } from './made.ts'
import { count } from './numbers.ts'
import { quantity, wireSize } from './quantities.ts'
import { list, record } from './record.ts'
import { text } from './texts.ts'
import { interval } from './times.ts'

const lengthLimit = record(
  'a length limit',
  { does: 'The longest run that the sheet allows.', example: '{ size: 14 AWG, length: 1380 ft }' },
  {
    size: optional(wireSize('At this size; left out where it holds for every size.', '14 AWG')),
    length: quantity('The longest run, one way, in the unit of the sheet.', 'length', '1380 ft')
  }
)

const limits = record(
  'the limits',
  { does: 'The limits of an output, in any form the sheet states them.', example: '{ pulse-volts: 8.5 V }' },
  {
    'pulse-volts': optional(quantity('Volts at the terminals during the pulse.', 'voltage', '8.5 V')),
    loop: optional(quantity('The most ohms of both wires.', 'resistance', '7 ohm')),
    lengths: optional(list(lengthLimit, { does: 'Longest runs.', example: '[{ size: 14 AWG, length: 1380 ft }]' }))
  }
)

const runTimes = record(
  'the run times',
  { does: 'What run times can be set.', example: '{ least: 1 min, most: 4 h, step: 1 min }' },
  {
    least: optional(quantity('The shortest.', 'duration', '1 min')),
    most: optional(quantity('The longest.', 'duration', '4 h')),
    step: optional(quantity('The step.', 'duration', '1 min'))
  }
)

const sheetBattery = record(
  'the battery of the sheet',
  {
    does: 'What the sheet says of cells.',
    example: '{ kind: 9 V alkaline, count: 1, interval: 12 months, pulses: 8000 }'
  },
  {
    kind: optional(text('Size and chemistry.', '9 V alkaline')),
    count: optional(count('How many.', '1')),
    interval: optional(interval('How often to change them.', '12 months')),
    pulses: optional(count('How many pulses a set gives.', '8000'))
  }
)

/** The front matter of a file in _shared/sheets/. */
export const productSheet = record(
  'a product sheet',
  {
    does: 'What the product sheet of a controller states, as submitted.',
    example: 'title: Four-station controller, in box'
  },
  {
    title: text('Name on the sheet.', '"Four-station controller, in box"'),
    mounting: optional(text('Where it is mounted.', 'in box')),
    stations: optional(count('How many outputs.', '4')),
    programs: optional(count('How many programs.', '3')),
    starts: optional(count('How many start times a program.', '4')),
    'run-time': optional(runTimes),
    limits: optional(limits),
    battery: optional(sheetBattery),
    ingress: optional(text('Protection against dust and water.', 'IP68'))
  }
)

/** `prose` is what stands below the keys. */
export function makeProductSheet(
  raw: z.output<typeof productSheet>,
  at: At,
  path: string,
  prose: string
): ProductSheet {
  return made<ProductSheet>({
    at,
    path,
    title: raw.title,
    mounting: given(raw.mounting),
    stations: given(raw.stations),
    programs: given(raw.programs),
    startsPerProgram: given(raw.starts),
    runTimeLeast: given(raw['run-time']?.least),
    runTimeMost: given(raw['run-time']?.most),
    runTimeStep: given(raw['run-time']?.step),
    pulseVolts: given(raw.limits?.['pulse-volts']),
    loopLimit: given(raw.limits?.loop),
    lengthLimits: each(raw.limits?.lengths, below(at, 'limits'), 'lengths', makeLengthLimit),
    battery: raw.battery ? makeSheetBattery(raw.battery) : undefined,
    ingress: given(raw.ingress),
    prose
  })
}

function makeLengthLimit(raw: z.output<typeof lengthLimit>, at: At): LengthLimit {
  return made<LengthLimit>({ at, size: given(raw.size), length: raw.length })
}

function makeSheetBattery(raw: z.output<typeof sheetBattery>): NonNullable<ProductSheet['battery']> {
  return made<NonNullable<ProductSheet['battery']>>({
    kind: given(raw.kind),
    count: given(raw.count),
    interval: given(raw.interval),
    pulses: given(raw.pulses)
  })
}
