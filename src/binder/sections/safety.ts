import type { Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { safetyWords } from '../safety-words.ts'
import { cautionBlocks, coverTable } from '../cautions.ts'

export function safetySection(context: PageContext): Section {
  const { site, plan, words } = context
  const w = words.binder.safety
  return {
    id: 'safety',
    title: words.binder.sections.safety,
    newPage: true,
    blocks: [
      { kind: 'paragraph', text: w.lead },
      safetyWords(context),
      ...cautionBlocks(site, plan.cautions, words.cautions),
      { kind: 'paragraph', text: w.chosen, small: true },
      { kind: 'heading', id: 'cover', text: w.coverHeading },
      coverTable(site, words.cautions)
    ]
  }
}
