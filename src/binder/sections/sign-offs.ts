import type { Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'

export function signOffsSection({ words }: PageContext): Section {
  const w = words.binder.signOffs
  return {
    id: 'sign-offs',
    title: words.binder.sections.signOffs,
    newPage: false,
    blocks: [
      { kind: 'paragraph', text: w.lead },
      { kind: 'signatures', rows: [w.installer, w.owner, w.maintainer].map(role => ({ role, fields: w.fields })) }
    ]
  }
}
