import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import { SET_BY, SHEET_DAY_RULES } from '../../model/site.ts'
import type { LengthLimit, ProductSheet, SheetSuspension } from '../../model/site.ts'
import { optional } from './field.ts'
import { below, each, given, made } from './made.ts'
import { count } from './numbers.ts'
import { quantity, wireSize } from './quantities.ts'
import { list, record } from './record.ts'
import { SHEET_POWER_KEYS, makeSheetPower } from './sheet-power.ts'
import { choice, text, yesNo } from './texts.ts'

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

const suspension = record(
  'the suspension',
  {
    does: 'How watering is held back for a number of days.',
    example: '{ days: 30, set: "off key, then +", shows: "days left" }'
  },
  {
    days: optional(count('The most days.', '30')),
    set: optional(text('How it is set.', '"off key, then + for each day"')),
    shows: optional(text('What it shows meanwhile.', '"OFF and the days left"'))
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
    ...SHEET_POWER_KEYS,
    ingress: optional(text('Protection against dust and water.', 'IP68')),
    'set-by': optional(choice('keys: on its own face; radio: from a phone.', SET_BY, 'radio')),
    range: optional(quantity('How far the radio reaches, in the open.', 'length', '10 m')),
    lock: optional(text('What locks its cabinet.', 'cam lock')),
    'three-lead': optional(yesNo('yes: it works coils of three leads.', 'no')),
    'sensor-inputs': optional(count('How many sensors it has terminals for.', '1')),
    'master-output': optional(yesNo('yes: it has an output for a master valve.', 'yes')),
    'pump-output': optional(yesNo('yes: it has an output for a pump relay.', 'no')),
    'starts-a-day': optional(count('How many starts it makes in a day, all programs together.', '16')),
    'day-rules': optional(
      list(choice('weekdays, every N days, odd or even.', SHEET_DAY_RULES, 'weekdays'), {
        does: 'What days it can be set to.',
        example: '[weekdays, every N days, odd, even]'
      })
    ),
    'monthly-percent': optional(
      yesNo('no: run times cannot be set by a percent for each month; they are keyed in anew.', 'no')
    ),
    'cycle-soak': optional(
      yesNo('no: it cannot split a run into cycles with a soak between; start times do that instead.', 'no')
    ),
    suspension: optional(suspension),
    'after-memory-loss': optional(
      text('What to do when clock and program are gone.', '"set clock and date first, then key in the program card"')
    )
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
    ...makeSheetPower(raw),
    ingress: given(raw.ingress),
    setBy: given(raw['set-by']),
    radioRange: given(raw.range),
    lock: given(raw.lock),
    threeLead: given(raw['three-lead']),
    sensorInputs: given(raw['sensor-inputs']),
    masterOutput: given(raw['master-output']),
    pumpOutput: given(raw['pump-output']),
    startsPerDay: given(raw['starts-a-day']),
    dayRules: given(raw['day-rules']),
    monthlyPercent: given(raw['monthly-percent']),
    cycleSoak: given(raw['cycle-soak']),
    suspension: raw.suspension ? makeSuspension(raw.suspension) : undefined,
    afterMemoryLoss: given(raw['after-memory-loss']),
    prose
  })
}

function makeLengthLimit(raw: z.output<typeof lengthLimit>, at: At): LengthLimit {
  return made<LengthLimit>({ at, size: given(raw.size), length: raw.length })
}

function makeSuspension(raw: z.output<typeof suspension>): SheetSuspension {
  return made<SheetSuspension>({ days: given(raw.days), set: given(raw.set), shows: given(raw.shows) })
}
