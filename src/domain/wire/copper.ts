import { COPPER } from '../../reference/copper.ts'

/** Solid copper of 100 % IACS at 20 °C: 1/58 Ω·mm²/m over the area (NBS Handbook 100, 1966). */
export function solidCopperOhmPerM(areaMm2: number): number {
  return COPPER.ohmMm2PerM / areaMm2
}
