import type { Block, Section, TableBlock, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import type { PressureWayFigure } from '../figures/pressure-way.ts'
import { computed, measured, notComputed, notSupplied, orNotSupplied, stated, statedQuantity } from '../values.ts'
import { isAbsent, isPresent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { sum } from '../../base/collections.ts'
import { atMost } from '../../domain/within.ts'
import type { Station } from '../../model/site.ts'
import type { PressurePart, PressurePlan } from '../../plan/pressure-plan.ts'
import { fromSi } from '../../units/quantity.ts'
import { show, showNumber, showStated } from '../../units/show.ts'

interface Zone {
  readonly station: Station
  readonly pressure: Maybe<PressurePlan>
}

interface Known {
  readonly station: Station
  readonly pressure: PressurePlan
}

/** What is left of the pressure at each zone, and what each length of pipe takes of it. */
export function pressureSection(context: PageContext): Section {
  const { site, plan, words } = context
  const w = words.pressure
  const zones = site.stations.flatMap<Zone>(station => {
    const pressure = plan.pressures.get(station.id)
    return pressure === undefined ? [] : [{ station, pressure }]
  })
  const known = zones.flatMap(({ station, pressure }) => (isAbsent(pressure) ? [] : [{ station, pressure }]))
  const drops = site.stations.filter(one => one.devices?.drop)
  const slopes = drops.length > 0 ? [dropsTable(drops, context)] : []
  const blocks: Block[] =
    zones.length === 0
      ? [{ kind: 'not-supplied', text: `${w.none}: ${words.binder.notSupplied}` }]
      : [
          { kind: 'paragraph', text: w.lead },
          ...supplyFacts(known, context),
          ...slopes,
          zonesTable(zones, context),
          ...figures(known, context),
          pipesTable(known, context)
        ]
  return {
    id: 'pressure',
    title: w.title,
    newPage: zones.length > 0,
    notSupplied: zones.length === 0,
    blocks: zones.length === 0 ? [...blocks, ...slopes] : blocks
  }
}

/** What is stated of each supply that feeds a zone with pipe. */
function supplyFacts(known: readonly Known[], { site, words }: PageContext): Block[] {
  const w = words.pressure
  const feeding = new Set(known.map(one => one.pressure.supply))
  return site.supplies.flatMap<Block>(supply => {
    if (!feeding.has(supply.id)) return []
    const { id, staticPressure, pressureAtFlow, losses = [], meterSafeFlow } = supply
    const atFlow = pressureAtFlow && w.atFlow(showStated(pressureAtFlow.pressure), showStated(pressureAtFlow.flow))
    return [
      {
        kind: 'facts',
        caption: w.supplyFacts(id),
        rows: [
          { label: w.staticPressure, value: statedQuantity(staticPressure, words) },
          ...(atFlow === undefined ? [] : [{ label: w.measuredPressure, value: measured(atFlow) }]),
          ...losses.map(one => ({ label: w.lossOf(one.of), value: stated(showStated(one.loss)) })),
          ...(meterSafeFlow ? [{ label: w.meterSafeFlow, value: stated(showStated(meterSafeFlow)) }] : [])
        ]
      }
    ]
  })
}

const names = ({ id, zone, waters }: Station): Value[] => [
  stated(id, true),
  stated([zone === id ? '' : zone, waters].filter(Boolean).join(' · ') || '–')
]

function zonesTable(zones: readonly Zone[], context: PageContext): TableBlock {
  const w = context.words.pressure
  const right = 'right' as const
  const starts = new Set(zones.flatMap(({ pressure }) => (isAbsent(pressure) ? [] : [pressure.start.by])))
  return {
    kind: 'table',
    wide: true,
    caption: w.caption,
    columns: [
      { label: w.station },
      { label: w.waters },
      ...[w.flow, w.beside, w.start, w.fittings, w.friction, w.height, w.left, w.needed, w.margin].map(label => ({
        label,
        align: right
      }))
    ],
    rows: zones.map(({ station, pressure }) => [...names(station), ...zoneValues(pressure, context)]),
    notes: [...starts].map(by => w.byStart[by])
  }
}

function zoneValues(pressure: Maybe<PressurePlan>, { site, words }: PageContext): readonly Value[] {
  if (isAbsent(pressure)) return [notComputed(words, pressure.reason), ...Array.from({ length: 8 }, () => stated('–'))]
  const { flowM3s, mainFlowM3s, start, parts, leftPa, neededPa, marginPa } = pressure
  const bar = (pa: number): string => show(pa, 'pressure-loss', site.units)
  const fittings = sum(parts.flatMap(part => (part.pipe ? [] : [part.lossPa])))
  const friction = sum(parts.flatMap(part => (part.pipe ? [part.lossPa] : [])))
  const height = sum(parts.map(part => part.liftPa))
  return [
    computed(show(flowM3s, 'flow', site.units), 'supply-peak'),
    computed(show(mainFlowM3s, 'flow', site.units), 'supply-peak'),
    start.by === 'both' ? computed(bar(start.pressurePa), 'pressure-left') : stated(bar(start.pressurePa)),
    stated(bar(fittings)),
    computed(bar(friction), 'pipe-loss'),
    computed(bar(height), 'pressure-left'),
    computed(bar(leftPa), 'pressure-left'),
    isAbsent(neededPa) ? notSupplied(words) : stated(bar(neededPa)),
    marginValue(marginPa, bar, words.pressure)
  ]
}

function marginValue(margin: Maybe<number>, bar: (pa: number) => string, w: PageContext['words']['pressure']): Value {
  if (isAbsent(margin)) return stated('–')
  const state = margin < 0 && !atMost(0, margin) ? ('bad' as const) : ('good' as const)
  return { ...computed(`${bar(margin)} ${state === 'bad' ? w.short : w.enough}`, 'pressure-left'), state }
}

/** The zone with the least to spare, drawn once for each supply. */
function figures(known: readonly Known[], context: PageContext): Block[] {
  const worst = new Map<string, Known>()
  for (const one of known) {
    const before = worst.get(one.pressure.supply)
    if (isPresent(one.pressure.marginPa) && (!before || marginOf(one) < marginOf(before)))
      worst.set(one.pressure.supply, one)
  }
  return [...worst.values()].map(one => figureOf(one, context))
}

const marginOf = ({ pressure }: Known): number => (isAbsent(pressure.marginPa) ? Infinity : pressure.marginPa)

function figureOf({ station, pressure }: Known, { site, words }: PageContext): Block {
  const w = words.pressure
  const { start, parts, neededPa } = pressure
  const unit = site.units === 'us' ? 'psi' : 'bar'
  const valueOf = (pa: number): number => fromSi(pa, unit, 'pressure')
  const point = (label: string, pa: number) => ({
    label,
    value: valueOf(pa),
    text: showNumber(pa, 'pressure-loss', site.units)
  })
  const margin = marginOf({ station, pressure })
  const shown = show(Math.abs(margin), 'pressure-loss', site.units)
  const figure: PressureWayFigure = {
    figure: 'pressure-way',
    title: w.figureTitle(station.id),
    points: [
      point(`${w.point.start}, ${unit}`, start.pressurePa),
      ...parts.map(part => point(pointLabel(part, w), part.leftPa))
    ],
    ...(isAbsent(neededPa)
      ? {}
      : { needed: { value: valueOf(neededPa), label: w.neededLine(show(neededPa, 'pressure-loss', site.units)) } })
  }
  return {
    kind: 'figure',
    figure,
    caption: w.figureCaption(station.id, margin < 0 ? w.verdictShort(shown) : w.verdictOver(shown))
  }
}

function pointLabel({ of, part, pipe }: PressurePart, w: PageContext['words']['pressure']): string {
  if (of === 'supply-pipe') return w.point.main((pipe?.index ?? 0) + 1)
  if (of === 'station-pipe') return w.point.lateral((pipe?.index ?? 0) + 1)
  return of === 'stated' ? part.name : w.point[of]
}

function pipesTable(known: readonly Known[], context: PageContext): TableBlock {
  const w = context.words.pressure
  const right = 'right' as const
  const rows = new Map<string, { readonly name: string; readonly part: PressurePart }>()
  for (const { station, pressure } of known)
    for (const part of pressure.parts) {
      if (!part.pipe) continue
      const number = part.pipe.index + 1
      const name = part.of === 'supply-pipe' ? w.main(pressure.supply, number) : w.lateral(station.id, number)
      const before = rows.get(name)
      if (!before || (part.velocityMPerS ?? 0) > (before.part.velocityMPerS ?? 0)) rows.set(name, { name, part })
    }
  const mains = known.map(one => one.pressure.supply)
  const inOrder = [...rows.values()].sort((a, b) => Number(isMain(b.part)) - Number(isMain(a.part)))
  return {
    kind: 'table',
    wide: mains.length > 0,
    caption: w.pipes,
    columns: [
      { label: w.part },
      { label: w.size },
      { label: w.inside, align: right },
      { label: w.material },
      ...[w.length, w.rise, w.most, w.velocity, w.limit, w.loss].map(label => ({ label, align: right }))
    ],
    rows: inOrder.map(({ name, part }) => pipeRow(name, part, context)),
    notes: [w.velocityNote]
  }
}

const isMain = ({ of }: PressurePart): boolean => of === 'supply-pipe'

function pipeRow(
  name: string,
  { part, pipe, velocityMPerS = 0, lossPa }: PressurePart,
  { site, words }: PageContext
): Value[] {
  if (!pipe || part.kind !== 'pipe') return []
  const w = words.pressure
  const { segment, mostMPerS } = pipe
  const fast = !atMost(velocityMPerS, mostMPerS)
  const velocity = show(velocityMPerS, 'velocity', site.units)
  return [
    stated(name),
    orNotSupplied(segment.size, words),
    stated(showStated(segment.inside)),
    stated(w.materials[segment.material]),
    stated(showStated(segment.length)),
    segment.rise ? stated(showStated(segment.rise)) : stated('–'),
    computed(show(part.flowM3s, 'flow', site.units), 'supply-peak'),
    fast ? { ...computed(`${velocity} ${w.fast}`, 'pipe-loss'), state: 'bad' } : computed(velocity, 'pipe-loss'),
    stated(show(mostMPerS, 'velocity', site.units)),
    computed(show(lossPa, 'pressure-loss', site.units), 'pipe-loss')
  ]
}

function dropsTable(stations: readonly Station[], { words }: PageContext): TableBlock {
  const w = words.pressure
  return {
    kind: 'table',
    caption: w.lowHeads,
    columns: [{ label: w.station }, { label: w.waters }, { label: w.drop, align: 'right' }, { label: w.checkValves }],
    rows: stations.map(station => {
      const checks = station.devices?.checkValves
      return [
        ...names(station),
        statedQuantity(station.devices?.drop, words),
        checks === undefined ? notSupplied(words) : stated(checks ? w.yes : w.no)
      ]
    })
  }
}
