import type { HandedOver } from '../../model/closeout.ts'
import type { Words } from '../../words/words.ts'
import type { Block, Section, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { computed, orNotSupplied, stated } from '../values.ts'

const SHEET_LINES = 8

/** Parts and tools that were handed over, counted, and a receipt to fill in. */
export function sparesSection({ site, words }: PageContext): Section {
  const w = words.closeout.spares
  const { spares = [], tools = [] } = site.closeout ?? {}
  return {
    id: 'spares',
    title: words.closeout.sections.spares,
    newPage: true,
    notSupplied: spares.length + tools.length === 0,
    blocks: [
      { kind: 'paragraph', text: w.lead },
      things(w.parts, spares, words, true),
      things(w.tools, tools, words, false),
      { kind: 'paragraph', text: words.handover.spares.share, small: true },
      {
        kind: 'table',
        caption: w.receipt,
        columns: w.receiptColumns.map(label => ({ label })),
        rows: [],
        blankRows: SHEET_LINES
      }
    ]
  }
}

function things(caption: string, list: readonly HandedOver[], words: Words, withShare: boolean): Block {
  const w = words.closeout.spares
  if (list.length === 0) return { kind: 'not-supplied', text: `${caption}: ${words.binder.notSupplied}` }
  const shares = withShare ? [w.installed, w.share] : []
  return {
    kind: 'table',
    caption,
    columns: [w.item, w.count, ...shares, w.source, w.receivedBy, w.on].map(label => ({ label })),
    rows: list.map(one => [
      stated(one.item),
      orNotSupplied(one.count === undefined ? undefined : String(one.count), words),
      ...(withShare ? [stated(one.installed === undefined ? '–' : String(one.installed)), share(one)] : []),
      orNotSupplied(one.source, words),
      orNotSupplied(one.receivedBy, words),
      orNotSupplied(one.on, words, true)
    ])
  }
}

/** Handed over ÷ installed. */
function share({ count, installed }: HandedOver): Value {
  return count === undefined || installed === undefined
    ? stated('–')
    : computed(`${Math.round((100 * count) / installed)} %`)
}
