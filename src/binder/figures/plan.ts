/** A plan drawing at a true scale. Places are meters east and north; all text is final. */
export interface PlanFigure {
  readonly figure: 'plan'
  readonly title: string
  /** The drawing in a few sentences, for those who cannot see it. */
  readonly alt: string
  /** The whole figure on paper, mm. */
  readonly widthMm: number
  readonly heightMm: number
  /** Ground shown, mm from the top left corner of the figure. */
  readonly map: { readonly xMm: number; readonly yMm: number; readonly widthMm: number; readonly heightMm: number }
  /** 100 stands for 1:100. */
  readonly ratio: number
  readonly middle: PlanSpot
  /** Beside the arrow that points north. */
  readonly north: string
  readonly scale: { readonly text: string; readonly bars: readonly ScaleBar[] }
  readonly areas: readonly PlanArea[]
  readonly lines: readonly PlanLine[]
  readonly marks: readonly PlanMark[]
  readonly points: readonly (PlanSpot & { readonly label: string })[]
  readonly ties: readonly PlanTie[]
  /** Left out on a detail, which stands beside its words. */
  readonly legend?: PlanLegend
  readonly titleBlock?: { readonly heading: string; readonly rows: readonly { label: string; value: string }[] }
}

export interface PlanSpot {
  readonly eastM: number
  readonly northM: number
}

export interface ScaleBar {
  readonly lengthM: number
  readonly parts: number
  readonly from: string
  readonly to: string
}

export interface PlanArea {
  readonly points: readonly PlanSpot[]
  /** Number of its pattern, from 0; left out for an outline alone. */
  readonly pattern?: number
  readonly label: string
}

export type PlanStroke =
  'curb' | 'road edge' | 'wall' | 'building' | 'walk' | 'fence' | 'main' | 'lateral' | 'wire' | 'sleeve' | 'other'

export interface PlanLine {
  readonly kind: PlanStroke
  readonly label: string
  readonly points: readonly PlanSpot[]
  readonly circle?: PlanSpot & { readonly radiusM: number }
}

export type PlanSymbol =
  | 'box'
  | 'valve box'
  | 'controller'
  | 'shut-off'
  | 'meter'
  | 'backflow'
  | 'sensor'
  | 'splice'
  | 'filter'
  | 'pump'
  | 'quick coupler'
  | 'drain'
  | 'ground rod'
  | 'other'

export interface PlanMark extends PlanSpot {
  readonly symbol: PlanSymbol
  readonly label: string
  /** What is in it, below its name. */
  readonly holds?: string
}

export interface PlanTie {
  readonly from: PlanSpot
  readonly to: PlanSpot
  readonly text: string
}

export interface PlanLegend {
  readonly areas: readonly { readonly pattern: number; readonly text: string }[]
  /** 'aside' is drawn only where a symbol is set beside its place. */
  readonly symbols: readonly { readonly symbol: PlanSymbol | 'point' | 'tie' | 'aside'; readonly text: string }[]
  readonly lines: readonly { readonly kind: PlanStroke; readonly text: string }[]
  /** What has no place, in sentences; printed below. */
  readonly notes: readonly string[]
}
