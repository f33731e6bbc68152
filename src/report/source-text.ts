import { citeSource } from '../reference/sources.ts'
import type { SourceId } from '../reference/sources.ts'

/** The sources of a finding as one line, most direct first. */
export function sourceText(sources: readonly string[]): string {
  return sources.map(id => citeSource(id as SourceId)).join('; ')
}
