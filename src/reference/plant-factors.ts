import type { SourceId } from './sources.ts'

/** Share of reference evapotranspiration that a kind of planting wants once it is established. */
export interface PlantFactor {
  readonly kind: string
  readonly least: number
  readonly most: number
  /** The figure to use where nothing more is known: the middle of the range, but the upper end of "very low". */
  readonly factor: number
  readonly source: SourceId
}

export const PLANT_FACTORS: readonly PlantFactor[] = [
  { kind: 'very low water use', least: 0, most: 0.1, factor: 0.1, source: 'wucols-classes' },
  { kind: 'low water use', least: 0.1, most: 0.3, factor: 0.2, source: 'wucols-classes' },
  { kind: 'moderate water use', least: 0.4, most: 0.6, factor: 0.5, source: 'wucols-classes' },
  { kind: 'high water use', least: 0.7, most: 0.9, factor: 0.8, source: 'wucols-classes' },
  { kind: 'cool-season turf', least: 0.8, most: 0.8, factor: 0.8, source: 'asabe-s623' },
  { kind: 'warm-season turf', least: 0.6, most: 0.6, factor: 0.6, source: 'asabe-s623' },
  { kind: 'trees, shrubs, groundcover', least: 0.4, most: 0.5, factor: 0.5, source: 'asabe-s623' },
  { kind: 'desert plants', least: 0.3, most: 0.3, factor: 0.3, source: 'asabe-s623' },
  { kind: 'annual flowers', least: 0.8, most: 0.8, factor: 0.8, source: 'from-memory' },
  { kind: 'woody and herbaceous, wet climate', least: 0.7, most: 0.7, factor: 0.7, source: 'from-memory' },
  { kind: 'woody and herbaceous, dry climate', least: 0.5, most: 0.5, factor: 0.5, source: 'from-memory' }
]

/**
 * Ranges of the other two parts of a landscape coefficient (from memory; the guide's case studies name trees over 15 ft at 1.1 to 1.2 for density and large
 * trees in wind at 1.2 to 1.3 for microclimate). Beside pavement, as on medians and roundabouts, the microclimate is high.
 */
export const COEFFICIENT_RANGES = {
  species: { least: 0, most: 0.9 },
  density: { least: 0.5, most: 1.3 },
  microclimate: { least: 0.5, most: 1.4 }
} as const
