/** What a zone needs in each month of a year beside what it is given: two bars a month, told apart by their pattern. */
export interface NeedGivenFigure {
  readonly figure: 'need-given'
  readonly title: string
  readonly unit: string
  readonly needLabel: string
  readonly givenLabel: string
  readonly months: readonly NeedGivenMonth[]
  /** Where the scale ends, with its words: "177 mm". */
  readonly top: { readonly value: number; readonly label: string }
}

export interface NeedGivenMonth {
  readonly label: string
  /** Left out where it is not known. */
  readonly need?: number
  readonly given: number
}
