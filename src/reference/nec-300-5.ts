/**
 * NFPA 70-2023, National Electrical Code, table 300.5(A) (table 300.5 in editions before 2023): least cover in inches, 0 to 1000 V.
 * Cover is measured to the top of the cable, not to the trench's floor. The table prints millimeters of its own beside the inches.
 */
export const COVER_COLUMNS = [
  'direct burial',
  'rigid metal conduit',
  'nonmetallic raceway',
  '120 V 20 A with GFCI',
  'irrigation control 30 V or less'
] as const
export type CoverColumn = (typeof COVER_COLUMNS)[number]

export const COVER_LOCATIONS = [
  'open ground',
  'trench under 2 in concrete',
  'under a building',
  'under a 4 in slab without vehicles',
  'street, road, driveway or parking lot',
  'one- or two-family driveway',
  'airport runway'
] as const
export type CoverLocation = (typeof COVER_LOCATIONS)[number]

/** Inches of cover; where a cell differs by method, the second figure is for a raceway. */
type Cell = number | readonly [direct: number, raceway: number]

export const NEC_300_5: Readonly<Record<CoverLocation, readonly [Cell, Cell, Cell, Cell, Cell]>> = {
  'open ground': [24, 6, 18, 12, 6],
  'trench under 2 in concrete': [18, 6, 12, 6, 6],
  'under a building': [0, 0, 0, 0, 0],
  'under a 4 in slab without vehicles': [18, 4, 4, [6, 4], [6, 4]],
  'street, road, driveway or parking lot': [24, 24, 24, 24, 24],
  'one- or two-family driveway': [18, 18, 18, 12, 18],
  'airport runway': [18, 18, 18, 18, 18]
}

/** The millimeters that the table prints beside its inches; a cover stated in millimeters is held against these. */
export const COVER_MM: Readonly<Record<number, number>> = { 0: 0, 4: 100, 6: 150, 12: 300, 18: 450, 24: 600 }

/** Column 5 holds up to this voltage. */
export const COVER_COLUMN_5_MAX_V = 30
