import type { z } from 'zod'
import type {
  KeepsProgram,
  SheetAdapter,
  SheetBattery,
  SheetPower,
  SheetPulse,
  SheetSolar,
  SolarBattery,
  TemperatureRange
} from '../../model/power.ts'
import { ON_LOW_BATTERY } from '../../model/power.ts'
import { parseQuantity } from '../../units/quantity.ts'
import { quantityWrong } from '../improve/unit.ts'
import { field, optional, taken, wrong } from './field.ts'
import { given, made } from './made.ts'
import type { Made } from './made.ts'
import { count } from './numbers.ts'
import { beyondThisWorld } from './of-this-world.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'
import { part } from './shares.ts'
import { choice, text } from './texts.ts'
import { interval } from './times.ts'

const cold = record(
  'the cold',
  { does: 'What is left of the capacity in the cold.', example: '{ at: -20 °C, capacity: 50 % }' },
  {
    at: quantity('At this temperature.', 'temperature', '-20 °C', 'any'),
    capacity: part('What is left of the capacity.', '50 %')
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
    pulses: optional(count('How many pulses a set gives.', '8000')),
    capacity: optional(quantity('What the whole set gives.', 'charge', '550 mAh')),
    cutoff: optional(quantity('Volts of the set at which that capacity is used up.', 'voltage', '6.6 V')),
    usable: optional(part('Part of the capacity that counts; 70 % where nothing is written.', '70 %')),
    'self-discharge': optional(part('Lost by itself in a year, at 25 °C.', '3 %', 'zero')),
    cold: optional(cold),
    'change-below': optional(quantity('Volts of the set under load below which it is changed.', 'voltage', '8 V'))
  }
)

const pulse = record(
  'the pulse',
  {
    does: 'What one pulse takes from the battery: its charge, its energy, its current and time, or the capacitor behind it.',
    example: '{ charge: 25 mC }'
  },
  {
    charge: optional(quantity('Charge of one pulse.', 'charge', '25 mC')),
    energy: optional(quantity('Energy that one pulse takes from the battery.', 'energy', '480 mJ')),
    current: optional(quantity('Current of the pulse.', 'current', '500 mA')),
    time: optional(quantity('Length of the pulse.', 'duration', '60 ms')),
    capacitor: optional(quantity('Capacitor that is emptied into the coil.', 'capacitance', '4700 µF')),
    volts: optional(quantity('Volts to which it is filled.', 'voltage', '12 V')),
    efficiency: optional(part('Part of the energy that reaches it; 70 % where nothing is written.', '70 %'))
  }
)

const working = record(
  'the working temperature',
  { does: 'Temperatures between which it works.', example: '{ from: -10 °C, to: 60 °C }' },
  {
    from: optional(quantity('The lowest.', 'temperature', '-10 °C', 'any')),
    to: optional(quantity('The highest.', 'temperature', '60 °C', 'any'))
  }
)

const solarBattery = record(
  'the cell behind the panel',
  {
    does: 'The cell that the panel fills.',
    example: '{ kind: AA nickel-metal hydride, volts: 3.6 V, capacity: 800 mAh }'
  },
  {
    kind: optional(text('Size and chemistry.', 'AA nickel-metal hydride')),
    volts: optional(quantity('Its nominal volts.', 'voltage', '3.6 V')),
    capacity: optional(quantity('What it holds when full.', 'charge', '800 mAh'))
  }
)

const solar = record(
  'the panel of the sheet',
  {
    does: 'The solar panel: what it gives in full sun, and the cell behind it.',
    example: '{ panel: 0.5 W, battery: { volts: 3.6 V, capacity: 800 mAh }, days-without-sun: 10 }'
  },
  {
    panel: optional(quantity('Watts in full sun.', 'power', '0.5 W')),
    'peak-current': optional(
      quantity('Current into the cell in full sun, where the sheet says that.', 'current', '80 mA')
    ),
    derating: optional(part('Part that reaches the cell; 50 % where nothing is written.', '50 %')),
    battery: optional(solarBattery),
    'days-without-sun': optional(count('Days it runs on without light.', '10'))
  }
)

const adapter = record(
  'the adapter',
  { does: 'The adapter that feeds it from the mains.', example: '{ mains: 120 V, output: 9 V }' },
  {
    mains: optional(quantity('Volts of the mains.', 'voltage', '120 V')),
    output: optional(quantity('Volts that it gives.', 'voltage', '9 V'))
  }
)

/** "yes", "no", or how long: "30 s". */
const keepsProgram = field<KeepsProgram>(
  {
    does: 'Whether the programs are kept while the cells are out: yes, no, or for how long.',
    example: '30 s'
  },
  { type: ['string', 'boolean'] },
  value => {
    const word = String(value).trim().toLowerCase()
    if (word === 'yes' || word === 'true') return taken('yes')
    if (word === 'no' || word === 'false') return taken('no')
    const parsed = parseQuantity(word, 'duration')
    if (!parsed.ok)
      return parsed.problem.kind === 'not-a-quantity'
        ? wrong('file/not-understood', { expected: 'yes, no or a time', example: '30 s' })
        : quantityWrong(parsed.problem, 'duration', '30 s', word)
    const range = parsed.value.si > 0 ? beyondThisWorld(parsed.value) : 'must be more than zero'
    return range === undefined ? taken(parsed.value) : wrong('file/out-of-range', { range, example: '30 s' })
  }
)

/** The keys of a product sheet about power. */
export const SHEET_POWER_KEYS = {
  battery: optional(sheetBattery),
  drain: optional(quantity('Current drawn all the time.', 'current', '12 µA', 'zero')),
  pulse: optional(pulse),
  working: optional(working),
  solar: optional(solar),
  adapter: optional(adapter),
  'keeps-program': optional(keepsProgram),
  'valve-on-low-battery': optional(
    choice('What it does with an open valve before the battery is empty.', ON_LOW_BATTERY, 'closes')
  )
}

interface RawPower {
  readonly battery?: z.output<typeof sheetBattery> | null | undefined
  readonly drain?: SheetPower['drain'] | null | undefined
  readonly pulse?: z.output<typeof pulse> | null | undefined
  readonly working?: z.output<typeof working> | null | undefined
  readonly solar?: z.output<typeof solar> | null | undefined
  readonly adapter?: z.output<typeof adapter> | null | undefined
  readonly 'keeps-program'?: KeepsProgram | null | undefined
  readonly 'valve-on-low-battery'?: SheetPower['onLowBattery'] | null | undefined
}

export function makeSheetPower(raw: RawPower): Made<SheetPower> {
  return {
    battery: raw.battery ? makeSheetBattery(raw.battery) : undefined,
    drain: given(raw.drain),
    pulse: raw.pulse ? makePulse(raw.pulse) : undefined,
    working: raw.working ? makeWorking(raw.working) : undefined,
    solar: raw.solar ? makeSolar(raw.solar) : undefined,
    adapter: raw.adapter
      ? made<SheetAdapter>({ mains: given(raw.adapter.mains), output: given(raw.adapter.output) })
      : undefined,
    keepsProgram: given(raw['keeps-program']),
    onLowBattery: given(raw['valve-on-low-battery'])
  }
}

function makeSheetBattery(raw: z.output<typeof sheetBattery>): SheetBattery {
  return made<SheetBattery>({
    kind: given(raw.kind),
    count: given(raw.count),
    interval: given(raw.interval),
    pulses: given(raw.pulses),
    capacity: given(raw.capacity),
    cutoff: given(raw.cutoff),
    usable: given(raw.usable),
    selfDischarge: given(raw['self-discharge']),
    cold: raw.cold ? { at: raw.cold.at, capacity: raw.cold.capacity } : undefined,
    changeBelow: given(raw['change-below'])
  })
}

function makePulse(raw: z.output<typeof pulse>): SheetPulse {
  return made<SheetPulse>({
    charge: given(raw.charge),
    energy: given(raw.energy),
    current: given(raw.current),
    time: given(raw.time),
    capacitor: given(raw.capacitor),
    volts: given(raw.volts),
    efficiency: given(raw.efficiency)
  })
}

function makeWorking(raw: z.output<typeof working>): TemperatureRange {
  return made<TemperatureRange>({ from: given(raw.from), to: given(raw.to) })
}

function makeSolar(raw: z.output<typeof solar>): SheetSolar {
  return made<SheetSolar>({
    panel: given(raw.panel),
    peakCurrent: given(raw['peak-current']),
    derating: given(raw.derating),
    battery: raw.battery
      ? made<SolarBattery>({
          kind: given(raw.battery.kind),
          volts: given(raw.battery.volts),
          capacity: given(raw.battery.capacity)
        })
      : undefined,
    daysWithoutSun: given(raw['days-without-sun'])
  })
}
