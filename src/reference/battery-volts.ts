import type { SourceId } from './sources.ts'

/** Volts by which a set of cells is judged in the field. No published figures were found; a product sheet comes before them. */
export interface BatteryVolts {
  /** Name of the kind in `BATTERIES`. */
  readonly kind: string
  /** Cells measured together. */
  readonly cells: number
  readonly newRestVolt: { readonly least: number; readonly most: number }
  /** Under load: below this, a new set at a planned visit. */
  readonly changeBelowVolt: number
  readonly failedNearVolt?: { readonly least: number; readonly most: number }
  readonly source: SourceId
}

export const BATTERY_VOLTS: readonly BatteryVolts[] = [
  {
    kind: '9 V alkaline',
    cells: 1,
    newRestVolt: { least: 9, most: 9.6 },
    changeBelowVolt: 8,
    failedNearVolt: { least: 7, most: 7.2 },
    source: 'from-memory'
  },
  {
    kind: 'AA alkaline',
    cells: 4,
    newRestVolt: { least: 6.2, most: 6.4 },
    changeBelowVolt: 5.2,
    source: 'from-memory'
  }
]
