import { sum } from '../../base/collections.ts'
import { ORDINANCE_GAL_PER_IN_FT2 } from '../../reference/water-budget.ts'
import { fromSi, quantity } from '../../units/quantity.ts'

/** One hydrozone: plant factor, irrigation efficiency as a fraction, area. */
export interface Hydrozone {
  readonly factor: number
  readonly efficiency: number
  readonly areaM2: number
}

export interface AllowanceFacts {
  /** Reference evapotranspiration of the year. */
  readonly etoM: number
  /** Rain of the year that counts; 0 where the ordinance is taken without. */
  readonly rainM: number
  /** Evapotranspiration adjustment, 0.55 or 0.45. */
  readonly adjustment: number
  /** The whole landscape, special areas included: leaving them out is the usual slip. */
  readonly areaM2: number
  /** Of it: edible plants, recreation, water features, recycled water. */
  readonly specialAreaM2: number
}

/** Gallons that the ordinance counts for a depth on an area: in × ft² × 0.62. */
function ordinanceGal(depthM: number, areaM2: number): number {
  return fromSi(depthM, 'in', 'length') * ORDINANCE_GAL_PER_IN_FT2 * fromSi(areaM2, 'ft²', 'area')
}

/** Most that may be applied in a year, in gallons: (ETo − rain) × 0.62 × (adjustment × area + (1 − adjustment) × special area). */
export function allowanceGal({ etoM, rainM, adjustment, areaM2, specialAreaM2 }: AllowanceFacts): number {
  return ordinanceGal(Math.max(0, etoM - rainM), adjustment * areaM2 + (1 - adjustment) * specialAreaM2)
}

/** What one hydrozone is estimated to use in a year, in gallons: ETo × 0.62 × factor / efficiency × area. */
export function zoneUseGal(etoM: number, { factor, efficiency, areaM2 }: Hydrozone): number {
  return ordinanceGal(etoM, (factor / efficiency) * areaM2)
}

/** The ordinance counts in gallons; the plan in m³. */
export const gallonsM3 = (gallons: number): number => quantity(gallons, 'gal', 'volume').si

/** Special areas count in full. */
export const specialUseGal = (etoM: number, specialAreaM2: number): number => ordinanceGal(etoM, specialAreaM2)

/** Adjustment factor that the hydrozones come to, weighted by area; with `specialAreaM2` that of the whole site. NaN is never given: no area is 0. */
export function meanAdjustment(zones: readonly Hydrozone[], specialAreaM2: number): number {
  const area = sum(zones.map(zone => zone.areaM2)) + specialAreaM2
  const weighted = sum(zones.map(({ factor, efficiency, areaM2 }) => (factor / efficiency) * areaM2)) + specialAreaM2
  return area === 0 ? 0 : weighted / area
}
