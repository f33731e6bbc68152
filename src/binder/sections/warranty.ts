import type { Warranty } from '../../model/site.ts'
import { addInterval } from '../../units/date.ts'
import type { Block, Section, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { computed, notSupplied, orNotSupplied, stated } from '../values.ts'

/** Each warranted item with all that is needed to call on it, and what keeps it in force. */
export function warrantySection(context: PageContext): Section {
  const { site, words } = context
  const w = words.handover.warranty
  return {
    id: 'warranty',
    title: words.binder.sections.warranty,
    newPage: false,
    notSupplied: site.warranties.length === 0,
    blocks: [
      ...(site.warranties.length === 0
        ? [{ kind: 'not-supplied', text: words.binder.notSupplied } as const]
        : site.warranties.map(one => itemFacts(one, context))),
      {
        kind: 'facts',
        rows: [{ label: w.repairs, value: orNotSupplied(site.closeout?.repairs, words) }]
      },
      { kind: 'paragraph', text: w.note, small: true }
    ]
  }
}

function itemFacts(one: Warranty, { words }: PageContext): Block {
  const w = words.handover.warranty
  const told = (label: string, text: string | undefined, mono = false) => ({
    label,
    value: orNotSupplied(text, words, mono)
  })
  return {
    kind: 'facts',
    caption: one.item,
    rows: [
      told(w.model, one.model),
      told(w.serial, one.serial, true),
      told(w.where, one.where),
      told(w.maker, one.maker),
      told(w.spareParts, one.spareParts),
      told(words.binder.warranty.start, one.start, true),
      told(words.binder.warranty.end, one.end, true),
      told(w.terms, one.terms),
      told(w.certificate, one.certificate),
      told(w.upkeep, one.upkeep),
      told(w.manual, one.manual),
      told(w.contact, one.contact),
      told(w.response, one.response),
      { label: w.inspections, value: inspections(one, { words }) },
      told(w.tagged, one.tagged)
    ]
  }
}

function inspections({ start, inspections: after = [] }: Warranty, { words }: Pick<PageContext, 'words'>): Value {
  if (after.length === 0) return notSupplied(words)
  const w = words.handover.warranty
  return start === undefined
    ? stated(after.map(one => one.text).join(', '))
    : computed(after.map(one => w.inspection(addInterval(start, one), one.text)).join('; '), 'due-date')
}
