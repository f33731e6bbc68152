/**
 * NFPA 70, National Electrical Code, chapter 9, table 8: direct-current resistance of copper conductors at 75 °C, Ω per 1000 ft.
 * `solid` and `stranded` are uncoated, the others coated; stranded means 7 wires to 2 AWG and 19 from 1 AWG. 1/0 counts as 0.
 */
export interface NecRow {
  readonly gauge: number
  readonly solid?: number
  readonly solidCoated?: number
  readonly stranded: number
  readonly strandedCoated: number
}

export const NEC_TABLE_8: { readonly baseC: number; readonly rows: readonly NecRow[] } = {
  baseC: 75,
  rows: [
    { gauge: 18, solid: 7.77, solidCoated: 8.08, stranded: 7.95, strandedCoated: 8.45 },
    { gauge: 16, solid: 4.89, solidCoated: 5.08, stranded: 4.99, strandedCoated: 5.29 },
    { gauge: 14, solid: 3.07, solidCoated: 3.19, stranded: 3.14, strandedCoated: 3.26 },
    { gauge: 12, solid: 1.93, solidCoated: 2.01, stranded: 1.98, strandedCoated: 2.05 },
    { gauge: 10, solid: 1.21, solidCoated: 1.26, stranded: 1.24, strandedCoated: 1.29 },
    { gauge: 8, solid: 0.764, solidCoated: 0.786, stranded: 0.778, strandedCoated: 0.809 },
    { gauge: 6, stranded: 0.491, strandedCoated: 0.51 },
    { gauge: 4, stranded: 0.308, strandedCoated: 0.321 },
    { gauge: 3, stranded: 0.245, strandedCoated: 0.254 },
    { gauge: 2, stranded: 0.194, strandedCoated: 0.201 },
    { gauge: 1, stranded: 0.154, strandedCoated: 0.16 },
    { gauge: 0, stranded: 0.122, strandedCoated: 0.127 },
    { gauge: -1, stranded: 0.0967, strandedCoated: 0.101 },
    { gauge: -2, stranded: 0.0766, strandedCoated: 0.0797 },
    { gauge: -3, stranded: 0.0608, strandedCoated: 0.0626 }
  ]
}
