import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { fromSi } from '../../units/quantity.ts'
import { show } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import { negative, notPositive } from '../amounts.ts'
import type { Calculation, OutputValue } from '../calculation.ts'
import { figures, measure } from '../figures.ts'
import { numberOf, optionalNumber } from '../inputs.ts'
import { IN_PER_M, MM_PER_M, UNITS_INPUT, unitsOfWorking } from './units.ts'

/** Water in m³ between two readings of a meter. Absent where the later is lower: the meter was changed, ran over, or its unit was mistaken. */
export function meteredM3(earlierM3: number, laterM3: number): Maybe<number> {
  if (laterM3 < earlierM3)
    return absent('the later reading is lower: the meter was changed or ran over, or a unit is mistaken')
  return laterM3 - earlierM3
}

/** Depth in m that a volume is on an area. */
export const depthOnAreaM = (volumeM3: number, areaM2: number): number => volumeM3 / areaM2

const volume = { is: 'quantity', dimension: 'volume' } as const

export const meterUnits: Calculation = {
  name: 'meter-units',
  title: 'Meter readings',
  does: 'Gives the water between two readings of a meter in the units that bills and budgets use, for a day and as a depth on the area.',
  inputs: {
    reading: { kind: volume, does: 'reading, with the unit of the meter: 1284 m³, 42 HCF' },
    earlier: { kind: volume, does: 'reading before', optional: 'the reading itself is taken as the volume' },
    days: { kind: { is: 'number' }, does: 'days between both', optional: 'no volume a day is given' },
    area: {
      kind: { is: 'quantity', dimension: 'area' },
      does: 'area on that meter',
      optional: 'no depth is given'
    },
    ...UNITS_INPUT
  },
  outputs: {
    volume: { does: 'water', unit: 'm³' },
    liters: { does: 'the same', unit: 'L' },
    gallons: { does: 'the same', unit: 'gal' },
    'hundred-cubic-feet': { does: 'the same', unit: 'HCF' },
    'per-day': { does: 'water a day', unit: 'm³' },
    'per-day-us': { does: 'the same', unit: 'gal' },
    depth: { does: 'depth on the area', unit: 'mm' },
    'depth-us': { does: 'the same', unit: 'in' }
  },
  sources: ['volume-over-area'],
  limits:
    'HCF and CCF are both 100 ft³, 748.05 gal. Note the unit on the face of the meter: gallons taken for cubic feet come out 7.5 times too large.',
  run: inputs => {
    const system = unitsOfWorking(inputs)
    const [reading, earlier] = [numberOf(inputs, 'reading'), optionalNumber(inputs, 'earlier')]
    const [days, area] = [optionalNumber(inputs, 'days'), optionalNumber(inputs, 'area')]
    const fault = negative({ reading, earlier }) ?? notPositive({ days, area })
    if (fault) return fault
    const m3 = meteredM3(earlier ?? 0, reading)
    if (isAbsent(m3)) return m3
    const shown = (amount: number) => show(amount, 'volume', system)
    const steps = [
      earlier === undefined ? `volume: ${shown(m3)}` : `${shown(reading)} − ${shown(earlier)} = ${shown(m3)}`,
      `${measure(m3, 6, 'm³')} = ${measure(gal(m3), 6, 'gal')} = ${measure(hcf(m3), 5, 'HCF')}`,
      ...(days === undefined ? [] : [`${shown(m3)} / ${figures(days, 4)} days = ${shown(m3 / days)} a day`]),
      ...(area === undefined ? [] : [depthStep(m3, area, system)])
    ]
    const value: Record<string, OutputValue> = {
      volume: m3,
      liters: m3 * 1000,
      gallons: gal(m3),
      'hundred-cubic-feet': hcf(m3)
    }
    if (days !== undefined) Object.assign(value, { 'per-day': m3 / days, 'per-day-us': gal(m3 / days) })
    if (area === undefined) return { value, steps }
    const depthM = depthOnAreaM(m3, area)
    return { value: { ...value, depth: depthM * MM_PER_M, 'depth-us': depthM * IN_PER_M }, steps }
  },
  example: {
    inputs: { reading: '57 HCF', earlier: '42 HCF', days: '30', area: '20000 ft²', units: 'us' },
    outputs: { volume: 42.475, gallons: 11220.8, 'hundred-cubic-feet': 15, 'per-day-us': 374.03, 'depth-us': 0.9 }
  }
}

const gal = (m3: number): number => fromSi(m3, 'gal', 'volume')
const hcf = (m3: number): number => fromSi(m3, 'HCF', 'volume')

const depthStep = (m3: number, areaM2: number, system: UnitSystem): string =>
  `${show(m3, 'volume', system)} on ${show(areaM2, 'area', system)} = ${show(depthOnAreaM(m3, areaM2), 'depth', system)}`
