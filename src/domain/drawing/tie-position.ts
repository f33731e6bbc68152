import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { fromSi } from '../../units/quantity.ts'
import { roundedText } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import type { Calculation, Worked } from '../calculation.ts'
import { numberOf } from '../inputs.ts'
import { atMost } from '../within.ts'
import { UNITS_INPUT, unitsOfWorking } from '../water/units.ts'
import type { EastNorth } from './spot.ts'
import { apartM } from './spot.ts'

/** Ties of a tape that miss each other by no more are taken as meeting: rule of this project. */
export const TIE_GAP_M = 0.15

export interface TieSpot {
  /** From the first point towards the second, m. */
  readonly alongM: number
  /** At right angles to that line, m: once to either side. */
  readonly offM: number
}

export interface Tie {
  readonly from: EastNorth
  readonly lengthM: number
}

/**
 * Where two distances from two points meet: along = (a² - b² + d²) / 2d, off = √(a² - along²), two right triangles on one height
 * (Euclid, Elements, I.47). Absent where the points lie together, or the distances cannot meet.
 */
export function tieSpot(betweenM: number, firstM: number, secondM: number): Maybe<TieSpot> {
  if (betweenM < TIE_GAP_M) return absent('the two points lie together')
  const short = betweenM - firstM - secondM
  const inside = Math.abs(firstM - secondM) - betweenM
  if (!atMost(Math.max(short, inside), TIE_GAP_M))
    return absent(
      `the two ties do not meet: the points are ${roundedText(betweenM, 2)} m apart, the ties ${roundedText(firstM, 2)} m and ${roundedText(secondM, 2)} m`
    )
  const alongM = (firstM ** 2 - secondM ** 2 + betweenM ** 2) / (2 * betweenM)
  return { alongM, offM: Math.sqrt(Math.max(0, firstM ** 2 - alongM ** 2)) }
}

/** The two spots that two ties fit, first that on the left of the way from the first point to the second. */
export function tieSpots(first: Tie, second: Tie): Maybe<readonly [EastNorth, EastNorth]> {
  const betweenM = apartM(first.from, second.from)
  const spot = tieSpot(betweenM, first.lengthM, second.lengthM)
  if ('reason' in spot) return spot
  const { alongM, offM } = spot
  const east = (second.from.eastM - first.from.eastM) / betweenM
  const north = (second.from.northM - first.from.northM) / betweenM
  const at = (off: number): EastNorth => ({
    eastM: first.from.eastM + alongM * east - off * north,
    northM: first.from.northM + alongM * north + off * east
  })
  return [at(offM), at(-offM)]
}

export function tiePositionWorked(
  betweenM: number,
  firstM: number,
  secondM: number,
  system: UnitSystem
): Maybe<Worked<{ along: number; off: number }>> {
  const spot = tieSpot(betweenM, firstM, secondM)
  if ('reason' in spot) return spot
  const unit = system === 'us' ? 'ft' : 'm'
  const [d, a, b, along, off] = [betweenM, firstM, secondM, spot.alongM, spot.offM].map(one =>
    roundedText(fromSi(one, unit, 'length'), 2)
  )
  return {
    value: { along: spot.alongM, off: spot.offM },
    steps: [
      `along the line from the first point: (${a}² − ${b}² + ${d}²) / (2 × ${d}) = ${along} ${unit}`,
      `off that line: √(${a}² − ${along}²) = ${off} ${unit}`
    ]
  }
}

const lengthInput = (does: string) => ({ kind: { is: 'quantity', dimension: 'length' } as const, does })

export const tiePosition: Calculation = {
  name: 'tie-position',
  title: 'Place from two ties',
  does: 'Where a thing lies that was measured from two points: how far along the line between them, and how far off it.',
  inputs: {
    between: lengthInput('distance between the two points'),
    first: lengthInput('tie from the first point'),
    second: lengthInput('tie from the second point'),
    ...UNITS_INPUT
  },
  outputs: {
    along: { does: 'from the first point, along the line to the second', unit: 'm' },
    off: { does: 'at right angles to that line; it fits on either side', unit: 'm' }
  },
  sources: ['euclid-1-47', 'project-rule'],
  limits: `Distances over level ground. Ties that miss each other by up to ${TIE_GAP_M} m are taken as meeting. Flat crossings double an error of the tape.`,
  run: inputs =>
    tiePositionWorked(
      numberOf(inputs, 'between'),
      numberOf(inputs, 'first'),
      numberOf(inputs, 'second'),
      unitsOfWorking(inputs)
    ),
  example: {
    inputs: { between: '10 m', first: '6 m', second: '8 m' },
    outputs: { along: 3.6, off: 4.8 }
  }
}
