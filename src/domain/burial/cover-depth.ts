import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { COVER_COLUMNS, COVER_COLUMN_5_MAX_V, COVER_LOCATIONS, COVER_MM, NEC_300_5 } from '../../reference/nec-300-5.ts'
import type { CoverColumn, CoverLocation } from '../../reference/nec-300-5.ts'
import { negative } from '../amounts.ts'
import type { Calculation } from '../calculation.ts'
import { measure } from '../figures.ts'
import { optionalNumber, optionalText, textOf } from '../inputs.ts'
import { atMost } from '../within.ts'

export interface LeastCover {
  readonly inches: number
  /** As the table prints it beside the inches; a cover stated in metric units is held against this one. */
  readonly mm: number
}

export const IRRIGATION_COLUMN: CoverColumn = 'irrigation control 30 V or less'

/**
 * Least cover over the top of the cable, NEC table 300.5(A) (NFPA 70-2023): irrigation control of 30 V or less in open ground takes 6 in,
 * under a road 24 in. `raceway` picks the lesser figure of a cell that has two. The local code and the permit decide.
 */
export function leastCover(location: CoverLocation, column: CoverColumn, raceway: boolean): LeastCover {
  const cell = NEC_300_5[location][COVER_COLUMNS.indexOf(column) as 0]
  const inches = typeof cell === 'number' ? cell : cell[raceway ? 1 : 0]
  return { inches, mm: COVER_MM[inches] as number }
}

/** The same with the circuit's voltage looked at: column 5 stops at 30 V. */
export function leastCoverAt(
  location: CoverLocation,
  column: CoverColumn,
  raceway: boolean,
  volt: number
): Maybe<LeastCover> {
  if (column === IRRIGATION_COLUMN && !atMost(volt, COVER_COLUMN_5_MAX_V))
    return absent(
      `the column for irrigation control stops at ${COVER_COLUMN_5_MAX_V} V; choose the wiring method that is used`
    )
  return leastCover(location, column, raceway)
}

/** "NEC table 300.5(A), NFPA 70-2023, column 5 (…), open ground: 6 in (150 mm) to the top of the cable". */
export function coverWords(location: CoverLocation, column: CoverColumn, { inches, mm }: LeastCover): string {
  const table = `NEC table 300.5(A), NFPA 70-2023, column ${COVER_COLUMNS.indexOf(column) + 1} (${column})`
  return `${table}, ${location}: ${measure(inches, 2, 'in')} (${measure(mm, 3, 'mm')}) to the top of the cable`
}

export const coverDepth: Calculation = {
  name: 'cover-depth',
  title: 'Least cover over a buried cable',
  does: 'Gives the least cover over the top of a cable for the place it lies in.',
  inputs: {
    location: { kind: { is: 'choice', of: COVER_LOCATIONS }, does: 'what lies above the cable' },
    wiring: { kind: { is: 'choice', of: COVER_COLUMNS }, does: 'column of the table', optional: IRRIGATION_COLUMN },
    protection: {
      kind: { is: 'choice', of: ['direct', 'raceway'] },
      does: 'cable in earth or in a raceway',
      optional: 'direct'
    },
    volts: { kind: { is: 'quantity', dimension: 'voltage' }, does: 'voltage of the circuit', optional: '30 V or less' }
  },
  outputs: {
    'cover-in': { does: 'least cover in inches', unit: 'in' },
    'cover-mm': { does: 'least cover in millimeters, as the table prints it', unit: 'mm' }
  },
  sources: ['nec-300-5', 'common-practice'],
  limits:
    'Local electrical code, road authority and permit conditions override this table. Depth is to the top of the cable. Spades and aerators reach 6 in (common practice, no source). The table is of the United States; elsewhere take it as a planning figure.',
  run: inputs => {
    const volt = optionalNumber(inputs, 'volts') ?? COVER_COLUMN_5_MAX_V
    const fault = negative({ volts: volt })
    if (fault) return fault
    const location = textOf(inputs, 'location') as CoverLocation
    const column = (optionalText(inputs, 'wiring') ?? IRRIGATION_COLUMN) as CoverColumn
    const cover = leastCoverAt(location, column, optionalText(inputs, 'protection') === 'raceway', volt)
    if (isAbsent(cover)) return cover
    return {
      value: { 'cover-in': cover.inches, 'cover-mm': cover.mm },
      steps: [coverWords(location, column, cover)]
    }
  },
  example: {
    inputs: { location: 'street, road, driveway or parking lot' },
    outputs: { 'cover-in': 24, 'cover-mm': 600 }
  }
}
