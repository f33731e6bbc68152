import type { SourceId } from './sources.ts'

/** A cell or battery by size and chemistry. Capacity depends on load and end voltage, so its condition stands beside it. */
export interface BatteryKind {
  readonly name: string
  /** Other ways it is written; matched without regard to case. */
  readonly aliases: readonly string[]
  readonly size: '9 V' | 'AA' | 'C' | 'D'
  readonly nominalVolt: number
  readonly capacityMah: number
  readonly condition: string
  readonly source: SourceId
}

export const BATTERIES: readonly BatteryKind[] = [
  {
    name: '9 V alkaline',
    aliases: ['6LR61', '6LF22', '1604A', '9V alkaline', 'PP3 alkaline'],
    size: '9 V',
    nominalVolt: 9,
    capacityMah: 565,
    condition: 'typical, light load, 20 °C',
    source: 'iec-60086-2'
  },
  {
    name: '9 V lithium',
    aliases: ['1604LC', '9V lithium'],
    size: '9 V',
    nominalVolt: 9.6,
    capacityMah: 1200,
    condition: 'typical, light load, 20 °C',
    source: 'iec-60086-2'
  },
  {
    name: '9 V zinc-carbon',
    aliases: ['6F22', '1604D', '9V zinc-carbon'],
    size: '9 V',
    nominalVolt: 9,
    capacityMah: 400,
    condition: 'nominal; 52 mAh only at 100 mA to 0.1 V',
    source: 'iec-60086-2'
  },
  {
    name: 'AA alkaline',
    aliases: ['LR6', '15A'],
    size: 'AA',
    nominalVolt: 1.5,
    capacityMah: 2200,
    condition: '43 Ω for 4 h a day to 0.9 V, 20 °C',
    source: 'cell-specification'
  },
  {
    name: 'C alkaline',
    aliases: ['LR14', '14A'],
    size: 'C',
    nominalVolt: 1.5,
    capacityMah: 7800,
    condition: 'about, at 25 mA',
    source: 'from-memory'
  },
  {
    name: 'D alkaline',
    aliases: ['LR20', '13A'],
    size: 'D',
    nominalVolt: 1.5,
    capacityMah: 18000,
    condition: 'about, at 25 mA to 0.8 V, 20 °C',
    source: 'cell-specification'
  }
]

/** Retail 9 V alkaline batteries discharged at 100 mA to 0.1 V, mAh delivered (published discharge tests, 2024): a pulse load is no light load. */
export const NINE_VOLT_ALKALINE_AT_100_MA: readonly number[] = [310, 310, 450, 490, 440]

/** Below 0 °C alkaline cells are counted at half (rule of this project; trade pages say "about half" between −20 and 0 °C). */
export const COLD_FACTOR = { belowC: 0, usable: 0.5 } as const

/** Self-discharge doubles for every 10 °C above the temperature at which it was stated (common practice, no source). */
export const SELF_DISCHARGE_BASE_C = 25
export const SELF_DISCHARGE_DOUBLES_PER_C = 10

/** Part of the capacity that may be counted on where the sheet says nothing (common practice: a factor of 0.7). */
export const USABLE_SHARE = 0.7

/** Lost by itself in a year at 25 °C where the sheet says nothing: 2 to 5 % are printed for alkaline cells (common practice, no source). */
export const SELF_DISCHARGE_A_YEAR = 0.03

/** Part of the energy that reaches the capacitor of a booster where the sheet says nothing (common practice, no source). */
export const BOOSTER_EFFICIENCY = 0.7
