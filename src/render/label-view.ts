import type { Label, LabelSheet } from '../binder/pages.ts'
import { PLAIN_LABEL } from '../binder/label-size.ts'
import type { QrSpec } from '../binder/blocks.ts'

/** A smaller label is drawn on the plain one's scale and made smaller as a whole, but no smaller than type that can be read at an open box. */
const SMALLEST = 0.62
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
  /** What the drawing is made smaller or larger by; all that follows is measured before that. */
  readonly zoom: number
  readonly widthMm: number
  readonly heightMm: number
  readonly qr: QrSpec
  readonly spare?: QrSpec
}

export function labelView(label: Label, cut: LabelSheet['cut'] = { ...PLAIN_LABEL, single: false }): LabelView {
  const fit = Math.min(cut.widthMm / PLAIN_LABEL.widthMm, cut.heightMm / PLAIN_LABEL.heightMm)
  const zoom = Math.min(1, Math.max(SMALLEST, fit))
  const [widthMm, heightMm] = [cut.widthMm / zoom, cut.heightMm / zoom]
  const drawn = (qr: QrSpec): QrSpec => ({ ...qr, moduleMm: qr.moduleMm / zoom, sideMm: qr.sideMm / zoom })
  const qr = drawn(label.qr)
  const room = widthMm - 2 * (PADDING_MM + qr.sideMm + GAP_MM)
  const fits = room / (Math.max(label.tag.length, 1) * LETTER_EM)
  const count = label.stations.length
  const density = count <= 4 ? 'roomy' : count <= 9 ? 'close' : 'tight'
  return {
    tagMm: Math.floor(Math.min(LARGEST_MM, fits) * 10) / 10,
    density,
    zoom,
    widthMm,
    heightMm,
    qr,
    ...(label.spare ? { spare: drawn(label.spare) } : {})
  }
}

/** The size of the paper, as CSS writes it: one of the two sheets, or the label with room for its crop marks. */
export function labelPage({ cut, paper }: Pick<LabelSheet, 'cut' | 'paper'>): string {
  if (!cut?.single) return `@page{size:${paper === 'A4' ? 'A4' : 'letter'}}`
  const [width, height] = singleSheet(cut)
  return `@page{size:${width}mm ${height}mm;margin:0}`
}

/** Room for crop marks on every side of a label that has a sheet of its own. */
const MARKS_MM = 8

export function singleSheet({
  widthMm,
  heightMm
}: {
  readonly widthMm: number
  readonly heightMm: number
}): readonly [number, number] {
  return [widthMm + 2 * MARKS_MM, heightMm + 2 * MARKS_MM]
}
