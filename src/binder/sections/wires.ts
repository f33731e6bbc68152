import type { Block, Section, State, TableBlock, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { trendTables } from '../trend-tables.ts'
import { masterValvesOf } from '../master-valves.ts'
import { retrofitTable } from '../unit-facts.ts'
import { wiringBlocks } from '../wiring.ts'
import { rangeOf } from '../range.ts'
import { computed, figure, notComputed, orNotSupplied, plate, stated } from '../values.ts'
import { isPresent } from '../../base/absent.ts'
import { groupBy, sum } from '../../base/collections.ts'
import { show, showStated } from '../../units/show.ts'
import { showWireSize } from '../../units/wire-size.ts'
import type { Station } from '../../model/site.ts'
import type { WireLimit, WirePlan } from '../../plan/plan.ts'
import type { Words } from '../../words/words.ts'

export function wiresSection(context: PageContext): Section {
  const { site, words } = context
  const w = words.binder.wires
  const withWire = [...masterValvesOf(site.controllers, words), ...site.stations].filter(run => run.wire.length > 0)
  const blocks: Block[] =
    withWire.length === 0
      ? [{ kind: 'not-supplied', text: words.binder.notSupplied }]
      : [
          { kind: 'paragraph', text: w.lead },
          { kind: 'paragraph', text: words.units.trend.base, small: true },
          schedule(withWire, context),
          ...withWire.flatMap(station => runFigure(station, context)),
          ...wiringBlocks(context),
          ...spliceTable(withWire, words),
          ...retrofitTable(context),
          ...trendTables(context)
        ]
  return { id: 'wires', title: words.binder.sections.wires, newPage: true, notSupplied: withWire.length === 0, blocks }
}

/** What a row of the schedule needs: a station, or a master valve with wires of its own. */
type WireRun = Pick<Station, 'id' | 'controller' | 'zone' | 'valves' | 'wire' | 'splices'>

function schedule(stations: readonly WireRun[], context: PageContext): TableBlock {
  const w = context.words.binder.wires
  const right = 'right' as const
  return {
    kind: 'table',
    wide: true,
    columns: [
      { label: w.station },
      { label: w.zone },
      { label: w.wire },
      { label: w.colour },
      { label: w.length, align: right },
      { label: w.loop, align: right },
      { label: w.coil, align: right },
      { label: w.expected, align: right },
      { label: w.volts, align: right },
      { label: w.limit },
      { label: w.longest, align: right },
      { label: w.verdict }
    ],
    rows: stations.map(station => row(station, context))
  }
}

function row(station: WireRun, { site, plan, words }: PageContext): Value[] {
  const wire = plan.wires.get(station.id)
  const head = [stated(station.id, true), stated(station.zone), stated(wireText(station)), colours(station, words)]
  if (!wire) return [...head, ...Array.from({ length: 8 }, () => notComputed(words, words.binder.notSupplied))]
  return [
    ...head,
    computed(show(wire.lengthM, 'run', site.units), 'wire-loop'),
    figure(wire.loopOhm, 'resistance', site.units, words, 'wire-loop'),
    isPresent(wire.coilOhm)
      ? station.valves.length > 1
        ? computed(show(wire.coilOhm, 'resistance', site.units), 'coil-voltage')
        : plate(show(wire.coilOhm, 'resistance', site.units))
      : notComputed(words, wire.coilOhm.reason),
    figure(wire.expectedOhm, 'resistance', site.units, words, 'wire-loop'),
    figure(wire.coilVolt, 'voltage', site.units, words, 'coil-voltage'),
    wire.governing ? plate(limitText(wire.governing, words)) : notComputed(words, words.binder.notSupplied),
    figure(wire.longestM, 'run', site.units, words, 'wire-limit'),
    verdict(wire, words)
  ]
}

export function wireText(station: Pick<Station, 'wire'>): string {
  const parts = station.wire.map(
    segment => showWireSize(segment.size) + (segment.common ? ` / ${showWireSize(segment.common)}` : '')
  )
  return [...new Set(parts)].join(' + ')
}

function colours(station: WireRun, words: Words): Value {
  const all = [
    ...new Set(station.wire.map(segment => segment.colour).filter((one): one is string => one !== undefined))
  ]
  return orNotSupplied(all.join('; '), words)
}

function limitText(limit: WireLimit, words: Words): string {
  const w = words.binder.wires
  const amount = showStated(limit.stated)
  if (limit.form === 'loop') return w.limitLoop(amount)
  if (limit.form === 'voltage') return w.limitVolts(amount)
  return w.limitLength(amount, limit.size ? showWireSize(limit.size) : '')
}

export function wireState(wire: WirePlan): State {
  if (wire.limits.length === 0) return 'unknown'
  return wire.limits.every(limit => limit.passes) ? 'good' : 'bad'
}

function verdict(wire: WirePlan, words: Words): Value {
  const w = words.binder.wires
  const state = wireState(wire)
  const open = isPresent(wire.loopOhm) ? w.unknown : w.open
  return { ...computed({ good: w.passes, bad: w.fails, soon: open, unknown: open }[state], 'wire-limit'), state }
}

/** Only for a run that fails; the wiring of its controller shows the others. */
function runFigure(station: WireRun, { site, plan, words }: PageContext): Block[] {
  const wire = plan.wires.get(station.id)
  if (!wire || wireState(wire) !== 'bad') return []
  const w = words.binder.wires
  const total = sum(station.wire.map(segment => segment.length.si))
  const word = verdict(wire, words).text
  return [
    {
      kind: 'figure',
      caption: w.figureCaption(station.id, word),
      figure: {
        figure: 'wire-run',
        title: w.figureTitle(station.id),
        from: station.controller,
        to: station.zone,
        segments: station.wire.map(segment => ({
          label: `${showWireSize(segment.size)}, ${showStated(segment.length)}`,
          share: total > 0 ? segment.length.si / total : 1
        })),
        splices: station.splices.length,
        verdict: isPresent(wire.loopOhm) ? `${word} · ${show(wire.loopOhm, 'resistance', site.units)}` : word,
        state: wireState(wire)
      }
    }
  ]
}

function spliceTable(stations: readonly WireRun[], words: Words): Block[] {
  const w = words.binder.wires
  const all = stations.flatMap(({ id, splices }) =>
    splices.map(({ box, where, kind }) => ({ id, place: [box, where].filter(Boolean).join(', '), kind: kind ?? '' }))
  )
  const items = [...groupBy(all, one => `${one.place}|${one.kind}`).values()].flatMap(group => {
    const [first] = group
    return first ? [w.spliceLine(rangeOf(group.map(one => one.id)), first.place, first.kind)] : []
  })
  return items.length === 0 ? [] : [{ kind: 'list', lead: w.splices, ordered: false, items }]
}
