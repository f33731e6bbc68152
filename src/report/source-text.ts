import { citeSource } from '../reference/sources.ts'
import type { SourceId } from '../reference/sources.ts'

/** The sources of a finding as one line, most direct first. */
export function sourceText(sources: readonly string[]): string {
  return sources.map(id => citeSource(id as SourceId)).join('; ')
}

/** A worked case for reading: a line that is long on purpose is cut. */
export function shortened(text: string, most = 160): string {
  return text
    .split('\n')
    .map(line => (line.length > most ? `${line.slice(0, most)}…` : line))
    .join('\n')
}
