import { citeSource } from '../reference/sources.ts'
import type { SourceId } from '../reference/sources.ts'
import type { Words } from '../words/words.ts'

/** A source by the name it was published under, and how it is known in the words of the binder's language. */
export function citeIn(id: SourceId, { sources }: Pick<Words['cautions'], 'sources'>): string {
  const cited = citeSource(id)
  const told = Object.entries(sources).find(([english]) => cited === english || cited.endsWith(`(${english})`))
  if (!told) return cited
  const [english, here] = told
  return cited === english ? here : cited.replace(`(${english})`, `(${here})`)
}
