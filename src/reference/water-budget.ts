/**
 * California Code of Regulations, title 23, sections 490 to 495, model water efficient landscape ordinance, 2015. The ordinance counts
 * 0.62 gallons for an inch on a square foot; that rounded figure belongs inside its own formulas and nowhere else (exactly 0.6234).
 */
export const ORDINANCE_GAL_PER_IN_FT2 = 0.62

/** Evapotranspiration adjustment of the ordinance of 2015; before, 0.7 for all. */
export const ADJUSTMENTS = { residential: 0.55, 'non-residential': 0.45 } as const
export type LandUse = keyof typeof ADJUSTMENTS
export const LAND_USES = Object.keys(ADJUSTMENTS) as LandUse[]

/** Irrigation efficiency that the ordinance counts with. */
export const ORDINANCE_EFFICIENCY = { overhead: 0.75, drip: 0.81 } as const

/** EPA water budget: share of the reference evapotranspiration of the peak month, 2009. */
export const PEAK_MONTH_SHARE = 0.7
