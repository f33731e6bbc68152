import type { Label } from '../binder/pages.ts'

/**
 * A lid label is 180 × 84 mm: its diagonal of 199 mm lies inside a round lid of 10 in (254 mm) as well as inside a rectangular one of
 * 12 × 17 in (sizes of valve boxes from memory), and three stand on a sheet of A4 or of Letter. It grows downward where its words need it.
 */
export const LABEL_WIDTH_MM = 180
export const LABEL_HEIGHT_MM = 84

const PADDING_MM = 4
const GAP_MM = 3
/** A letter of the monospaced cut is 0.6 em wide; spacing between letters adds a little. */
const LETTER_EM = 0.62
const LARGEST_MM = 19

export interface LabelView {
  /** Height of the tag's type, mm, so that it fills the room between the two codes. */
  readonly tagMm: number
  /** How closely the stations are set. */
  readonly density: 'roomy' | 'close' | 'tight'
}

export function labelView(label: Label): LabelView {
  const room = LABEL_WIDTH_MM - 2 * (PADDING_MM + label.qr.sideMm + GAP_MM)
  const fits = room / (Math.max(label.tag.length, 1) * LETTER_EM)
  const count = label.stations.length
  const density = count <= 4 ? 'roomy' : count <= 9 ? 'close' : 'tight'
  return { tagMm: Math.floor(Math.min(LARGEST_MM, fits) * 10) / 10, density }
}
