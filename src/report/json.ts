import type { Finding } from '../diagnostics/finding.ts'
import { countFindings } from '../diagnostics/finding.ts'
import type { IsoDate } from '../units/date.ts'
import { sourceText } from './source-text.ts'

/** The findings as the contract of names has them. Figures are rounded to six significant digits, so that a reader sees no noise. */
export function findingsJson(findings: readonly Finding[], on: IsoDate): object {
  return {
    schema: 1,
    on,
    findings: findings.map(({ code, severity, site, subject, message, why, sources, fix, place, related, values }) => ({
      code,
      severity,
      site,
      subject,
      message,
      why,
      source: sourceText(sources),
      fix,
      file: place.file,
      line: place.line,
      column: place.column,
      values: Object.fromEntries(
        Object.entries(values).map(([key, value]) => [key, typeof value === 'number' ? rounded(value) : value])
      ),
      ...(related.length > 0
        ? {
            related: related.map(one => ({
              file: one.place.file,
              line: one.place.line,
              column: one.place.column,
              note: one.note
            }))
          }
        : {})
    })),
    counts: countFindings(findings)
  }
}

function rounded(value: number): number {
  return Number(value.toPrecision(6))
}
