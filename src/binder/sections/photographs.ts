import { PHOTO_KINDS } from '../../model/closeout.ts'
import type { Block, Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { notSupplied, orNotSupplied, stated } from '../values.ts'

/** Photographs of the finished work and of what is buried, with a list that says what each shows. */
export function photographsSection({ site, words }: PageContext): Section {
  const w = words.closeout.photographs
  const photographs = site.closeout?.photographs ?? []
  const named = (of: string | undefined, kind: keyof typeof w.kinds) => [w.kinds[kind], of].filter(Boolean).join(', ')
  const wanted: Block = {
    kind: 'facts',
    caption: words.handover.photographs.wanted,
    rows: PHOTO_KINDS.map(kind => {
      const mine = photographs.filter(one => one.kind === kind)
      const of = [...new Set(mine.map(one => one.of ?? one.caption ?? one.file))]
      return { label: w.kinds[kind], value: mine.length === 0 ? notSupplied(words) : stated(of.join('; ')) }
    })
  }
  const ofBoxes: Block[] = site.boxes.some(box => box.photos.length > 0)
    ? [{ kind: 'paragraph', text: w.ofBoxes(words.binder.sections.boxes), small: true }]
    : []
  const blocks: Block[] =
    photographs.length === 0
      ? [...ofBoxes, wanted]
      : [
          wanted,
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
