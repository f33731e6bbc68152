import type { Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { stated } from '../values.ts'

/** The words of this binder, told. */
export function glossarySection({ words }: PageContext): Section {
  const w = words.checklists
  return {
    id: 'glossary',
    title: w.glossary,
    newPage: false,
    blocks: [{ kind: 'facts', rows: w.terms.map(([label, text]) => ({ label, value: stated(text) })) }]
  }
}
