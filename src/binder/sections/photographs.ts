import type { Block, Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { orNotSupplied, stated } from '../values.ts'

/** Photographs of the finished work and of what is buried, with a list that says what each shows. */
export function photographsSection({ site, words }: PageContext): Section {
  const w = words.closeout.photographs
  const photographs = site.closeout?.photographs ?? []
  const named = (of: string | undefined, kind: keyof typeof w.kinds) => [w.kinds[kind], of].filter(Boolean).join(', ')
  const blocks: Block[] =
    photographs.length === 0
      ? [{ kind: 'not-supplied', text: words.binder.notSupplied }]
      : [
          {
            kind: 'table',
            columns: [w.kind, w.of, w.caption, w.taken].map(label => ({ label })),
            rows: photographs.map(one => [
              stated(w.kinds[one.kind]),
              stated(one.of ?? '–'),
              stated(one.caption ?? '–'),
              orNotSupplied(one.taken, words, true)
            ])
          },
          ...photographs.map<Block>(one => ({
            kind: 'picture',
            file: `photos/${one.file}`,
            alt: named(one.of, one.kind),
            caption: one.caption ?? named(one.of, one.kind)
          }))
        ]
  return {
    id: 'photographs',
    title: words.closeout.sections.photographs,
    newPage: false,
    notSupplied: photographs.length === 0,
    blocks
  }
}
