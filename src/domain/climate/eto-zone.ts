import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { sum } from '../../base/collections.ts'
import { etoZone } from '../../reference/eto-zones.ts'
import { MONTHS } from '../../units/date.ts'
import type { Month } from '../../units/date.ts'
import type { Calculation, OutputSpec } from '../calculation.ts'
import { figures, measure } from '../figures.ts'
import { numberOf } from '../inputs.ts'

const M_PER_IN = 0.0254

/** Reference evapotranspiration of the twelve months of a California zone, in m, January first. Zone 12: July 0.2047 m. */
export function zoneEtoM(zone: number): Maybe<readonly number[]> {
  const row = etoZone(zone)
  return row
    ? row.etoIn.map(inches => inches * M_PER_IN)
    : absent(`there is no reference evapotranspiration zone ${figures(zone, 3)}; they go from 1 to 18`)
}

const monthOutputs = Object.fromEntries(
  MONTHS.map(month => [month, { does: `reference evapotranspiration of ${month}`, unit: 'mm' }])
) as Readonly<Record<Month, OutputSpec>>

export const etoZoneCard: Calculation = {
  name: 'eto-zone',
  title: 'Reference evapotranspiration from the zone table',
  does: 'Reads the reference evapotranspiration of each month for one of the eighteen zones of California.',
  inputs: { zone: { kind: { is: 'count' }, does: 'zone by the map of the Department of Water Resources, 1 to 18' } },
  outputs: {
    ...monthOutputs,
    year: { does: 'of the year', unit: 'mm' },
    'year-us': { does: 'the same', unit: 'in' }
  },
  sources: ['cimis-zones'],
  limits:
    'Long-time means of a zone as a whole: a slope, a street or the shore itself may lie well off them. Each row adds up to the total that the map prints with it. Copies in circulation carry slips; these rows were compared over three.',
  run: inputs => {
    const zone = numberOf(inputs, 'zone')
    const months = zoneEtoM(zone)
    if (isAbsent(months)) return months
    const yearM = sum(months)
    const row = etoZone(zone)
    return {
      value: {
        ...Object.fromEntries(MONTHS.map((month, index) => [month, (months[index] ?? 0) * 1000])),
        year: yearM * 1000,
        'year-us': yearM / M_PER_IN
      },
      steps: [
        `zone ${zone}, inches, January first: ${row?.etoIn.map(inches => figures(inches, 3)).join(', ')}`,
        `they add up to ${measure(yearM / M_PER_IN, 4, 'in')}, the total printed with the row: ${measure(row?.totalIn ?? 0, 4, 'in')}`,
        `× 25.4: ${months.map(m => figures(m * 1000, 3)).join(', ')} mm`
      ]
    }
  },
  example: { inputs: { zone: '12' }, outputs: { Jan: 31.5, Jul: 204.72, Dec: 23.62, year: 1355.6, 'year-us': 53.37 } }
}
