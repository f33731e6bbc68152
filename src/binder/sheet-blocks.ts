import type { PlanFigure } from './figures/plan.ts'

/** A drawing that has a page to itself. */
export interface SheetBlock {
  readonly kind: 'sheet'
  readonly figure: PlanFigure
  /** On turned paper. */
  readonly wide: boolean
  readonly caption: string
}

/** How one box is found: a detail of the drawing and its photograph beside each other. */
export interface BoxFindBlock {
  readonly kind: 'box-find'
  readonly title: string
  readonly where: string
  readonly ties: readonly string[]
  readonly figure: PlanFigure
  readonly picture?: { readonly file: string; readonly alt: string; readonly caption: string }
}

/** The page that is sealed in plastic and kept at a controller. */
export interface ChartBlock {
  readonly kind: 'chart'
  readonly id: string
  readonly title: string
  readonly site: string
  /** "KEEP AT THE CONTROLLER". */
  readonly keep: string
  readonly asOf: string
  readonly figure?: PlanFigure
  /** Said in place of a plan. */
  readonly schematic?: string
  readonly columns: readonly string[]
  /** Head over the last columns. */
  readonly spanned: { readonly label: string; readonly columns: number }
  readonly rows: readonly { readonly pattern?: number; readonly cells: readonly string[] }[]
  readonly facts: readonly { readonly label: string; readonly value: string; readonly missing: boolean }[]
  readonly foot: string
}
