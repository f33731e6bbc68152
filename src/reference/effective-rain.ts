import type { SourceId } from './sources.ts'

/** Ways to tell how much of the rain counts. Each asks for its own units, which stand in the names below. */
export const RAIN_METHODS = ['none', 'tr-21', 'scs-monthly', 'fao-manual-3', 'per-event', 'quarter-of-annual'] as const
export type RainMethod = (typeof RAIN_METHODS)[number]

export const RAIN_METHOD_WORDS: Readonly<Record<RainMethod, { readonly words: string; readonly source: SourceId }>> = {
  none: { words: 'no rain is counted', source: 'project-rule' },
  'tr-21': { words: 'USDA soil storage method, a month', source: 'neh-623' },
  'scs-monthly': { words: 'USDA monthly method as FAO paper 46 has it', source: 'fao-46' },
  'fao-manual-3': { words: 'FAO training manual 3, a month on slopes of up to 5 %', source: 'fao-manual-3' },
  'per-event': { words: 'Texas evapotranspiration network, one rain', source: 'texas-et' },
  'quarter-of-annual': {
    words: 'a quarter of the rain of the year, the most that California counts',
    source: 'ca-effective-rain'
  }
}

/** National Engineering Handbook part 623, chapter 2 (1993), eq. 2-84 and 2-85: inches a month, storage in inches. */
export const TR21 = {
  rainFactor: 0.70917,
  rainPower: 0.82416,
  less: 0.11556,
  etPowerOfTen: 0.02426,
  storage: [0.531747, 0.295164, -0.057697, 0.003804]
} as const

/** FAO paper 46 (1992), millimeters a month. */
export const SCS_MONTHLY = { breakMm: 250, bend: 0.2, wholeMm: 125, aboveShare: 0.1 } as const

/** FAO training manual 3 (1986), millimeters a month; from memory, and variants with other breaks are in use. */
export const FAO_MANUAL_3 = {
  breakMm: 75,
  below: { share: 0.6, lessMm: 10 },
  above: { share: 0.8, lessMm: 25 }
} as const

/** Shares of one rain that count, by slices of its depth in inches. */
export const PER_EVENT_SLICES = [
  { upToIn: 0.1, share: 0 },
  { upToIn: 1, share: 1 },
  { upToIn: 2, share: 2 / 3 }
] as const

/** Most of the year's rain that California ordinances let count. */
export const ANNUAL_SHARE = 0.25
