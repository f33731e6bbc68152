/** A reference evapotranspiration zone: inches in each month, January first, and the total printed with the row, which checks it. */
export interface EtoZone {
  readonly zone: number
  readonly etoIn: readonly number[]
  readonly totalIn: number
}

/**
 * California's zones of reference evapotranspiration, CIMIS map, Department of Water Resources, 1999 (read in three copies). Copies in circulation
 * differ in zones 5, 7, 8, 9 and 14 by slips of the pen; each row here adds up to its total, and each value is a daily figure of two places times the
 * days of its month. Zone 14, December: one copy prints 1.24; 1.55 fits the total that the map prints (from memory).
 */
export const ETO_ZONES: readonly EtoZone[] = [
  { zone: 1, etoIn: [0.93, 1.4, 2.48, 3.3, 4.03, 4.5, 4.65, 4.03, 3.3, 2.48, 1.2, 0.62], totalIn: 32.92 },
  { zone: 2, etoIn: [1.24, 1.68, 3.1, 3.9, 4.65, 5.1, 4.96, 4.65, 3.9, 2.79, 1.8, 1.24], totalIn: 39.01 },
  { zone: 3, etoIn: [1.86, 2.24, 3.72, 4.8, 5.27, 5.7, 5.58, 5.27, 4.2, 3.41, 2.4, 1.86], totalIn: 46.31 },
  { zone: 4, etoIn: [1.86, 2.24, 3.41, 4.5, 5.27, 5.7, 5.89, 5.58, 4.5, 3.41, 2.4, 1.86], totalIn: 46.62 },
  { zone: 5, etoIn: [0.93, 1.68, 2.79, 4.2, 5.58, 6.3, 6.51, 5.89, 4.5, 3.1, 1.5, 0.93], totalIn: 43.91 },
  { zone: 6, etoIn: [1.86, 2.24, 3.41, 4.8, 5.58, 6.3, 6.51, 6.2, 4.8, 3.72, 2.4, 1.86], totalIn: 49.68 },
  { zone: 7, etoIn: [0.62, 1.4, 2.48, 3.9, 5.27, 6.3, 7.44, 6.51, 4.8, 2.79, 1.2, 0.62], totalIn: 43.33 },
  { zone: 8, etoIn: [1.24, 1.68, 3.41, 4.8, 6.2, 6.9, 7.44, 6.51, 5.1, 3.41, 1.8, 0.93], totalIn: 49.42 },
  { zone: 9, etoIn: [2.17, 2.8, 4.03, 5.1, 5.89, 6.6, 7.44, 6.82, 5.7, 4.03, 2.7, 1.86], totalIn: 55.14 },
  { zone: 10, etoIn: [0.93, 1.68, 3.1, 4.5, 5.89, 7.2, 8.06, 7.13, 5.1, 3.1, 1.5, 0.93], totalIn: 49.12 },
  { zone: 11, etoIn: [1.55, 2.24, 3.1, 4.5, 5.89, 7.2, 8.06, 7.44, 5.7, 3.72, 2.1, 1.55], totalIn: 53.05 },
  { zone: 12, etoIn: [1.24, 1.96, 3.41, 5.1, 6.82, 7.8, 8.06, 7.13, 5.4, 3.72, 1.8, 0.93], totalIn: 53.37 },
  { zone: 13, etoIn: [1.24, 1.96, 3.1, 4.8, 6.51, 7.8, 8.99, 7.75, 5.7, 3.72, 1.8, 0.93], totalIn: 54.3 },
  { zone: 14, etoIn: [1.55, 2.24, 3.72, 5.1, 6.82, 7.8, 8.68, 7.75, 5.7, 4.03, 2.1, 1.55], totalIn: 57.04 },
  { zone: 15, etoIn: [1.24, 2.24, 3.72, 5.7, 7.44, 8.1, 8.68, 7.75, 5.7, 4.03, 2.1, 1.24], totalIn: 57.94 },
  { zone: 16, etoIn: [1.55, 2.52, 4.03, 5.7, 7.75, 8.7, 9.3, 8.37, 6.3, 4.34, 2.4, 1.55], totalIn: 62.51 },
  { zone: 17, etoIn: [1.86, 2.8, 4.65, 6, 8.06, 9, 9.92, 8.68, 6.6, 4.34, 2.7, 1.86], totalIn: 66.47 },
  { zone: 18, etoIn: [2.48, 3.36, 5.27, 6.9, 8.68, 9.6, 9.61, 8.68, 6.9, 4.96, 3, 2.17], totalIn: 71.61 }
]

/** 1 to 18; undefined for any other number. */
export const etoZone = (zone: number): EtoZone | undefined => ETO_ZONES.find(one => one.zone === zone)
