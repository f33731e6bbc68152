import type { Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { orNotSupplied, stated } from '../values.ts'

export function warrantySection({ site, words }: PageContext): Section {
  const w = words.binder.warranty
  return {
    id: 'warranty',
    title: words.binder.sections.warranty,
    newPage: false,
    notSupplied: site.warranties.length === 0,
    blocks:
      site.warranties.length === 0
        ? [{ kind: 'not-supplied', text: words.binder.notSupplied }]
        : [
            {
              kind: 'table',
              columns: [w.item, w.start, w.end, w.terms, w.contact].map(label => ({ label })),
              rows: site.warranties.map(one => [
                stated(one.item),
                orNotSupplied(one.start, words, true),
                orNotSupplied(one.end, words, true),
                orNotSupplied(one.terms, words),
                orNotSupplied(one.contact, words)
              ])
            }
          ]
  }
}
