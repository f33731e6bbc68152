import type { PageContext } from '../binder/context.ts'
import type { Quantity } from '../units/quantity.ts'
import { csvText } from './csv.ts'
import type { Cell } from './csv.ts'

const COLUMNS = [
  'site',
  'station',
  'zone',
  'waters',
  'devices',
  'nozzle',
  'area_m2',
  'flow_l_per_min',
  'plants',
  'soil',
  'root_depth_m',
  'slope',
  'valve_box',
  'valve_size'
] as const

const LITERS_A_MINUTE = 60_000

/** A row a zone, in SI units; a cell is empty where nothing is supplied. */
export function zonesCsv({ site }: Pick<PageContext, 'site'>): string {
  return csvText(
    COLUMNS,
    site.stations.map(({ id, zone, waters, devices, area, plants, soil, slope, valves: [valve] }) => [
      site.id,
      id,
      zone,
      waters ?? '',
      devices?.kind ?? '',
      devices?.nozzle ?? '',
      number(area),
      number(valve?.normalFlow ?? devices?.flow, LITERS_A_MINUTE),
      plants?.kind ?? '',
      soil?.texture ?? '',
      number(soil?.rootDepth),
      slope ?? '',
      valve?.box ?? '',
      valve?.size ?? ''
    ])
  )
}

const number = (amount: Quantity | undefined, times = 1): Cell =>
  amount === undefined ? '' : Number((amount.si * times).toPrecision(6))
