import type { Block, TableBlock, Value } from './blocks.ts'
import type { PageContext } from './context.ts'
import type { WiringFigure, WiringRow } from './figures/wiring.ts'
import { rangeOf } from './range.ts'
import { computed, notComputed, stated } from './values.ts'
import { isAbsent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { groupBy } from '../base/collections.ts'
import type { Controller, Sensor, Station, Valve, WireSegment } from '../model/site.ts'
import type { WirePlan } from '../plan/plan.ts'
import { masterValveId } from '../plan/wires.ts'
import { show, showNumber, showStated } from '../units/show.ts'
import { showWireSize } from '../units/wire-size.ts'

/** A row of the drawing with what only the table says of it. */
interface Wired {
  readonly row: WiringRow
  readonly colours: string
  readonly runs: string
  readonly reads?: Value
}

/** The wiring of every controller, drawn and as a table; controllers of one station that are wired alike share a drawing. */
export function wiringBlocks(context: PageContext): Block[] {
  const { site, words } = context
  const drawn = site.controllers.map(controller => ({ controller, wired: wiredTo(controller, context) }))
  const some = drawn.filter(({ wired }) => wired.length > 0)
  if (some.length === 0) return []
  const single = some.filter(({ wired }) => wired.length === 1)
  const alike = [...groupBy(single, ({ wired }) => alikeKey(wired[0])).values()].filter(group => group.length > 1)
  const grouped = new Set(alike.flat().map(({ controller }) => controller.id))
  const own = some.filter(({ controller }) => !grouped.has(controller.id))
  return [
    { kind: 'heading', id: 'wiring', text: words.wiring.heading },
    ...own.flatMap(({ controller, wired }) => controllerBlocks(controller, wired, context)),
    ...alike.flatMap(group => alikeBlock(group, context))
  ]
}

const alikeKey = (wired: Wired | undefined): string =>
  wired ? JSON.stringify([wired.colours, wired.row.end, wired.row.splices.length]) : ''

function controllerBlocks(controller: Controller, wired: readonly Wired[], context: PageContext): Block[] {
  const w = context.words.wiring
  const figure = figureOf(controller, wired, w.title(controller.id), context)
  return [{ kind: 'figure', figure, caption: w.caption(controller.id) }, table(controller, wired, context)]
}

function alikeBlock(
  group: readonly { readonly controller: Controller; readonly wired: readonly Wired[] }[],
  context: PageContext
): Block[] {
  const w = context.words.wiring
  const [first] = group
  if (!first?.wired[0]) return []
  const names = rangeOf(group.map(({ controller }) => controller.id))
  const [{ row, colours }] = first.wired as [Wired]
  const bare = { ...first.wired[0], row: { ...row, wires: colours, name: '', place: '', note: '' } }
  const figure = figureOf({ ...first.controller, id: names }, [bare], w.titleAlike(names), context)
  return [{ kind: 'figure', figure: { ...figure, controller: '' }, caption: w.captionAlike(names) }]
}

function figureOf(
  controller: Controller,
  wired: readonly Wired[],
  title: string,
  { site, words }: PageContext
): WiringFigure {
  const w = words.wiring
  const rows = wired.map(({ row }) => row)
  const inCommon = sensorsOf(controller, site.sensors).filter(one => one.wired === 'in the common')
  const colour = commonColour(stationsOf(controller, site.stations))
  const label = w.commonLabel(colour ?? '')
  const alt = w.alt(
    controller.id,
    rows.map(row =>
      w.altRow(row.terminal, [row.name, row.place].filter(Boolean).join(', '), row.wires, row.splices.length)
    ),
    rows.some(row => row.shared)
      ? w.altCommon(
          label,
          inCommon.map(one => one.id)
        )
      : ''
  )
  const common = {
    terminal: w.common,
    label,
    sensors: inCommon.map(one => ({ name: one.id, contact: one.normally ?? ('closed' as const) }))
  }
  return {
    figure: 'wiring',
    title,
    alt,
    controller: controller.id,
    rows,
    ...(rows.some(row => row.shared) ? { common } : {})
  }
}

function wiredTo(controller: Controller, context: PageContext): Wired[] {
  const { site } = context
  const stations = stationsOf(controller, site.stations)
  const shared = sharesCommon(controller, context)
  return [
    ...stations.map(station => stationRow(station, shared, context)),
    ...masterRow(controller, shared, context),
    ...pumpRow(controller, context),
    ...sensorsOf(controller, site.sensors)
      .filter(one => one.wired === 'own terminals')
      .map(one => sensorRow(one, context))
  ]
}

const stationsOf = ({ id }: Controller, stations: readonly Station[]): readonly Station[] =>
  stations.filter(one => one.controller === id && one.wire.length > 0)

const sensorsOf = ({ id }: Controller, sensors: readonly Sensor[]): readonly Sensor[] =>
  sensors.filter(one => one.controller === id)

/** One wire back for all: a sensor lies in it, a size of its own is stated for it, or all pairs name the same color last. */
function sharesCommon(controller: Controller, { site }: PageContext): boolean {
  const stations = stationsOf(controller, site.stations)
  if (stations.length === 0) return false
  if (sensorsOf(controller, site.sensors).some(one => one.wired === 'in the common')) return true
  if (stations.some(one => one.wire.some(segment => segment.common !== undefined))) return true
  return stations.length > 1 && commonColour(stations) !== undefined
}

function commonColour(stations: readonly Station[]): string | undefined {
  const last = stations.map(one => coloursOf(one.wire).at(-1))
  return last.length > 0 && last.every(one => one !== undefined && one === last[0]) ? last[0] : undefined
}

/** Words between slashes, of the first length that names colors: out, and last the way back. */
function coloursOf(wire: readonly WireSegment[]): readonly string[] {
  const text = wire.find(segment => segment.colour !== undefined)?.colour ?? ''
  return text
    .split('/')
    .map(one => one.trim())
    .filter(Boolean)
}

function stationRow(station: Station, shared: boolean, context: PageContext): Wired {
  const { plan, words, site } = context
  const wire = plan.wires.get(station.id)
  const three = station.valves.some(one => one.coil === 'DC latching 3-wire')
  const end = three ? 'three leads' : station.valves.length > 1 ? 'coils' : 'coil'
  return wiredRow(station.wire, context, {
    terminal: String(station.number),
    conductors: (three ? 3 : 2) - (shared ? 1 : 0),
    shared,
    splices: station.splices.map(one => one.box ?? one.where ?? words.wiring.none),
    end,
    name: station.zone,
    place: placesOf(station.valves),
    note: coilNote(station.valves, wire?.coilOhm, site.units, words.wiring),
    ...(wire ? { reads: readsOf(wire, context) } : {})
  })
}

function coilNote(
  valves: readonly Valve[],
  coilOhm: Maybe<number> | undefined,
  units: PageContext['site']['units'],
  w: PageContext['words']['wiring']
): string {
  const [valve] = valves
  const ohm = coilOhm === undefined || isAbsent(coilOhm) ? '' : show(coilOhm, 'resistance', units)
  if (valves.length > 1) return w.coils(valves.length, ohm)
  if (valve?.coil === 'DC latching 3-wire' && valve.coilResistance && valve.closingResistance)
    return `${valve.coilResistance.value} / ${showStated(valve.closingResistance)}`
  return ohm
}

function masterRow(controller: Controller, shared: boolean, context: PageContext): Wired[] {
  const { masterValve } = controller
  const w = context.words.wiring
  if (!masterValve) return []
  const wire = context.plan.wires.get(masterValveId(controller))
  const stations = stationsOf(controller, context.site.stations)
  const own = shared && coloursOf(masterValve.wire).at(-1) === commonColour(stations)
  const three = masterValve.coil === 'DC latching 3-wire'
  return [
    wiredRow(masterValve.wire, context, {
      terminal: w.master,
      conductors: (three ? 3 : 2) - (own ? 1 : 0),
      shared: own,
      splices: [],
      end: three ? 'three leads' : 'coil',
      name: w.masterName,
      place: masterValve.box ?? '',
      note: coilNote([masterValve], wire?.coilOhm, context.site.units, w),
      ...(wire ? { reads: readsOf(wire, context) } : {})
    })
  ]
}

/** Of a coil with three leads both halves, opening first. */
function readsOf({ expectedOhm, closing }: WirePlan, context: PageContext): Value {
  return closing ? bothReads(expectedOhm, closing.expectedOhm, context) : oneRead(expectedOhm, context)
}

function pumpRow(controller: Controller, context: PageContext): Wired[] {
  const w = context.words.wiring
  if (controller.pumpStart !== true) return []
  const row = {
    terminal: w.pump,
    conductors: 2,
    shared: false,
    splices: [],
    end: 'relay' as const,
    name: w.pumpName,
    place: w.mains,
    note: ''
  }
  return [wiredRow([], context, row)]
}

function sensorRow(sensor: Sensor, context: PageContext): Wired {
  const w = context.words.wiring
  const normally = sensor.normally ?? 'closed'
  return wiredRow(sensor.wire, context, {
    terminal: sensor.id,
    conductors: 2,
    shared: false,
    splices: [],
    end: normally === 'closed' ? 'closed contact' : 'open contact',
    name: sensor.kind,
    place: sensor.box ?? '',
    note: sensor.normally ? w.contact[sensor.normally] : w.contactUnknown
  })
}

type RowFacts = Omit<WiringRow, 'wires'> & { readonly reads?: Value }

function wiredRow(wire: readonly WireSegment[], { words }: PageContext, { reads, ...facts }: RowFacts): Wired {
  const w = words.wiring
  const all = coloursOf(wire)
  const own = facts.shared && all.length > 1 ? all.slice(0, -1) : all
  const runs = wire
    .map(segment => {
      const back = segment.common === undefined ? '' : ` / ${showWireSize(segment.common)}`
      return w.run(`${showWireSize(segment.size)}${back}`, showStated(segment.length))
    })
    .join(' + ')
  return {
    row: { ...facts, wires: w.wires(own.join(' / ') || (wire.length > 0 ? w.noColour : ''), runs) },
    colours: all.join(' / '),
    runs,
    ...(reads ? { reads } : {})
  }
}

const placesOf = (valves: readonly Valve[]): string =>
  [...new Set(valves.map(one => one.box).filter(one => one !== undefined))].join(', ')

function oneRead(ohm: Maybe<number>, { site, words }: PageContext): Value {
  return isAbsent(ohm) ? notComputed(words, ohm.reason) : computed(show(ohm, 'resistance', site.units), 'wire-loop')
}

function bothReads(open: Maybe<number>, close: Maybe<number>, context: PageContext): Value {
  if (isAbsent(open) || isAbsent(close)) return oneRead(isAbsent(open) ? open : close, context)
  const { units } = context.site
  return computed(`${showNumber(open, 'resistance', units)} / ${show(close, 'resistance', units)}`, 'wire-loop')
}

function table(controller: Controller, wired: readonly Wired[], context: PageContext): TableBlock {
  const { site, words } = context
  const w = words.wiring
  const text = (words_: string): Value => stated(words_ || w.none)
  const inCommon = sensorsOf(controller, site.sensors).filter(
    one => one.wired === 'in the common' && one.normally !== 'open'
  )
  const notes = [
    ...(wired.some(({ row }) => row.end === 'three leads') ? [w.threeLeads] : []),
    ...(inCommon.length > 0 ? [w.closedInCommon(inCommon.map(one => one.id).join(', '))] : [])
  ]
  return {
    kind: 'table',
    columns: [
      { label: w.terminal },
      { label: w.to },
      { label: w.box },
      { label: w.colours },
      { label: w.size },
      { label: w.splices },
      { label: w.reads, align: 'right' }
    ],
    rows: wired.map(({ row, colours, runs, reads }) => [
      stated(row.terminal, true),
      text(row.end === 'relay' ? [row.name, controller.pumpRelay].filter(Boolean).join(': ') : row.name),
      text(row.end === 'relay' ? '' : row.place),
      text(colours),
      text(runs),
      text(row.splices.join(', ')),
      reads ?? stated(w.none)
    ]),
    ...(notes.length > 0 ? { notes } : {})
  }
}
