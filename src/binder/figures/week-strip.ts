/** A week, one row a day from noon to noon: what is drawn over the hours, and the hours allowed as a band behind it. */
export interface WeekStripFigure {
  readonly figure: 'week-strip'
  readonly title: string
  readonly hours: readonly { readonly minute: number; readonly label: string }[]
  readonly fromMinute: number
  readonly toMinute: number
  readonly rows: readonly WeekStripRow[]
  /** Where the scale of each row ends: the limit, or the most that is drawn. */
  readonly top: number
  readonly limit?: { readonly value: number; readonly label: string }
}

export interface WeekStripRow {
  readonly label: string
  /** What stands at the end of the row: "396 min". */
  readonly sum: string
  readonly windows: readonly { readonly from: number; readonly to: number }[]
  readonly steps: readonly LoadStep[]
}

/** What is drawn from one minute to another, in the unit of the figure. */
export interface LoadStep {
  readonly from: number
  readonly to: number
  readonly value: number
}

/** What is drawn over a day, below the lanes of its strip. */
export interface StripLoadFigure {
  readonly label: string
  readonly steps: readonly LoadStep[]
  readonly top: number
  readonly peak: { readonly value: number; readonly label: string }
  readonly limit?: { readonly value: number; readonly label: string }
}
