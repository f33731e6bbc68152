import { roleIn } from './role-words.ts'
import type { Block, TableBlock, Value } from './blocks.ts'
import type { PageContext } from './context.ts'
import { orNotSupplied, plate, stated } from './values.ts'
import { showStated } from '../units/show.ts'
import type { Controller, ProductSheet, Sensor, Site, Station } from '../model/site.ts'
import type { Words } from '../words/words.ts'

interface Row {
  readonly label: string
  readonly value: Value
}

/** How a person handles this unit: how it is set and from where, what locks it, what it starts, what stops it, what to do when it forgets. */
export function unitRows(controller: Controller, { site, words }: Pick<PageContext, 'site' | 'words'>): Row[] {
  const w = words.units
  const { sheet, lock, delayFor, pumpStart, pumpRelay } = controller
  return [
    ...(sheet?.setBy ? [{ label: w.setBy, value: plate(setByText(controller, words)) }] : []),
    ...(sheet?.setBy === 'radio' ? [{ label: w.stand, value: stated(controller.stand ?? w.standNotWritten) }] : []),
    ...(sheet?.mounting ? [{ label: w.mounting, value: plate(sheet.mounting) }] : []),
    ...(lock ? [{ label: w.lock, value: stated(w.lockAndKey(lock, keysFor(controller.id, site))) }] : []),
    ...coilRow(controller, site, words),
    ...(delayFor ? [{ label: w.delayFor, value: stated(delayFor) }] : []),
    ...(pumpStart === true ? [{ label: w.pump, value: stated(w.pumpText(pumpRelay ?? '')) }] : []),
    ...(sheet?.dayRules
      ? [{ label: w.days, value: plate(sheet.dayRules.map(one => w.dayRules[one]).join(', ')) }]
      : []),
    ...(sheet?.startsPerDay ? [{ label: w.startsADay, value: plate(String(sheet.startsPerDay)) }] : []),
    ...lacksRow(sheet, w),
    ...(sheet?.suspension ? [{ label: w.suspend, value: plate(suspendText(controller, words)) }] : []),
    ...(sheet?.afterMemoryLoss ? [{ label: w.memory, value: plate(sheet.afterMemoryLoss) }] : []),
    ...sensorsOf(site, controller.id).map(one => ({
      label: w.sensor(one.id, one.kind),
      value: orNotSupplied(sensorText(one, words), words)
    }))
  ]
}

function lacksRow(sheet: ProductSheet | undefined, w: Words['units']): Row[] {
  const lacks = [
    ...(sheet?.monthlyPercent === false ? [w.noPercent] : []),
    ...(sheet?.cycleSoak === false ? [w.noCycles] : [])
  ]
  return lacks.length === 0 ? [] : [{ label: w.notOnIt, value: plate(lacks.join('; ')) }]
}

export const sensorsOf = (site: Site, controller: string): readonly Sensor[] =>
  site.sensors.filter(one => one.controller === controller)

function setByText({ sheet }: Controller, { units: w }: Words): string {
  return sheet?.setBy === 'radio' ? w.radio(sheet.radioRange ? showStated(sheet.radioRange) : '') : w.keys
}

function suspendText({ sheet }: Controller, { units: w }: Words): string {
  const { days, set = '', shows = '' } = sheet?.suspension ?? {}
  return w.suspendText(days === undefined ? '' : String(days), set, shows)
}

/** Marks of the keys that open it. */
export function keysFor(id: string, { keys }: Site): string {
  return keys
    .filter(one => one.opens.includes(id))
    .map(one => one.id)
    .join(', ')
}

function coilRow({ id, masterValve }: Controller, site: Site, { units: w }: Words): Row[] {
  const valves = [...site.stations.filter(one => one.controller === id).flatMap(one => one.valves), masterValve]
  const three = valves.some(one => one?.coil === 'DC latching 3-wire')
  const two = valves.some(one => one?.coil === 'DC latching 2-wire')
  const texts = [...(three ? [w.threeLeads] : []), ...(two ? [w.twoLeads] : [])]
  return texts.length === 0 ? [] : [{ label: w.coils, value: stated(texts.join('; ')) }]
}

function sensorText({ wired, normally, bypass }: Sensor, { units: w }: Words): string {
  const how = [wired && w.wired[wired], normally && w.normally[normally]].filter(Boolean).join('; ')
  return [how, bypass && w.line.bypass(bypass)].filter(Boolean).join('. ')
}

/** The register of keys, without places and codes. */
export function keyRegister({ site, words }: PageContext): Block[] {
  const w = words.units
  if (site.keys.length === 0) return []
  return [
    {
      kind: 'table',
      caption: w.register,
      columns: [w.keyMark, w.kind, w.opens, w.count, w.heldBy].map(label => ({ label })),
      rows: site.keys.map(one => [
        stated(one.id, true),
        orNotSupplied(one.kind, words),
        orNotSupplied(one.opens.join(', '), words),
        orNotSupplied(one.count === undefined ? undefined : String(one.count), words),
        orNotSupplied(one.heldBy.map(who => roleIn(who, words)).join(', '), words)
      ]),
      notes: [w.keyNote]
    }
  ]
}

/** Which coils were swapped on valves made for alternating current, with what, and whether they were seen to work. */
export function retrofitTable({ site, words }: PageContext): TableBlock[] {
  const w = words.units
  const rows = site.stations.flatMap(station =>
    station.valves.flatMap(({ retrofit }) => {
      if (!retrofit) return []
      const { was, adapter, swapped, checked } = retrofit
      return [
        [
          stated(station.id, true),
          stated(station.zone),
          orNotSupplied(was, words),
          orNotSupplied(adapter, words),
          orNotSupplied(swapped, words, true),
          orNotSupplied(checked, words, true)
        ]
      ]
    })
  )
  if (rows.length === 0) return []
  const { station, zone } = words.binder.wires
  return [
    {
      kind: 'table',
      caption: w.retrofit,
      columns: [station, zone, w.was, w.adapter, w.swapped, w.checked].map(label => ({ label })),
      rows,
      notes: [w.retrofitNote]
    }
  ]
}

/** What somebody without the binder must know of these controllers, in as few lines as will do. */
export function handlingLines(
  { site, words }: Pick<PageContext, 'site' | 'words'>,
  controllers: readonly Controller[]
): string[] {
  const { line, standNotWritten } = words.units
  return controllers.flatMap(controller => {
    const { id, sheet } = controller
    const radio =
      sheet?.setBy === 'radio'
        ? [line.radio(id, sheet.radioRange ? showStated(sheet.radioRange) : '', controller.stand ?? standNotWritten)]
        : []
    return [...radio, ...sensorsOf(site, id).map(one => sensorLine(one, id, words))]
  })
}

function sensorLine({ id, kind, wired, bypass }: Sensor, controller: string, { units: w }: Words): string {
  const first =
    wired === 'in the common'
      ? w.line.stops(id, kind, controller)
      : wired
        ? w.line.sensor(id, kind, w.wired[wired])
        : w.line.wiringUnknown(id, kind)
  return bypass ? `${first} ${w.line.bypass(bypass)}` : first
}

/** Lines for the step about the program: what may hold it back, and what to do when it is gone. */
export function programLinesOf({ words }: PageContext, controllers: readonly Controller[]): string[] {
  const { line } = words.units
  return controllers.flatMap(({ id, sheet, delayBetweenStations, delayFor }) => {
    const { set = '', shows = '' } = sheet?.suspension ?? {}
    return [
      ...(set || shows ? [line.held(id, set, shows)] : []),
      ...(delayBetweenStations && delayFor ? [line.delay(id, showStated(delayBetweenStations), delayFor)] : []),
      ...(sheet?.afterMemoryLoss ? [line.memory(id, sheet.afterMemoryLoss)] : [])
    ]
  })
}

export function pumpLines({ words }: PageContext, controllers: readonly Controller[]): string[] {
  return controllers.flatMap(one =>
    one.pumpStart === true ? [words.units.line.pump(one.id, one.pumpRelay ?? '')] : []
  )
}

export const hasThreeLeads = (station: Station): boolean =>
  station.valves.some(one => one.coil === 'DC latching 3-wire')
