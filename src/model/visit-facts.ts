import type { At } from '../diagnostics/finding.ts'

/** How a controller was found and how it was left. */
export interface VisitProgram {
  readonly at: At
  readonly controller: string
  /** "4 min fast", "an hour ahead". */
  readonly clock?: string
  readonly found?: string
  readonly left?: string
}

/** A test of the backflow assembly on the day of the visit. */
export interface VisitTest {
  readonly at: At
  readonly supply: string
  readonly passed: boolean
  readonly tester?: string
}

export interface VisitPart {
  readonly at: At
  readonly item: string
  readonly count: number
}
