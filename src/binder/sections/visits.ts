import type { Block, Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { stated } from '../values.ts'
import { showClock } from '../../units/clock.ts'
import type { Visit } from '../../model/site.ts'
import { sortedBy } from '../../base/collections.ts'

export function visitsSection({ site, words }: PageContext): Section {
  const w = words.binder.visits
  const visits = sortedBy(site.visits, visit => visit.on).reverse()
  const h = words.handover.visits
  const stay = ({ arrived, left }: Visit) =>
    arrived === undefined || left === undefined
      ? []
      : [h.stay(showClock(arrived, site.units), showClock(left, site.units))]
  const columns = [w.date, w.by, w.reason, w.found, w.done, w.open].map(label => ({ label }))
  const blocks: Block[] = []
  if (visits.length === 0) blocks.push({ kind: 'paragraph', text: w.none })
  else {
    blocks.push({
      kind: 'table',
      columns,
      rows: visits.map(visit => [
        stated([visit.on, ...stay(visit)].join(', '), true),
        stated(visit.by ?? '–'),
        stated(visit.reason ?? '–'),
        ...[visit.found, visit.done, visit.open].map(list => stated(list.join('; ') || '–'))
      ])
    })
  }
  blocks.push({ kind: 'table', caption: w.blank, columns, rows: [], blankRows: 8 })
  const sheets = [
    [h.service, h.serviceColumns],
    [h.programs, h.programColumns]
  ] as const
  for (const [caption, labels] of sheets)
    blocks.push({ kind: 'table', caption, columns: labels.map(label => ({ label })), rows: [], blankRows: 6 })
  return { id: 'visits', title: words.binder.sections.visits, newPage: true, blocks }
}
