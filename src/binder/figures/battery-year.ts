/** A set of cells from the day it was fitted to the day it is due: season, pulses of each month, and the days that matter. */
export interface BatteryYearFigure {
  readonly figure: 'battery-year'
  readonly title: string
  readonly unit: string
  /** Whole months, side by side; a place along them is a share from 0 to 1. */
  readonly months: readonly BatteryYearMonth[]
  readonly seasons: readonly { readonly from: number; readonly to: number }[]
  /** Words for the band of the season; left out where it waters all year. */
  readonly seasonLabel?: string
  readonly marks: readonly BatteryYearMark[]
}

export interface BatteryYearMonth {
  /** "Apr". */
  readonly label: string
  /** "2027", below the first month and below each January. */
  readonly year?: string
  readonly pulses: number
  readonly text: string
}

export interface BatteryYearMark {
  readonly kind: 'fitted' | 'today' | 'visit' | 'due' | 'date-code'
  readonly at: number
  readonly label: string
}
