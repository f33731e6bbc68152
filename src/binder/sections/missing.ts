import type { Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { gapsOf } from '../gaps.ts'
import { stated } from '../values.ts'

/** Every gap of the binder in one list, section by section, so that none is silent. */
export function missingSection({ site, words }: PageContext, sections: readonly Section[]): Section {
  const w = words.binder.missing
  const bare = site.boxes.filter(box => box.photos.length === 0).map(box => box.id)
  const rows = [
    ...sections.flatMap(section => {
      const gaps = gapsOf(section, w.rows)
      const all = section.notSupplied ? [w.whole, ...gaps.filter(gap => gap !== words.binder.notSupplied)] : gaps
      return all.length === 0 ? [] : [[section.title, all.join('; ')] as const]
    }),
    ...(bare.length === 0 ? [] : [[w.photos, bare.join(', ')] as const])
  ]
  return {
    id: 'missing',
    title: words.binder.sections.missing,
    newPage: false,
    blocks:
      rows.length === 0
        ? [{ kind: 'paragraph', text: w.none }]
        : [
            { kind: 'paragraph', text: w.lead },
            {
              kind: 'table',
              columns: [{ label: w.part }, { label: w.what }],
              rows: rows.map(([part, what]) => [stated(part), stated(what)])
            }
          ]
  }
}
