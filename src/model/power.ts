import type { Interval } from '../units/date.ts'
import type { Quantity } from '../units/quantity.ts'

/** What a product sheet says of the power of a unit. */
export interface SheetPower {
  readonly battery?: SheetBattery
  /** Current drawn all the time. */
  readonly drain?: Quantity<'current'>
  readonly pulse?: SheetPulse
  /** Temperatures between which the unit works. */
  readonly working?: TemperatureRange
  readonly solar?: SheetSolar
  readonly adapter?: SheetAdapter
  /** Whether the settings outlast a change of cells; a time is how long they last without any. */
  readonly keepsProgram?: KeepsProgram
  readonly onLowBattery?: OnLowBattery
}

export interface SheetBattery {
  readonly kind?: string
  readonly count?: number
  readonly interval?: Interval
  readonly pulses?: number
  /** Of the whole set, to `cutoff` where that is stated. */
  readonly capacity?: Quantity<'charge'>
  /** Volts of the whole set at which the capacity counts as used up. */
  readonly cutoff?: Quantity<'voltage'>
  /** Part of the capacity that may be counted on. */
  readonly usable?: Quantity<'ratio'>
  /** Part of the full capacity lost in a year at 25 °C. */
  readonly selfDischarge?: Quantity<'ratio'>
  readonly cold?: { readonly at: Quantity<'temperature'>; readonly capacity: Quantity<'ratio'> }
  /** Volts under load below which a set is changed. */
  readonly changeBelow?: Quantity<'voltage'>
}

/** What one pulse takes, in any form in which a sheet states it. */
export interface SheetPulse {
  readonly charge?: Quantity<'charge'>
  /** Taken from the battery, losses included. */
  readonly energy?: Quantity<'energy'>
  readonly current?: Quantity<'current'>
  readonly time?: Quantity<'duration'>
  readonly capacitor?: Quantity<'capacitance'>
  readonly volts?: Quantity<'voltage'>
  readonly efficiency?: Quantity<'ratio'>
}

export interface TemperatureRange {
  readonly from?: Quantity<'temperature'>
  readonly to?: Quantity<'temperature'>
}

export interface SheetSolar {
  /** Output in full sun, 1,000 W/m². */
  readonly panel?: Quantity<'power'>
  readonly peakCurrent?: Quantity<'current'>
  /** Part of the panel's output that reaches the cell, over a year of dirt. */
  readonly derating?: Quantity<'ratio'>
  readonly battery?: SolarBattery
  /** Days that the unit runs on without light, as stated. */
  readonly daysWithoutSun?: number
}

export interface SolarBattery {
  readonly kind?: string
  readonly volts?: Quantity<'voltage'>
  readonly capacity?: Quantity<'charge'>
}

export interface SheetAdapter {
  readonly mains?: Quantity<'voltage'>
  readonly output?: Quantity<'voltage'>
}

export type KeepsProgram = 'yes' | 'no' | Quantity<'duration'>

export const ON_LOW_BATTERY = ['closes', 'stays as it is'] as const
export type OnLowBattery = (typeof ON_LOW_BATTERY)[number]

/** How a panel stands at its place. */
export interface Panel {
  /** From level. A panel of which nothing is said counts as lying flat. */
  readonly tilt?: Quantity<'angle'>
  readonly faces?: PanelFaces
  /** Part of the light that never reaches it. */
  readonly shade?: Shade
}

export const PANEL_FACES = ['noon sun', 'another way'] as const
export type PanelFaces = (typeof PANEL_FACES)[number]

export interface Shade {
  /** As written: "half", "40 %". */
  readonly text: string
  readonly lost: number
}
