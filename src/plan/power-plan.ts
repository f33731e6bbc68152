import type { Maybe } from '../base/absent.ts'
import type { MonthLight, SolarVerdict } from '../domain/power/solar-month.ts'
import type { IsoDate } from '../units/date.ts'

/** How long the charge of a set lasts, from what its product sheet states and the simulated year. */
export interface ChargeLife {
  readonly capacityMah: number
  /** By the product sheet, or by the table of typical cells. */
  readonly capacityBy: 'sheet' | 'table'
  /** Part of the capacity that may be counted on, before the cold. */
  readonly usable: number
  readonly usableBy: 'sheet' | 'common practice'
  /** Where the temperature is known. */
  readonly coldest?: ColdestMonth
  /** mAh in a day. */
  readonly standingMah: Maybe<number>
  /** mAh a pulse. */
  readonly pulseMah: Maybe<number>
  readonly pulsesInYear: number
  /** Part of the capacity lost in a year, heat counted in. */
  readonly yearlyLoss: number
  readonly lossBy: 'sheet' | 'common practice'
  readonly temperature: Maybe<{ readonly meanC: number }>
  /** Drawn and lost in a year, mAh. */
  readonly inYearMah: { readonly standing: number; readonly pulses: number; readonly lost: number }
  /** Whole days from the day it was fitted. */
  readonly days: number
  /** True where it is longer than any set is counted on. */
  readonly beyond: boolean
}

/** The coldest month in which valves are worked, and what part of the charge counts in it. */
export interface ColdestMonth {
  /** 1 to 12. */
  readonly month: number
  readonly meanC: number
  readonly share: number
  readonly by: 'sheet' | 'rule' | 'not known'
}

export type VisitKind = 'start-up' | 'season-end' | 'task' | 'next' | 'own'

/** The visit that should change the cells. */
export interface DoAt {
  /** The first or last visit of the season, a task of the maintenance plan, the next one whatever it is for, or one of its own. */
  readonly visit: VisitKind
  /** Name of the task, where it is one. */
  readonly task?: string
  readonly on: IsoDate
  readonly because: 'last before due' | 'none before due' | 'overdue' | 'no date'
}

export interface SolarPlan {
  /** Twelve, January first. */
  readonly months: Maybe<readonly SolarMonth[]>
  /** Days that a full cell lasts without light, in the month that draws most. */
  readonly autonomyDays: Maybe<number>
  /** As the sheet states it. */
  readonly statedDays?: number
  readonly tiltDeg: number
  readonly shadeLost: number
  /** True where somebody wrote what the shade takes. */
  readonly shadeStated: boolean
}

export interface SolarMonth {
  /** 1 to 12. */
  readonly month: number
  readonly by: MonthLight['by']
  readonly panelMj: number
  readonly yieldMah: number
  readonly drawnMah: number
  readonly verdict: SolarVerdict
}
