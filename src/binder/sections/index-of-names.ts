import type { Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { PLACES_MOST, indexBlock } from '../index-entries.ts'

/** The index of boxes, zones and parts, with the pages where they are told of. */
export function indexSection({ site, words }: PageContext, sections: readonly Section[]): Section {
  return {
    id: 'index',
    title: words.checklists.index,
    newPage: false,
    blocks: [
      { kind: 'paragraph', text: words.checklists.indexPlaces(PLACES_MOST), small: true },
      indexBlock(site, sections, words)
    ]
  }
}
