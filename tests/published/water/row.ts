import { isPresent } from '../../../src/base/absent.ts'
import type { Maybe } from '../../../src/base/absent.ts'

/** One published figure against one of ours. */
export interface Row {
  readonly calculation: string
  readonly what: string
  /** Where the figure was printed; "worked on paper" where nobody published it. */
  readonly source: string
  readonly published: number
  readonly actual: number
  /** Greatest difference that is let pass, in the unit of the figure. */
  readonly tolerance: number
  /** Why it is that wide. */
  readonly because: string
}

export type RowsOf = Pick<Row, 'calculation' | 'source' | 'tolerance' | 'because'>

/** Rows that share a source and a tolerance: what, published, actual. */
export function rows(
  of: RowsOf,
  figures: readonly (readonly [what: string, published: number, actual: number])[]
): Row[] {
  return figures.map(([what, published, actual]) => ({ ...of, what, published, actual }))
}

export const off = ({ published, actual }: Row): number => Math.abs(actual - published)

/** Binary rounding of figures that are met exactly on paper. */
export const BITS = 1e-9

export function present<T>(value: Maybe<T>): T {
  if (isPresent(value)) return value
  throw new Error(value.reason)
}
