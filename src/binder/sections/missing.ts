import type { Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { stated } from '../values.ts'

/** Parts of a complete binder that were not supplied, so that no gap is silent. */
export function missingSection({ site, words }: PageContext, sections: readonly Section[]): Section {
  const w = words.binder.missing
  const { parts } = w
  const absent: (readonly [string, string])[] = [
    parts.recordDrawing,
    parts.waterBudget,
    parts.calendar,
    parts.spares,
    ...(site.warranties.length === 0 ? [parts.warranty] : []),
    parts.training,
    parts.tests,
    ...(site.boxes.some(box => box.photos.length === 0) ? [parts.photos] : [])
  ]
  const empty = sections
    .filter(section => section.notSupplied && section.id !== 'warranty')
    .map(section => [section.title, words.binder.notSupplied] as const)
  return {
    id: 'missing',
    title: words.binder.sections.missing,
    newPage: false,
    blocks: [
      { kind: 'paragraph', text: w.lead },
      {
        kind: 'table',
        columns: [{ label: w.part }, { label: w.what }],
        rows: [...empty, ...absent].map(([part, what]) => [stated(part), stated(what)])
      }
    ]
  }
}
