import { sum } from '../base/collections.ts'
import type { Block, FigureSpec, TableBlock } from '../binder/blocks.ts'
import { isSmallFigure, SMALL_IN_A_ROW } from './small-figures.ts'

/** Height that a block takes on paper, mm, roughly: enough to tell half a sheet from a whole one. */
export function roughMm(block: Block): number {
  switch (block.kind) {
    case 'heading':
      return 14
    case 'paragraph':
      return 3 + 5 * Math.ceil(block.text.length / LETTERS)
    case 'facts':
      return 10 + sum(block.rows.map(({ value }) => 6 * Math.ceil((value.text.length + 1) / 60)))
    case 'table':
      return tableMm(block)
    case 'list':
      return 6 + sum(block.items.map(item => 5 * Math.ceil(item.length / LETTERS)))
    case 'not-supplied':
      return 18
    case 'figure':
      return FIGURES_MM[block.figure.figure] ?? 75
    default:
      return WHOLE_SHEET_MM
  }
}

/** Of blocks one below the other, mm; small drawings stand beside each other. */
export function roughSumMm(blocks: readonly Block[], wide: boolean): number {
  const small = blocks.filter(isSmallFigure).length
  const rows = Math.ceil(small / (wide ? SMALL_IN_A_ROW.wide : SMALL_IN_A_ROW.upright))
  return sum(blocks.filter(block => !isSmallFigure(block)).map(roughMm)) + SMALL_MM * rows
}

const SMALL_MM = 46

/** Of a paragraph in one line. */
const LETTERS = 95
const WHOLE_SHEET_MM = 240

const FIGURES_MM: Readonly<Partial<Record<FigureSpec['figure'], number>>> = {
  'need-given': SMALL_MM,
  'pressure-way': 70,
  'wire-run': 38
}

function tableMm({ rows, blankRows = 0, notes = [], columns }: TableBlock): number {
  const letters = 140 / columns.length
  const lines = rows.map(row => Math.max(1, ...row.map(({ text }) => Math.ceil(text.length / letters / 1.6))))
  return 20 + sum(lines.map(count => 2 + 4 * count)) + 9 * blankRows + 4 * notes.length
}
