import { parse } from 'yaml'
import type { Finding } from '../../src/diagnostics/finding.ts'

/** So many findings of which all of this holds. */
export interface Expectation {
  readonly count: number
  readonly subject?: string
  readonly severity?: string
  readonly values?: Readonly<Record<string, number | string>>
  /** Words that the message holds. */
  readonly says?: string
  /** Words that the fix holds. */
  readonly fix?: string
}

/** Figures are written to three digits, so half a percent tells a rounding from another figure. */
const VALUES_WITHIN_PERCENT = 0.5

/** Reads `1 · subject "Z1" · severity error · values { loop_ohm: 14.84 } · says "410 m" · fix "276.2 m"`; throws on anything else. */
export function parseExpectation(text: string): Expectation {
  const [count, ...parts] = text.split(' · ')
  if (!/^[1-9]\d*$/u.test(count ?? '')) throw new Error(`"${count}" is no number of findings`)
  return Object.assign({ count: Number(count) }, ...parts.map(parsePart)) as Expectation
}

function parsePart(part: string): Partial<Expectation> {
  const [, key, rest = ''] = /^(subject|severity|values|says|fix) (.+)$/u.exec(part) ?? []
  if (key === 'subject' || key === 'says' || key === 'fix') return { [key]: JSON.parse(rest) as string }
  if (key === 'severity' && /^(error|warning|note)$/u.test(rest)) return { severity: rest }
  if (key === 'values') return { values: parseValues(rest) }
  throw new Error(`"${part}" is nothing that can be expected`)
}

function parseValues(text: string): Record<string, number | string> {
  const values: unknown = parse(text)
  if (typeof values !== 'object' || values === null || Object.keys(values).length === 0)
    throw new Error(`"${text}" holds no values`)
  return values as Record<string, number | string>
}

export function meets(finding: Finding, expected: Expectation): boolean {
  const { subject, severity, says, fix, values = {} } = expected
  if (subject !== undefined && finding.subject !== subject) return false
  if (severity !== undefined && finding.severity !== severity) return false
  if (says !== undefined && !plain(finding.message).includes(says)) return false
  if (fix !== undefined && !plain(finding.fix).includes(fix)) return false
  return Object.entries(values).every(([key, value]) => sameValue(finding.values[key], value, VALUES_WITHIN_PERCENT))
}

export function sameValue(actual: unknown, expected: number | string, percent: number): boolean {
  if (typeof expected === 'string') return typeof actual === 'string' && plain(actual) === plain(expected)
  if (typeof actual !== 'number') return false
  return Math.abs(actual - expected) <= (Math.abs(expected) * percent) / 100 + 1e-12
}

/** Spaces that do not break are written as plain ones in a page. */
export const plain = (text: string): string => text.replaceAll('\u00a0', ' ')

/** For the message of a failing test. */
export function told(findings: readonly Finding[]): string {
  const lines = findings.map(
    ({ subject, severity, message, fix, values }) =>
      `  ${severity} "${subject}" ${message} ${JSON.stringify(values)} ${fix}`
  )
  return lines.length === 0 ? '  nothing' : lines.join('\n')
}
