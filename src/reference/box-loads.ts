/**
 * Boxes and lids by where they lie. ANSI/SCTE 77 tiers (2017, read in a copy) are for traffic that drives over by mistake; no tier stands for
 * deliberate traffic, which takes AASHTO H-20 (16,000 lb wheel) or EN 124 D400. The pairing with places is this project's.
 */
export const SCTE_TIERS = [
  { tier: 'light duty', designKn: 13.3, testKn: 20, use: 'pedestrians only' },
  { tier: 'Tier 5', designKn: 22.2, testKn: 33.3, use: 'sidewalks' },
  { tier: 'Tier 8', designKn: 35.6, testKn: 53.4, use: 'sidewalks' },
  { tier: 'Tier 15', designKn: 66.7, testKn: 100.1, use: 'medians and verges, occasional stray heavy vehicle' },
  { tier: 'Tier 22', designKn: 100.1, testKn: 150.1, use: 'driveways, parking lots, occasional stray heavy vehicle' }
] as const

/** EN 124-1:2015; a class's number is its test load in kN. In doubt the higher class holds. */
export const EN_124_CLASSES = [
  { name: 'A15', testKn: 15, use: 'pedestrians and cycles' },
  { name: 'B125', testKn: 125, use: 'footways, car parks' },
  { name: 'C250', testKn: 250, use: 'curb channels, to 0.5 m into the carriageway' },
  { name: 'D400', testKn: 400, use: 'carriageways' },
  { name: 'E600', testKn: 600, use: 'high wheel loads' },
  { name: 'F900', testKn: 900, use: 'very high wheel loads' }
] as const

/** AASHTO H-20: 16,000 lb on a wheel; proof load 40,000 lb. H-25: 20,000 lb on a wheel. */
export const AASHTO_CLASSES = [
  { name: 'H-20', wheelLb: 16000 },
  { name: 'H-25', wheelLb: 20000 }
] as const

export const BOX_LOCATIONS = [
  'lawn or planting',
  'sidewalk',
  'median or verge that vehicles can reach',
  'parking or driveway',
  'carriageway'
] as const
export type BoxLocation = (typeof BOX_LOCATIONS)[number]

export interface LeastLoad {
  /** Index into SCTE_TIERS; undefined where no tier will do. */
  readonly tier?: number
  /** Index into EN_124_CLASSES. */
  readonly en: number
  readonly words: string
}

export const LEAST_LOADS: Readonly<Record<BoxLocation, LeastLoad>> = {
  'lawn or planting': { tier: 0, en: 0, words: 'light duty or A15' },
  sidewalk: { tier: 1, en: 1, words: 'Tier 5 or B125' },
  'median or verge that vehicles can reach': { tier: 3, en: 2, words: 'Tier 15 or C250' },
  'parking or driveway': { tier: 4, en: 2, words: 'Tier 22 or C250' },
  carriageway: { en: 3, words: 'H-20 or D400' }
}
