import type { Label, LabelSheet } from '../binder/pages.ts'
import { PLAIN_LABEL } from '../binder/label-size.ts'

/** Width and height, mm. ISO 216 and ANSI/ASME Y14.1. */
const SHEETS = { A4: [210, 297], Letter: [215.9, 279.4] } as const
/** Kept free at every side of a sheet: what printers cannot print on, and crop marks. */
const EDGE_MM = 7
/** Between labels, for the crop marks of both. */
const GAP_MM = 5
/** What the heading takes: along the right side, where that is free, or across the top. */
const HEAD_SIDE_MM = 8
const HEAD_TOP_MM = 12
/** Room for crop marks on every side of a label that has a sheet of its own. */
const MARKS_MM = 8

type Size = { readonly widthMm: number; readonly heightMm: number }

export interface PlacedLabel {
  readonly label: Label
  readonly leftMm: number
  readonly topMm: number
}

export interface LabelSheets {
  readonly widthMm: number
  readonly heightMm: number
  readonly head: 'side' | 'top' | 'none'
  readonly sheets: readonly (readonly PlacedLabel[])[]
}

/** As many labels on a sheet as have room with their crop marks, row by row; or each on a sheet of its own. */
export function labelSheets(view: Pick<LabelSheet, 'cut' | 'paper' | 'labels'>): LabelSheets {
  const [widthMm, heightMm] = paperMm(view)
  const size = view.cut ?? PLAIN_LABEL
  const grid = view.cut?.single ? ONE : gridOf(size, widthMm, heightMm)
  const each = grid.columns * grid.rows
  const place = (label: Label, index: number): PlacedLabel => ({
    label,
    leftMm: grid.leftMm + (index % grid.columns) * (size.widthMm + GAP_MM),
    topMm: grid.topMm + Math.floor(index / grid.columns) * (size.heightMm + GAP_MM)
  })
  const count = Math.ceil(view.labels.length / each)
  return {
    widthMm,
    heightMm,
    head: grid.head,
    sheets: Array.from({ length: count }, (_, at) => view.labels.slice(at * each, (at + 1) * each).map(place))
  }
}

interface Grid {
  readonly columns: number
  readonly rows: number
  readonly leftMm: number
  readonly topMm: number
  readonly head: LabelSheets['head']
}

const ONE: Grid = { columns: 1, rows: 1, leftMm: MARKS_MM, topMm: MARKS_MM, head: 'none' }

function gridOf(size: Size, widthMm: number, heightMm: number): Grid {
  const columns = fitting(widthMm, size.widthMm)
  const besideMm = widthMm - 2 * EDGE_MM - spanOf(columns, size.widthMm)
  const head = besideMm >= HEAD_SIDE_MM ? 'side' : 'top'
  const top = head === 'top' ? HEAD_TOP_MM : 0
  const rows = fitting(heightMm - top, size.heightMm)
  return { columns, rows, leftMm: EDGE_MM, topMm: EDGE_MM + top, head }
}

const fitting = (roomMm: number, sideMm: number): number =>
  Math.max(1, Math.floor((roomMm - 2 * EDGE_MM + GAP_MM) / (sideMm + GAP_MM) + 1e-9))

const spanOf = (count: number, sideMm: number): number => count * sideMm + (count - 1) * GAP_MM

function paperMm({ cut, paper }: Pick<LabelSheet, 'cut' | 'paper'>): readonly [number, number] {
  return cut?.single ? singleSheet(cut) : SHEETS[paper]
}

/** The size of the paper, as CSS writes it: one of the two sheets, or the label with room for its crop marks. */
export function labelPage(view: Pick<LabelSheet, 'cut' | 'paper'>): string {
  if (!view.cut?.single) return `@page{size:${view.paper === 'A4' ? 'A4' : 'letter'};margin:0}`
  const [width, height] = singleSheet(view.cut)
  return `@page{size:${width}mm ${height}mm;margin:0}`
}

export function singleSheet({ widthMm, heightMm }: Size): readonly [number, number] {
  return [widthMm + 2 * MARKS_MM, heightMm + 2 * MARKS_MM]
}
