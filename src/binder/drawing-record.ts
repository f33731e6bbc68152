import { showStated } from '../units/show.ts'
import type { Block, Value } from './blocks.ts'
import type { PageContext } from './context.ts'
import { notSupplied, orNotSupplied, stated } from './values.ts'

/** How the record drawing was made and handed over, and what has changed since. */
export function drawingRecord({ site, words }: PageContext): Block[] {
  const w = words.handover.drawings
  const sheets = site.closeout?.recordDrawings ?? []
  const [tied] = sheets.flatMap(one => (one.tiedEvery ? [one.tiedEvery] : []))
  const told = (label: string, texts: readonly (string | undefined)[]) => ({
    label,
    value: orNotSupplied([...new Set(texts.filter(Boolean))].join('; '), words)
  })
  const changes = site.visits
    .filter(visit => visit.drawingChange === true)
    .map(visit => [visit.on, ...visit.done].join(': '))
  return [
    { kind: 'paragraph', text: w.label, small: true },
    {
      kind: 'facts',
      rows: [
        told(
          w.delivered,
          sheets.map(one => one.delivered)
        ),
        told(
          w.base,
          sheets.map(one => one.base)
        ),
        { label: w.tiedEvery, value: tied ? stated(showStated(tied)) : notSupplied(words) },
        told(
          w.markedUp,
          sheets.map(one => one.markedUp)
        ),
        { label: w.later, value: stated(changes.join('; ') || w.laterNone) }
      ]
    }
  ]
}

/** Where the schedule is posted, and what the sticker says. */
export function chartRows({ site, words }: PageContext): { readonly label: string; readonly value: Value }[] {
  const w = words.handover.drawings
  const charts = site.closeout?.charts
  return [
    { label: w.schedulePosted, value: orNotSupplied(charts?.schedulePosted, words) },
    { label: w.sticker, value: orNotSupplied(charts?.sticker, words) }
  ]
}
