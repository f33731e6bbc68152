import { NEC_COPPER } from '../../reference/copper.ts'
import { NEC_TABLE_8 } from '../../reference/nec-ch9-t8.ts'
import { fromSi, quantity } from '../../units/quantity.ts'
import type { WireMake } from './make.ts'

/**
 * Resistance of an AWG size from NEC chapter 9, table 8 (75 °C), brought to `temperatureC` by the table's own factor of 0.00323 per °C.
 * Undefined where the table has no such size. 14 AWG stranded is 3.14 Ω per 1000 ft at 75 °C and 2.58 at 20 °C.
 */
export function necOhmPerM(
  gauge: number,
  make: WireMake,
  temperatureC: number
): { readonly ohmPerM: number; readonly words: string } | undefined {
  const row = NEC_TABLE_8.rows.find(one => one.gauge === gauge)
  const coated = make.coating === 'tinned'
  const solid = make.conductor === 'solid'
  const ohmPerKft = solid ? (coated ? row?.solidCoated : row?.solid) : coated ? row?.strandedCoated : row?.stranded
  if (ohmPerKft === undefined) return undefined
  const warmed = ohmPerKft * (1 + NEC_COPPER.perC * (temperatureC - NEC_COPPER.baseC))
  const words = `NEC chapter 9, table 8, ${solid ? 'solid' : 'stranded'}, ${coated ? 'coated' : 'uncoated'} copper`
  return { ohmPerM: quantity(warmed, 'ohm/kft', 'resistance-per-length').si, words }
}

/** The table's figure as printed, Ω per 1000 ft, from Ω/m. */
export const ohmPerKft = (ohmPerM: number): number => fromSi(ohmPerM, 'ohm/kft', 'resistance-per-length')
