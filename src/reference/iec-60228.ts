/**
 * IEC 60228 (2004), tables 1 to 3: greatest direct-current resistance of copper conductors at 20 °C, Ω/km, by nominal area in mm².
 * Class 1 is solid, class 2 stranded, class 5 flexible. Classes 1 and 2 share their maxima at these sizes.
 */
export const IEC_60228 = {
  baseC: 20,
  rows: [
    { mm2: 0.5, plain12: 36.0, coated12: 36.7, plain5: 39.0, tinned5: 40.1 },
    { mm2: 0.75, plain12: 24.5, coated12: 24.8, plain5: 26.0, tinned5: 26.7 },
    { mm2: 1, plain12: 18.1, coated12: 18.2, plain5: 19.5, tinned5: 20.0 },
    { mm2: 1.5, plain12: 12.1, coated12: 12.2, plain5: 13.3, tinned5: 13.7 },
    { mm2: 2.5, plain12: 7.41, coated12: 7.56, plain5: 7.98, tinned5: 8.21 },
    { mm2: 4, plain12: 4.61, coated12: 4.7, plain5: 4.95, tinned5: 5.09 },
    { mm2: 6, plain12: 3.08, coated12: 3.11, plain5: 3.3, tinned5: 3.39 },
    { mm2: 10, plain12: 1.83, coated12: 1.84, plain5: 1.91, tinned5: 1.95 }
  ]
} as const

export type IecColumn = 'plain12' | 'coated12' | 'plain5' | 'tinned5'
