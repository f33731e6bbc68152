/**
 * Intake and what the surface holds before water runs off, by slope, in inches as printed: Irrigation Association, Landscape Irrigation Scheduling and
 * Water Management, 2005 (from memory; the intake and the column for flat ground read in a copy).
 */
export interface SoilIntake {
  readonly texture: string
  readonly intakeInPerH: number
  /** By band of slope, flattest first: see SLOPE_BANDS. */
  readonly surfaceIn: readonly [number, number, number, number]
}

export const SOIL_INTAKES: readonly SoilIntake[] = [
  { texture: 'clay', intakeInPerH: 0.1, surfaceIn: [0.2, 0.15, 0.1, 0.1] },
  { texture: 'silty clay', intakeInPerH: 0.15, surfaceIn: [0.23, 0.19, 0.16, 0.13] },
  { texture: 'clay loam', intakeInPerH: 0.2, surfaceIn: [0.26, 0.22, 0.18, 0.15] },
  { texture: 'loam', intakeInPerH: 0.35, surfaceIn: [0.3, 0.25, 0.21, 0.17] },
  { texture: 'sandy loam', intakeInPerH: 0.4, surfaceIn: [0.33, 0.29, 0.24, 0.2] },
  { texture: 'loamy sand', intakeInPerH: 0.5, surfaceIn: [0.36, 0.3, 0.26, 0.22] },
  { texture: 'sand', intakeInPerH: 0.6, surfaceIn: [0.4, 0.35, 0.3, 0.25] }
]

/** Upper ends of the printed bands 0-3 %, 4-6 %, 7-12 % and over 12 %; a slope between two of them counts with the steeper. */
export const SLOPE_BANDS = [
  { upTo: 0.03, words: '0 to 3 %' },
  { upTo: 0.06, words: '4 to 6 %' },
  { upTo: 0.12, words: '7 to 12 %' },
  { upTo: Infinity, words: 'over 12 %' }
] as const

/** Water that a soil holds for plants, inches in a foot of depth: University of California, Davis, drought management, soil characteristics. */
export interface SoilWater {
  readonly textures: readonly string[]
  readonly leastInPerFt: number
  readonly mostInPerFt: number
}

export const SOIL_WATERS: readonly SoilWater[] = [
  { textures: ['very coarse sand'], leastInPerFt: 0.4, mostInPerFt: 0.75 },
  { textures: ['coarse sand', 'sand', 'fine sand', 'loamy sand'], leastInPerFt: 0.75, mostInPerFt: 1.25 },
  { textures: ['sandy loam', 'fine sandy loam'], leastInPerFt: 1.25, mostInPerFt: 1.75 },
  { textures: ['very fine sandy loam', 'loam', 'silt loam'], leastInPerFt: 1.5, mostInPerFt: 2.3 },
  { textures: ['clay loam', 'silty clay loam', 'sandy clay loam'], leastInPerFt: 1.75, mostInPerFt: 2.5 },
  { textures: ['sandy clay', 'silty clay', 'clay'], leastInPerFt: 1.6, mostInPerFt: 2.5 }
]

/**
 * Part of the available water that may be used before watering: half is the practice used most (University of California, landscape plant
 * irrigation trials). To be changed where the plants ask for it.
 */
export const ALLOWABLE_DEPLETION = 0.5

export const SOIL_TEXTURES: readonly string[] = SOIL_WATERS.flatMap(({ textures }) => textures)
