import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import {
  ANNUAL_SHARE,
  FAO_MANUAL_3,
  PER_EVENT_SLICES,
  RAIN_METHODS,
  RAIN_METHOD_WORDS,
  SCS_MONTHLY,
  TR21
} from '../../reference/effective-rain.ts'
import type { RainMethod } from '../../reference/effective-rain.ts'
import { sum } from '../../base/collections.ts'

const M_PER_IN = 0.0254
const M_PER_MM = 0.001

/** Rain of a month, of one event, or of a year, as the method asks for it; all in m. */
export interface RainFacts {
  readonly rainM: number
  /** What the plants use in the month; only the soil storage method asks for it. */
  readonly useM?: number
  /** What the soil stores between two waterings; the same. */
  readonly storageM?: number
}

/**
 * Rain in m that counts for the plants, never more than fell. The formulas go in their own units, inches or millimeters. Absent where the
 * method asks for a fact that is not there, or rain is below nothing.
 */
export function effectiveRainM(method: RainMethod, { rainM, useM, storageM }: RainFacts): Maybe<number> {
  if (!(rainM >= 0)) return absent('rain cannot be below zero')
  switch (method) {
    case 'none':
      return 0
    case 'tr-21':
      if (useM === undefined || storageM === undefined)
        return absent('the soil storage method asks for the use of the plants and the storage of the soil')
      if (!(useM >= 0 && storageM > 0)) return absent('use must not be below zero, and storage must be more than zero')
      return soilStorageM(rainM, useM, storageM)
    case 'scs-monthly':
      return scsMonthlyM(rainM)
    case 'fao-manual-3':
      return faoManualM(rainM)
    case 'per-event':
      return perEventM(rainM)
    case 'quarter-of-annual':
      return rainM * ANNUAL_SHARE
  }
}

/** Short names that people write for a method. */
const SHORT_NAMES: ReadonlyMap<string, RainMethod> = new Map<string, RainMethod>([
  ['scs', 'scs-monthly'],
  ['fao 46', 'scs-monthly'],
  ['tr21', 'tr-21'],
  ['25 %', 'quarter-of-annual'],
  ['25%', 'quarter-of-annual']
])

/** The method that a site file names, by its id, its words or a short name, without regard to case. */
export function rainMethodOf(text: string): Maybe<RainMethod> {
  const bare = text.trim().toLowerCase()
  const short = SHORT_NAMES.get(bare)
  if (short) return short
  const method = RAIN_METHODS.find(id => id === bare || RAIN_METHOD_WORDS[id].words.toLowerCase() === bare)
  return method ?? absent(`“${text}” is not a way to count rain; write one of ${RAIN_METHODS.join(', ')}`)
}

/** Storage factor of the soil from its storage in inches, National Engineering Handbook 623 (1993), eq. 2-85. 3 in: 1.0007. */
export function storageFactor(storageIn: number): number {
  return sum(TR21.storage.map((coefficient, power) => coefficient * storageIn ** power))
}

/** Eq. 2-84, held to what fell and what the plants use. Under 0.11 in of rain the bracket falls below zero and nothing counts. */
function soilStorageM(rainM: number, useM: number, storageM: number): number {
  const bracket = TR21.rainFactor * (rainM / M_PER_IN) ** TR21.rainPower - TR21.less
  const countedIn = storageFactor(storageM / M_PER_IN) * bracket * 10 ** ((TR21.etPowerOfTen * useM) / M_PER_IN)
  return Math.min(rainM, useM, Math.max(0, countedIn * M_PER_IN))
}

function scsMonthlyM(rainM: number): number {
  const rainMm = rainM / M_PER_MM
  const { breakMm, bend, wholeMm, aboveShare } = SCS_MONTHLY
  const countedMm = rainMm <= breakMm ? (rainMm * (wholeMm - bend * rainMm)) / wholeMm : wholeMm + aboveShare * rainMm
  return countedMm * M_PER_MM
}

function faoManualM(rainM: number): number {
  const rainMm = rainM / M_PER_MM
  const { share, lessMm } = rainMm > FAO_MANUAL_3.breakMm ? FAO_MANUAL_3.above : FAO_MANUAL_3.below
  return Math.max(0, share * rainMm - lessMm) * M_PER_MM
}

function perEventM(rainM: number): number {
  const rainIn = rainM / M_PER_IN
  const counted = PER_EVENT_SLICES.map(({ upToIn, share }, index) => {
    const fromIn = PER_EVENT_SLICES[index - 1]?.upToIn ?? 0
    return share * Math.max(0, Math.min(rainIn, upToIn) - fromIn)
  })
  return sum(counted) * M_PER_IN
}
