import { isPresent } from '../../base/absent.ts'
import { groupBy } from '../../base/collections.ts'
import { show, showStated } from '../../units/show.ts'
import type { Block, Section, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { flowValue } from '../flow-value.ts'
import { rangeOf } from '../range.ts'
import { stated } from '../values.ts'

/** Lists to copy and tick: start and end of the season, each month, once a year, and a roof's own. */
export function checklistsSection(context: PageContext): Section {
  const w = context.words.checklists
  return {
    id: 'checklists',
    title: w.section,
    newPage: true,
    blocks: [
      { kind: 'paragraph', text: w.lead },
      ...part('start-up', w.startUp.title(context.site.season?.from), startUp(context)),
      runTable(context),
      ...part('monthly', w.monthly.title, [...first(context), ...values(w.monthly)]),
      ...part('season-end', endTitle(context), seasonEnd(context)),
      ...part('yearly', w.audit.title, [...first(context), ...values(w.audit)]),
      ...(context.site.place === 'roof' ? part('roof', w.roof.title, [...first(context), ...values(w.roof)]) : []),
      { kind: 'table', sheet: w.section, columns: w.by.map(label => ({ label })), rows: [], blankRows: 2 }
    ]
  }
}

const tick: Value = { ...stated(''), blank: 'tick' }
const toWrite = (expected: string): Value => ({ ...stated(expected), blank: 'text' })

const part = (id: string, text: string, items: readonly string[]): Block[] => [
  { kind: 'heading', id: `checklist-${id}`, text },
  { kind: 'checklist', sheet: text, items }
]

/** The steps of a list, in the order in which the catalogue has them; its title is not one. */
const values = ({ title: _, ...steps }: Readonly<Record<string, unknown>>): string[] =>
  Object.values(steps).filter(step => typeof step === 'string')

function first({ site, words }: PageContext): string[] {
  const w = words.checklists.first
  return [
    w.cautions,
    // Where nothing is said of a road, the step stands.
    ...(site.workRules.road === false ? [] : [w.traffic]),
    ...(site.place === 'roof' ? [w.edge] : []),
    w.look
  ]
}

function startUp(context: PageContext): string[] {
  const { site, plan, words } = context
  const w = words.checklists.startUp
  const assemblies = site.supplies.filter(({ backflow }) => backflow && !backflow.reason)
  const due = assemblies.flatMap(({ id }) => {
    const on = plan.backflows.get(id)?.dueOn
    return on !== undefined && isPresent(on) ? [on] : []
  })
  const sets = [...plan.batteries.values()].flatMap(({ controller, dueOn, count, kind }) =>
    isPresent(dueOn) ? [{ controller, fits: `${dueOn} (${count} × ${kind})` }] : []
  )
  const cells = [...groupBy(sets, one => one.fits)].map(
    ([fits, alike]) => `${rangeOf(alike.map(one => one.controller))} ${fits}`
  )
  return [
    ...first(context),
    w.drains,
    w.slow(site.supplies.map(({ shutOff }) => shutOff).find(text => text !== undefined)),
    w.still,
    ...(assemblies.length === 0 ? [] : [w.backflow(due.sort()[0])]),
    ...(cells.length === 0 ? [] : [w.batteries(cells.join('; '))]),
    w.clock,
    ...(site.sensors.length === 0 ? [] : [w.sensors]),
    w.filters,
    w.run
  ]
}

function endTitle({ site, words }: PageContext): string {
  const w = words.checklists.close
  return site.season ? w.by(site.season.to) : w.title
}

function seasonEnd(context: PageContext): string[] {
  const { winter, supplies } = context.site
  const w = context.words.checklists.close
  const limit = winter?.lowestRated ? showStated(winter.lowestRated) : undefined
  const emptied = { drain: [w.drain], air: [w.drain, w.air(limit)], none: [w.none] }
  return [
    ...first(context),
    w.off,
    ...emptied[winter?.method ?? 'drain'],
    w.valves,
    ...(supplies.some(({ backflow }) => backflow && !backflow.reason) ? [w.backflow] : []),
    w.controller,
    w.meter,
    w.lids
  ]
}

function runTable({ site, plan, words }: PageContext): Block {
  const w = words.checklists
  const columns = Object.values(w.runColumns).map(label => ({ label }))
  return {
    kind: 'table',
    caption: w.runs,
    columns,
    rows: site.stations.map(station => {
      const flow = flowValue(station, site.units, words)
      const expected = plan.wires.get(station.id)?.expectedOhm
      const ohms =
        expected !== undefined && isPresent(expected) ? w.expected(show(expected, 'resistance', site.units)) : ''
      return [
        stated(station.id),
        stated([station.zone, station.waters].filter(Boolean).join(', ')),
        tick,
        tick,
        toWrite(flow.standing === 'not-supplied' ? '' : w.expected(flow.text)),
        toWrite(''),
        toWrite(ohms),
        toWrite('')
      ]
    })
  }
}
