import type { Block, Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { notSupplied, orNotSupplied, stated } from '../values.ts'
import { holdsOf } from '../holds.ts'
import { boxesFound } from '../record-drawing.ts'
import { tagQr, tagUrl } from '../tag-url.ts'
import { keysFor } from '../unit-facts.ts'
import type { Box } from '../../model/site.ts'

export function boxesSection(context: PageContext): Section {
  const { site, words, publicAddress } = context
  const w = words.binder.boxes
  const withLids = site.boxes.some(box => lidText(box, context) !== '')
  const blocks: Block[] = [
    {
      kind: 'table',
      columns: [w.box, w.tag, w.where, w.ties, w.holds, w.load, ...(withLids ? [words.units.lid] : [])].map(label => ({
        label
      })),
      rows: site.boxes.map(box => [
        stated(box.id),
        orNotSupplied(box.tag, words, true),
        orNotSupplied(box.where, words),
        box.ties.length > 0 ? stated(box.ties.join('; ')) : notSupplied(words),
        stated([box.status ? w.away(box.status) : '', ...holdsOf(site, box, words)].filter(Boolean).join(', ') || '–'),
        orNotSupplied(box.loadRating, words),
        ...(withLids ? [orNotSupplied(lidText(box, context), words)] : [])
      ]),
      notes: [`${w.scan} ${publicAddress}`]
    }
  ]
  for (const box of site.boxes) {
    if (box.tag === undefined) continue
    const url = tagUrl(publicAddress, box.tag)
    blocks.push({ kind: 'tag-plate', tag: box.tag, box: box.id, site: site.title, url, qr: tagQr(url) })
  }
  // The first picture of a box that is drawn stands beside the drawing.
  const found = boxesFound(context)
  for (const box of site.boxes) {
    for (const photo of box.photos.slice(found.has(box.id) ? 1 : 0)) {
      blocks.push({
        kind: 'picture',
        file: `photos/${photo.file}`,
        alt: w.pictureOf(box.id),
        caption: photo.caption ?? w.pictureOf(box.id)
      })
    }
  }
  return { id: 'boxes', title: words.binder.sections.boxes, newPage: false, blocks }
}

/** How it is closed and where it sits, with the key that opens it. */
function lidText({ id, lid, lock, mounting }: Box, { site, words }: PageContext): string {
  const keys = keysFor(id, site)
  const locked = lock && words.units.lockAndKey(lock, keys)
  const tool = !lock && keys ? keys : ''
  return [lid, locked, tool, mounting].filter(Boolean).join('; ')
}
