import type { Block } from '../binder/blocks.ts'

/** Drawings that stand beside each other, several in a row. */
export const isSmallFigure = (block: Block | undefined): boolean =>
  block?.kind === 'figure' && block.figure.figure === 'need-given'

/** How many of them stand in one row, on upright and on turned paper, as the style sheet has it. */
export const SMALL_IN_A_ROW = { upright: 3, wide: 4 } as const

/** Rows that stay on one sheet; of more the last two do. */
const ROWS_TOGETHER = 2

/** Whether a run of them opens or closes at a block, and whether it is short enough for one sheet. */
export function smallRun(
  blocks: readonly Block[],
  index: number
): { readonly opens: boolean; readonly closes: boolean; readonly together: boolean } {
  if (!isSmallFigure(blocks[index])) return { opens: false, closes: false, together: false }
  const end = blocks.findIndex((block, at) => at > index && !isSmallFigure(block))
  const count = (end === -1 ? blocks.length : end) - index
  return {
    opens: !isSmallFigure(blocks[index - 1]),
    closes: !isSmallFigure(blocks[index + 1]),
    together: count <= ROWS_TOGETHER * SMALL_IN_A_ROW.upright
  }
}
