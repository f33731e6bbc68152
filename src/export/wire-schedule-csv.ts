import { isPresent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import type { PageContext } from '../binder/context.ts'
import type { Station } from '../model/site.ts'
import { showWireSize } from '../units/wire-size.ts'
import type { WirePlan } from '../plan/plan.ts'
import { csvText } from './csv.ts'
import type { Cell } from './csv.ts'

const COLUMNS = [
  'site',
  'controller',
  'station',
  'zone',
  'waters',
  'valve_box',
  'coil',
  'wire',
  'colour',
  'length_m',
  'loop_ohm',
  'coil_ohm',
  'expected_ohm',
  'coil_volt',
  'lowest_volt',
  'longest_m',
  'passes'
] as const

/** A row a station, in SI units; a cell is empty where the figure is not known. */
export function wireScheduleCsv(contexts: readonly PageContext[]): string {
  return wireScheduleOf(contexts.flatMap(wireRows))
}

/** The same from rows made before. */
export function wireScheduleOf(rows: readonly (readonly Cell[])[]): string {
  return csvText(COLUMNS, rows)
}

export function wireRows({ site, plan }: Pick<PageContext, 'site' | 'plan'>): Cell[][] {
  return site.stations.map(station => row(site.id, station, plan.wires.get(station.id)))
}

function row(site: string, station: Station, wire: WirePlan | undefined): Cell[] {
  const { id, controller, zone, waters = '', valves, wire: segments } = station
  const joined = (values: readonly (string | undefined)[]) => [...new Set(values.filter(Boolean))].join('; ')
  return [
    site,
    controller,
    id,
    zone,
    waters,
    joined(valves.map(valve => valve.box)),
    joined(valves.map(valve => valve.coil)),
    joined(segments.map(segment => showWireSize(segment.size).replaceAll('\u00a0', ' '))),
    joined(segments.map(segment => segment.colour)),
    ...(wire ? figures(wire) : Array.from({ length: 8 }, () => ''))
  ]
}

function figures(wire: WirePlan): Cell[] {
  const passes = wire.limits.length === 0 ? '' : wire.limits.every(limit => limit.passes) ? 'yes' : 'no'
  return [
    number(wire.lengthM),
    number(wire.loopOhm),
    number(wire.coilOhm),
    number(wire.expectedOhm),
    number(wire.coilVolt),
    number(wire.lowestVolt),
    number(wire.longestM),
    passes
  ]
}

const number = (value: Maybe<number> | undefined): Cell =>
  value !== undefined && isPresent(value) && Number.isFinite(value) ? Number(value.toPrecision(6)) : ''
