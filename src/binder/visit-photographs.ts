import type { Block } from './blocks.ts'
import type { PageContext } from './context.ts'
import { stated } from './values.ts'
import { sortedBy } from '../base/collections.ts'

/** So many pictures are shown, the newest first; all of them are in the list. */
const SHOWN_MOST = 12

/** Photographs of the visits: a list of all with what each shows, and the newest as pictures. Nothing where no visit has one. */
export function visitPhotographs({ site, words }: PageContext): Block[] {
  const w = words.handover.visits
  const photos = sortedBy(site.visits, visit => visit.on)
    .reverse()
    .flatMap(({ on, photos = [] }) => photos.map(photo => ({ on, ...photo })))
  if (photos.length === 0) return []
  const shown = photos.slice(0, SHOWN_MOST)
  const { date, shows, file } = w.photographColumns
  return [
    {
      kind: 'table',
      caption: w.photographs,
      columns: [date, shows, file].map(label => ({ label })),
      rows: photos.map(one => [stated(one.on, true), stated(one.caption ?? '–'), stated(one.file, true)]),
      ...(photos.length > shown.length ? { notes: [w.photographsShown(shown.length, photos.length)] } : {})
    },
    ...shown.map<Block>(one => ({
      kind: 'picture',
      file: `photos/${one.file}`,
      alt: one.caption ?? w.photographOf(one.on),
      caption: [one.on, one.caption].filter(Boolean).join(', ')
    }))
  ]
}
