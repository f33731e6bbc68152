import { assemblyIn } from '../assembly-kind.ts'
import { masterValvesOf } from '../master-valves.ts'
import { groupBy } from '../../base/collections.ts'
import type { Installation } from '../../model/closeout.ts'
import type { Block, Section, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { rangeOf } from '../range.ts'
import { computed, notSupplied, orNotSupplied, stated } from '../values.ts'
import { showStated } from '../../units/show.ts'

interface Row {
  readonly label: string
  readonly value: Value
}

/** What was really built in and where, the wires in the ground, the tags, and all parts counted. */
export function asInstalledSection(context: PageContext): Section {
  const { site, words } = context
  const w = words.handover.installed
  return {
    id: 'as-installed',
    title: words.handover.sections.installed,
    newPage: true,
    blocks: [
      { kind: 'paragraph', text: w.lead },
      { kind: 'facts', caption: w.things, rows: things(context) },
      { kind: 'facts', caption: w.wiring, rows: told(context, ['conduit', 'spareWires', 'wireSlack', 'samples']) },
      { kind: 'facts', caption: w.tags, rows: told(context, ['shutOffTag', 'boxTags']) },
      ...(site.controllers.length + site.stations.length === 0 ? [] : [inventory(context)])
    ]
  }
}

type Told = Exclude<keyof Installation, 'at' | 'designPressure' | 'posted'>

function told({ site, words }: PageContext, names: readonly Told[]): Row[] {
  return names.map(name => ({
    label: words.handover.installed[name],
    value: orNotSupplied(site.closeout?.installation?.[name], words)
  }))
}

function things(context: PageContext): Row[] {
  const { site, words } = context
  const w = words.handover.installed
  const joined = (texts: readonly (string | undefined)[]) => orNotSupplied(texts.filter(Boolean).join('; '), words)
  const named = (parts: readonly (string | undefined)[]) => parts.filter(Boolean).join(', ')
  const masters = masterValvesOf(site.controllers, words)
  const { designPressure } = site.closeout?.installation ?? {}
  const splices = site.stations.flatMap(({ zone, splices }) => splices.map(one => named([zone, one.box, one.where])))
  const paths = site.stations.flatMap(({ zone, wire }) => [
    ...new Set(wire.flatMap(one => (one.under ? [named([zone, one.under])] : [])))
  ])
  const pathless = site.stations.flatMap(({ zone, wire }) => (wire.some(one => !one.under) ? [zone] : []))
  return [
    { label: w.source, value: joined(site.supplies.map(one => named([one.id, one.kind, one.meter]))) },
    { label: w.shutOff, value: joined(site.supplies.map(one => one.shutOff)) },
    {
      label: w.backflow,
      value: joined(
        site.supplies.map(
          ({ backflow }) =>
            backflow && named([assemblyIn(backflow.kind, words), backflow.size, backflow.where ?? backflow.reason])
        )
      )
    },
    {
      label: w.valves,
      value: joined(
        [...masters, ...site.stations].flatMap(({ id, zone, valves }) =>
          valves.map(one => w.valveList(masters.some(of => of.id === id) ? id : zone, one.size ?? '', one.box ?? ''))
        )
      )
    },
    {
      label: w.splices,
      value:
        splices.length > 0
          ? joined(splices)
          : site.stations.some(one => one.wire.length > 0)
            ? stated(w.none)
            : notSupplied(words)
    },
    {
      label: w.paths,
      value:
        paths.length > 0 ? joined([...paths, pathless.length > 0 ? w.pathless(rangeOf(pathless)) : '']) : joined([])
    },
    { label: w.controllers, value: joined(site.controllers.map(one => named([one.id, one.box, one.where]))) },
    {
      label: w.sensors,
      value:
        site.sensors.length === 0 ? stated(w.none) : joined(site.sensors.map(one => named([one.id, one.kind, one.box])))
    },
    {
      label: w.laterals,
      value: joined([
        ...new Set(site.stations.flatMap(one => (one.pipe ?? []).map(pipe => pipe.size ?? showStated(pipe.inside))))
      ])
    },
    { label: w.designPressure, value: designPressure ? stated(showStated(designPressure)) : notSupplied(words) },
    { label: w.mains, value: joined([site.closeout?.installation?.mains ?? mainsOf(site)]) },
    ...told(context, ['filters', 'pumps', 'quickCouplers', 'grounding'])
  ]
}

/** The pipe from each supply to its valves, as the supply itself has it. */
function mainsOf({ supplies }: PageContext['site']): string {
  const runs = supplies.flatMap(({ id, pipe = [] }) =>
    pipe.map(one => [id, one.size ?? showStated(one.inside), showStated(one.length)].join(', '))
  )
  return [...new Set(runs)].join('; ')
}

interface Part {
  readonly part: string
  readonly model: string
  readonly size: string
  readonly count: number
  readonly where: string
}

function parts({ site, words }: PageContext): Part[] {
  const w = words.handover.installed
  const { notSupplied: gap } = words.binder
  return [
    ...site.controllers.map(one => ({
      part: w.controller,
      model: one.sheet?.title ?? gap,
      size: '',
      count: 1,
      where: one.id
    })),
    ...masterValvesOf(site.controllers, words).map(({ id, valves: [valve] }) => ({
      part: w.masterValve,
      model: valve?.model ?? gap,
      size: valve?.size ?? '',
      count: 1,
      where: id
    })),
    ...site.stations.flatMap(({ id, valves }) =>
      valves.map(one => ({ part: w.valve, model: one.model ?? gap, size: one.size ?? '', count: 1, where: id }))
    ),
    ...site.stations.flatMap(({ id, devices }) =>
      devices
        ? [
            {
              part: devices.kind,
              model: devices.model ?? gap,
              size: devices.nozzle ?? '',
              count: devices.count ?? 0,
              where: id
            }
          ]
        : []
    )
  ]
}

function inventory(context: PageContext): Block {
  const { words } = context
  const w = words.handover.installed
  const alike = [...groupBy(parts(context), one => `${one.part}|${one.model}|${one.size}`).values()]
  return {
    kind: 'table',
    caption: w.inventory,
    columns: w.columns.map(label => ({ label })),
    rows: alike.flatMap(group => {
      const [first] = group
      if (!first) return []
      const count = group.reduce((all, one) => all + one.count, 0)
      return [
        [
          stated(first.part),
          first.model === words.binder.notSupplied ? notSupplied(words) : stated(first.model),
          stated(first.size || '–'),
          count === 0 ? notSupplied(words) : computed(String(count)),
          stated([...new Set(group.map(one => one.where))].join(', '))
        ]
      ]
    })
  }
}
