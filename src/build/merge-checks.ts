import { readFileSync } from 'node:fs'
import { sortedBy } from '../base/collections.ts'
import { Refusal } from '../base/refusal.ts'
import { countFindings } from '../diagnostics/finding.ts'
import type { Severity } from '../diagnostics/finding.ts'

/** Findings as `check --format json` prints them. */
export interface CheckJson {
  readonly schema: number
  readonly on: string
  readonly findings: readonly { readonly site: string; readonly severity: Severity }[]
  readonly counts: Readonly<Record<Severity, number>>
}

/** The parts of a check as one, byte by byte what a check of the whole prints. Parts are of whole sites, so they only need to stand in order. */
export function mergeChecks(files: readonly string[]): CheckJson {
  const parts = files.map(readCheck)
  const [first] = parts
  if (!first) throw new Refusal('Name the files of all parts.')
  const other = parts.find(one => one.on !== first.on || one.schema !== first.schema)
  if (other)
    throw new Refusal(
      `The parts are of different days: ${first.on} and ${other.on}.`,
      'Check all parts with the same --on.'
    )
  const findings = sortedBy(
    parts.flatMap(one => one.findings),
    one => one.site
  )
  const counts = countFindings(findings as Parameters<typeof countFindings>[0])
  return { schema: first.schema, on: first.on, findings, counts }
}

function readCheck(file: string): CheckJson {
  try {
    const read = JSON.parse(readFileSync(file, 'utf8')) as Partial<CheckJson>
    if (Array.isArray(read.findings) && typeof read.on === 'string') return read as CheckJson
  } catch {
    // Told below, as what it is not.
  }
  throw new Refusal(
    `${file} does not hold the findings of a check.`,
    'Make it: underlid check --shard 1/2 --format json > check-1.json'
  )
}
