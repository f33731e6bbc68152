import { describe, expect, it } from 'vitest'
import type { TableBlock } from '../../src/binder/blocks.ts'
import { tableView } from '../../src/render/table-view.ts'
import { computed, gap, measured, open, plate, stated } from '../look/values.ts'

const table = (columns: number, rows: TableBlock['rows']): TableBlock => ({
  kind: 'table',
  columns: Array.from({ length: columns }, (_, index) => ({ label: `C${index}` })),
  rows
})

describe('a table as it is set', () => {
  it('marks a column in its head when all its values came about in one way', () => {
    const view = tableView(
      table(2, [
        [stated('a'), computed('1')],
        [stated('b'), computed('2')]
      ])
    )
    expect(view.columns.map(column => column.standing)).toEqual([undefined, 'computed'])
    expect(view.rows.map(row => row.cells[1]?.marked)).toEqual([false, false])
  })

  it('marks each value where they differ, so that no guess hides among readings', () => {
    const view = tableView(table(1, [[computed('1')], [measured('2')]]))
    expect(view.columns[0]?.standing).toBeUndefined()
    expect(view.rows.map(row => row.cells[0]?.marked)).toEqual([true, true])
  })

  it('a stated value in a column of computed ones keeps the mark in the cells', () => {
    const view = tableView(table(1, [[computed('1')], [stated('2')]]))
    expect(view.columns[0]?.standing).toBeUndefined()
  })

  it('what is absent does not count and says so itself', () => {
    const view = tableView(table(1, [[plate('1')], [gap()], [plate('2')]]))
    expect(view.columns[0]?.standing).toBe('data-plate')
    expect(view.rows[1]?.cells[0]?.marked).toBe(true)
  })

  it('a calculation that made four cells of a row is named once, below, and has no number; others keep theirs', () => {
    const by = (name: string) => ({ ...computed('1'), note: name })
    const many = [stated('Z1'), by('run-time'), by('run-time'), by('run-time'), by('run-time'), by('wire-loop')]
    const view = tableView(table(6, [many, many]))
    expect(view.notes).toEqual(['calc run-time'])
    expect(view.columns.map(column => column.footnote)).toEqual([...new Array<undefined>(5), 1])
    expect(view.rows.flatMap(row => row.cells.map(cell => cell.footnote))).toEqual(new Array(12).fill(undefined))
    expect(tableView({ ...table(6, [many, many]), notes: ['Computed by run-time.'] }).notes).toEqual([
      'Computed by run-time.'
    ])
    const three = [stated('Z1'), by('run-time'), by('run-time'), by('run-time')]
    expect(tableView(table(4, [three, three])).notes).toEqual([])
  })

  it('a row without a name goes on with the one above, and its mark stands with the first name it has', () => {
    const made = [computed('1'), computed('2'), computed('3')]
    const view = tableView(
      table(5, [
        [stated('Z1'), stated('need'), ...made],
        [stated(''), stated('set'), ...made]
      ])
    )
    expect(view.rows.map(({ goesOn, marksAt }) => [goesOn, marksAt])).toEqual([
      [false, 0],
      [true, 1]
    ])
    const blank = tableView(table(2, [[{ ...stated(''), blank: 'text' }, stated('a')]]))
    expect(blank.rows[0]?.goesOn).toBe(false)
  })

  it('one value alone keeps its own mark', () => {
    expect(tableView(table(1, [[computed('1')]])).columns[0]?.standing).toBeUndefined()
  })

  it('marks a row after its name where the columns are mixed', () => {
    const rows = [
      [stated('percent'), stated('50'), stated('75'), stated('90')],
      [stated('Z1'), computed('10'), computed('15'), computed('18')]
    ]
    const view = tableView(table(4, rows))
    expect(view.rows.map(row => row.standing)).toEqual([undefined, 'computed'])
    expect(view.rows[1]?.cells.map(cell => cell.marked)).toEqual([true, false, false, false])
  })

  it('marks no row in which a plain number stands among computed ones', () => {
    const rows = [
      [stated('Z1'), computed('10'), stated('15'), computed('18'), computed('19')],
      [stated('x'), stated('1'), stated('2'), stated('3'), stated('4')]
    ]
    expect(tableView(table(5, rows)).rows[0]?.standing).toBeUndefined()
  })

  it('prints each reason once below, numbered in the order of reading', () => {
    const rows = [
      [open('No size.'), open('No flow.')],
      [open('No size.'), stated('2')]
    ]
    const view = tableView(table(2, rows))
    expect(view.footnotes).toEqual([
      { number: 1, text: 'No size.' },
      { number: 2, text: 'No flow.' }
    ])
    expect(view.rows.map(row => row.cells[0]?.footnote)).toEqual([1, 1])
  })

  it('a reason that a whole column shares stands in its head', () => {
    const view = tableView(table(1, [[computed('1', 'wire-loop')], [computed('2', 'wire-loop')]]))
    expect(view.columns[0]?.footnote).toBe(1)
    expect(view.rows[0]?.cells[0]?.footnote).toBeUndefined()
  })

  it('a table with no rows is a form to fill in', () => {
    expect(tableView({ ...table(2, []), blankRows: 3 })).toMatchObject({ rows: [], blankRows: 3, footnotes: [] })
  })
})
