import type { Block, Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { stated } from '../values.ts'
import { maintenanceLog } from './calendar.ts'
import { visitPhotographs } from '../visit-photographs.ts'
import { showClock } from '../../units/clock.ts'
import type { Visit } from '../../model/site.ts'
import { sortedBy } from '../../base/collections.ts'

export function visitsSection(context: PageContext): Section {
  const { site, words } = context
  const w = words.binder.visits
  const h = words.handover.visits
  const blocks: Block[] = [
    site.visits.length === 0 ? { kind: 'paragraph', text: w.none } : visitTable(newestFirst(site.visits), context)
  ]
  blocks.push(...visitPhotographs(context))
  blocks.push({ kind: 'table', caption: w.blank, columns: columnsOf(context), rows: [], blankRows: 6 })
  const sheets = [
    [h.service, h.serviceColumns],
    [h.programs, h.programColumns]
  ] as const
  for (const [caption, labels] of sheets)
    blocks.push({ kind: 'table', caption, columns: labels.map(label => ({ label })), rows: [], blankRows: 5 })
  blocks.push(maintenanceLog(context))
  return { id: 'visits', title: words.binder.sections.visits, newPage: true, blocks }
}

export function newestFirst(visits: readonly Visit[]): Visit[] {
  return sortedBy(visits, visit => visit.on).reverse()
}

export function visitTable(visits: readonly Visit[], context: PageContext): Block {
  const { site, words } = context
  const stay = ({ arrived, left }: Visit): string[] =>
    arrived === undefined || left === undefined
      ? []
      : [words.handover.visits.stay(showClock(arrived, site.units), showClock(left, site.units))]
  return {
    kind: 'table',
    columns: columnsOf(context),
    rows: visits.map(visit => [
      stated([visit.on, ...stay(visit)].join(', '), true),
      stated(visit.by ?? '–'),
      stated(visit.reason ?? '–'),
      ...[visit.found, visit.done, visit.open].map(list => stated(list.join('; ') || '–'))
    ])
  }
}

function columnsOf({ words }: PageContext): { readonly label: string }[] {
  const w = words.binder.visits
  return [w.date, w.by, w.reason, w.found, w.done, w.open].map(label => ({ label }))
}
