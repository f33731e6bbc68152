import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Finding } from '../../src/diagnostics/finding.ts'
import { sameValue } from './expectation.ts'

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '../..')
export const SITES = join(ROOT, 'sites')
/** What the open sites must yield, as agreed outside of the project, and the copy that is kept with it. */
export const SHARED_FILE = join(ROOT, '../shared/reference/site-findings.json')
export const COPY_FILE = join(ROOT, 'tests/fixtures/site-findings.json')

export interface Row {
  readonly codes: readonly string[]
  readonly subject?: string
  readonly severity?: string
  readonly values?: Readonly<Record<string, number | string>>
  readonly count?: number
  readonly area?: string
  readonly tolerance_percent?: number
  /** Anything else is a value of the finding, under the same key. */
  readonly [key: string]: unknown
}

export interface Quiet {
  readonly code: string
  readonly subject?: string
}

export interface Expected {
  readonly on: string
  readonly sites: Readonly<Record<string, ExpectedSite>>
}

export interface ExpectedSite {
  readonly fires: readonly Row[]
  readonly quiet: readonly Quiet[]
  readonly due_within_60_days?: {
    readonly battery: Readonly<Record<string, number>>
    readonly out_of_service_excluded: readonly string[]
  }
}

export function readExpected(): Expected {
  return JSON.parse(readFileSync(existsSync(SHARED_FILE) ? SHARED_FILE : COPY_FILE, 'utf8')) as Expected
}

const NO_VALUES: readonly string[] = ['codes', 'subject', 'severity', 'values', 'count', 'area', 'tolerance_percent']
const DEFAULT_TOLERANCE_PERCENT = 1

/** Every figure and word that a row asks for, by the key under which a finding carries it. */
export function wantedValues(row: Row): Readonly<Record<string, number | string>> {
  const others = Object.entries(row).filter(([key]) => !NO_VALUES.includes(key))
  return { ...row.values, ...(Object.fromEntries(others) as Record<string, number | string>) }
}

/** The findings of a site that a row describes. */
export function matching(row: Row, findings: readonly Finding[]): readonly Finding[] {
  const percent = row.tolerance_percent ?? DEFAULT_TOLERANCE_PERCENT
  return findings.filter(
    ({ code, subject, severity, values }) =>
      row.codes.includes(code) &&
      (row.subject === undefined || subject === row.subject) &&
      (row.severity === undefined || severity === row.severity) &&
      Object.entries(wantedValues(row)).every(([key, value]) => sameValue(values[key], value, percent))
  )
}

export function rowTitle({ codes, subject }: Row): string {
  return `${codes.join(' or ')}${subject === undefined ? '' : ` of ${subject}`}`
}

export function quietTitle({ code, subject }: Quiet): string {
  return subject === undefined ? code : `${code} of ${subject}`
}
