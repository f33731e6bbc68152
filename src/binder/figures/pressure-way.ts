/** The pressure from the supply to the devices as a falling line, a point behind each part of the way. */
export interface PressureWayFigure {
  readonly figure: 'pressure-way'
  readonly title: string
  readonly points: readonly { readonly label: string; readonly value: number; readonly text: string }[]
  /** In the unit of the points. */
  readonly needed?: { readonly value: number; readonly label: string }
}
