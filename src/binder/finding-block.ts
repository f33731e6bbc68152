import type { FindingBlock } from './blocks.ts'
import type { Finding } from '../diagnostics/finding.ts'
import { citeSource } from '../reference/sources.ts'
import type { SourceId } from '../reference/sources.ts'
import type { Words } from '../words/words.ts'

/** A finding as it is printed: the same words that `check` prints. */
export function findingBlock(finding: Finding, words: Words): FindingBlock {
  return {
    kind: 'finding',
    code: finding.code,
    severity: finding.severity,
    severityWord: words.binder.open.severities[finding.severity],
    subject: finding.subject,
    message: finding.message,
    why: finding.why,
    source: finding.sources.map(id => citeSource(id as SourceId)).join('; '),
    fix: finding.fix,
    place: `${finding.place.file}:${finding.place.line}`
  }
}
