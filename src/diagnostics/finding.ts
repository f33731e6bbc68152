/** Where a fact stands: a file and the keys that lead to it. Resolved to line and column only when somebody asks. */
export interface At {
  readonly file: string
  readonly path: readonly (string | number)[]
}

/** A resolved place; line and column count from 1, `length` in characters, `text` is the whole line. */
export interface Place {
  readonly file: string
  readonly line: number
  readonly column: number
  readonly length: number
  readonly text: string
}

export type Severity = 'error' | 'warning' | 'note'
export const SEVERITIES: readonly Severity[] = ['error', 'warning', 'note']

/** One thing that is wrong, needs a look, or is worth knowing. A value: collected, sorted, printed once. */
export interface Finding {
  readonly code: string
  readonly severity: Severity
  readonly site: string
  /** The writer's own name for the thing: Z4, K1, VB2. Empty for the site as a whole. */
  readonly subject: string
  readonly message: string
  readonly why: string
  /** Ids of the source register, most direct first. */
  readonly sources: readonly string[]
  readonly fix: string
  readonly place: Place
  readonly related: readonly { readonly place: Place; readonly note: string }[]
  /** Figures with the unit in the key: loop_ohm, due_on. */
  readonly values: Readonly<Record<string, number | string>>
}

const RANK: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 }

/** By site, then file, line, column, code, subject: the same sources give the same order. */
export function sortFindings(findings: Iterable<Finding>): Finding[] {
  return [...findings].sort((a, b) => {
    const order =
      compare(a.site, b.site) ||
      compare(a.place.file, b.place.file) ||
      a.place.line - b.place.line ||
      a.place.column - b.place.column ||
      RANK[a.severity] - RANK[b.severity] ||
      compare(a.code, b.code) ||
      compare(a.subject, b.subject) ||
      compare(a.message, b.message)
    return order
  })
}

export function countFindings(findings: Iterable<Finding>): Record<Severity, number> {
  const counts = { error: 0, warning: 0, note: 0 }
  for (const finding of findings) counts[finding.severity] += 1
  return counts
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
