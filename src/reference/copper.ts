/** Annealed copper of 100 % IACS at 20 °C (NBS Handbook 100, 1966): 1/58 Ω·mm²/m, and 0.00393 per °C from 20 °C. */
export const COPPER = { baseC: 20, ohmMm2PerM: 1 / 58, perC: 0.00393 } as const

/** The factor of IEC 60228 (2004) for copper conductors: 0.004 per °C from 20 °C. */
export const IEC_COPPER = { baseC: 20, perC: 0.004 } as const

/** NFPA 70, chapter 9, note to table 8: 0.00323 per °C from 75 °C for copper. */
export const NEC_COPPER = { baseC: 75, perC: 0.00323 } as const
