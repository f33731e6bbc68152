import { describe, expect, it } from 'vitest'
import type { Block } from '../../src/binder/blocks.ts'
import { runsOfPaper } from '../../src/render/binder-parts.ts'
import { roughSumMm } from '../../src/render/rough-height.ts'
import { smallRun } from '../../src/render/small-figures.ts'
import { WATER_FIGURES } from '../look/water-figures.ts'

const small = WATER_FIGURES.find(one => one.kind === 'figure' && one.figure.figure === 'need-given') as Block
const words: Block = { kind: 'paragraph', text: 'a' }
const heading: Block = { kind: 'heading', id: 'h', text: 'h' }
const table = (lines: number): Block => ({ kind: 'table', wide: true, columns: [], rows: [], blankRows: lines })
const long: Block = { kind: 'table', columns: [], rows: [], blankRows: 20 }
const smalls = (count: number): Block[] => Array.from({ length: count }, () => small)

describe('small drawings beside each other', () => {
  it('open a row at the first and close it at the last, wherever they stand', () => {
    const told = (blocks: readonly Block[]) =>
      blocks.map((_, index) => {
        const { opens, closes } = smallRun(blocks, index)
        return `${opens ? '<' : ''}${closes ? '>' : ''}`
      })
    expect(told([words, small, small, words, small])).toEqual(['', '<', '>', '', '<>'])
    expect(told([small])).toEqual(['<>'])
  })

  it('stay on one sheet up to two rows', () => {
    expect([3, 6, 7].map(count => smallRun([...smalls(count), words], 0).together)).toEqual([true, true, false])
  })

  it('count by the row: three on upright paper, four on turned', () => {
    expect(roughSumMm(smalls(3), false)).toBe(roughSumMm(smalls(1), false))
    expect(roughSumMm(smalls(4), false)).toBe(2 * roughSumMm(smalls(1), false))
    expect(roughSumMm(smalls(4), true)).toBe(roughSumMm(smalls(1), true))
  })

  it('stand with their heading on the turned sheet of the table after them where one sheet holds all, else before it', () => {
    const kinds = (blocks: readonly Block[]) => runsOfPaper(blocks).map(run => [run.wide, run.blocks.length])
    expect(kinds([long, heading, ...smalls(4), table(8)])).toEqual([
      [false, 1],
      [true, 6]
    ])
    expect(kinds([long, heading, ...smalls(4), table(20)])).toEqual([
      [false, 6],
      [true, 1]
    ])
  })
})
