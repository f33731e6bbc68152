import type { Block, Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { notSupplied, orNotSupplied, stated } from '../values.ts'

/** When the work began, was accepted and handed over, and what was still to be done. */
export function closeoutDatesSection({ site, words }: PageContext): Section {
  const w = words.closeout.dates
  const { closeout } = site
  const period = closeout?.maintenancePeriod
  const span = period?.from && period.to ? w.maintenanceSpan(period.from, period.to) : undefined
  const rows = [
    { label: w.workStart, value: orNotSupplied(closeout?.workStart, words, true) },
    { label: w.substantialCompletion, value: orNotSupplied(closeout?.substantialCompletion, words, true) },
    { label: w.acceptance, value: orNotSupplied(closeout?.acceptance, words, true) },
    { label: w.maintenance, value: orNotSupplied(span, words, true) },
    { label: w.agreement, value: orNotSupplied(period?.agreement, words) }
  ]
  return {
    id: 'closeout-dates',
    title: words.closeout.sections.dates,
    newPage: false,
    notSupplied: closeout === undefined,
    blocks: [{ kind: 'facts', rows }, ...unfinishedBlocks({ site, words })]
  }
}

function unfinishedBlocks({ site: { closeout }, words }: Pick<PageContext, 'site' | 'words'>): Block[] {
  const w = words.closeout.dates
  if (!closeout) return []
  if (closeout.unfinished.length === 0) return [{ kind: 'paragraph', text: w.nothingUnfinished }]
  return [
    {
      kind: 'table',
      caption: w.unfinished,
      columns: [w.item, w.value, w.reason, w.owner, w.by].map(label => ({ label })),
      rows: closeout.unfinished.map(one => [
        stated(one.item),
        one.value === undefined ? notSupplied(words) : stated(one.value),
        orNotSupplied(one.reason, words),
        orNotSupplied(one.owner, words),
        orNotSupplied(one.by, words, true)
      ])
    }
  ]
}
