import type { Block, Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { revisionOf } from '../context.ts'
import { orNotSupplied, stated } from '../values.ts'
import { groupBy, sortedBy } from '../../base/collections.ts'
import type { Visit } from '../../model/site.ts'
import { openJobs } from '../../plan/open-jobs.ts'
import { daysBetween } from '../../units/date.ts'
import type { Words } from '../../words/words.ts'

/** What visits changed since the revision was issued, and what is still open, the oldest first. */
export function changesSection(context: PageContext): Section {
  const { site, plan, words } = context
  const { issued } = site
  const w = words.changes
  const visits = sortedBy(
    site.visits.filter(one => one.on <= plan.on && (issued === undefined || one.on > issued)),
    one => one.on
  ).reverse()
  const changes = visits.flatMap(visit => changesOf(visit, words).map(([thing, change]) => [visit.on, thing, change]))
  const { on, thing, change } = w.columns
  return {
    id: 'changes',
    title: w.title,
    newPage: false,
    blocks: [
      {
        kind: 'facts',
        rows: [
          { label: w.revision, value: stated(revisionOf(context)) },
          { label: w.issued, value: orNotSupplied(issued, words, true) }
        ]
      },
      { kind: 'paragraph', text: issued === undefined ? w.leadAll : w.lead(issued) },
      changes.length === 0
        ? { kind: 'paragraph', text: w.none }
        : {
            kind: 'table',
            columns: [on, thing, change].map(label => ({ label })),
            rows: changes.map(([day = '', ...rest]) => [stated(day, true), ...rest.map(text => stated(text))])
          },
      openBlock(context)
    ]
  }
}

/** One row for each thing, with all that happened to it at the visit. */
function changesOf(visit: Visit, words: Words): [thing: string, change: string][] {
  const byThing = groupBy(eachChange(visit, words), ([thing]) => thing)
  return [...byThing].map(([thing, all]) => [thing, all.map(([, change]) => change).join('; ')])
}

/** Each with the thing it happened to. */
function eachChange(visit: Visit, words: Words): [thing: string, change: string][] {
  const w = words.changes
  const programs = (visit.programs ?? []).flatMap<[string, string]>(({ controller, clock, found, left }) => [
    ...(clock === undefined ? [] : [[controller, w.clock(clock)] as [string, string]]),
    ...(found === undefined && left === undefined
      ? []
      : [[controller, w.program(found ?? '', left ?? '')] as [string, string]])
  ])
  const fitted = visit.batteries.filter(one => one.fitted !== undefined)
  const at = visit.boxes?.join(', ') ?? w.site
  const here = (texts: readonly string[]) => texts.map<[string, string]>(text => [at, text])
  return [
    ...fitted.map<[string, string]>(one => [one.controller, w.battery(one.count, one.kind ?? w.cells)]),
    ...programs,
    ...(visit.tests ?? []).map<[string, string]>(one => [
      one.supply,
      one.passed ? w.passed(one.tester ?? '') : w.failed(one.tester ?? '')
    ]),
    ...here((visit.parts ?? []).map(one => w.part(one.count, one.item))),
    ...here(visit.done.map(w.done)),
    ...here((visit.repaired ?? []).map(w.repaired)),
    ...here(visit.drawingChange === true ? [w.drawing] : [])
  ]
}

function openBlock({ site, plan, words }: PageContext): Block {
  const w = words.changes
  const jobs = openJobs(site, plan.on)
  if (jobs.length === 0) return { kind: 'paragraph', text: w.noOpen }
  const { job, since, days, owner } = w.openColumns
  return {
    kind: 'table',
    caption: w.open,
    columns: [{ label: job }, { label: since }, { label: days, align: 'right' }, { label: owner }],
    rows: jobs.map(one => [
      stated(one.text),
      stated(one.since, true),
      { text: String(daysBetween(one.since, plan.on)), standing: 'computed' },
      orNotSupplied(one.owner, words)
    ])
  }
}
