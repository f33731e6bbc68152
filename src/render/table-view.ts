import type { Standing, TableBlock, Value } from '../binder/blocks.ts'

/** A table as it is set: which columns carry one mark for all their cells, and the notes below it, numbered. */
export interface TableView {
  readonly columns: readonly TableColumn[]
  readonly rows: readonly (readonly TableCell[])[]
  readonly footnotes: readonly { readonly number: number; readonly text: string }[]
  readonly notes: readonly string[]
  readonly blankRows: number
}

export interface TableColumn {
  readonly label: string
  readonly unit?: string
  readonly align: 'left' | 'right' | 'center'
  /** Every value of the column came about in this way, so the mark stands in the head alone. */
  readonly standing?: Standing
  readonly footnote?: number
}

export interface TableCell {
  readonly value: Value
  readonly align: TableColumn['align']
  readonly column: string
  /** False where the head of the column carries the mark. */
  readonly marked: boolean
  readonly footnote?: number
}

const WORDS_ARE_PLAIN: readonly Standing[] = ['stated', 'not-supplied', 'not-computed']

export function tableView(block: TableBlock): TableView {
  const texts: string[] = []
  const number = (text: string | undefined): number | undefined => {
    if (text === undefined || text === '') return undefined
    if (!texts.includes(text)) texts.push(text)
    return texts.indexOf(text) + 1
  }
  const columns = block.columns.map((column, index) => {
    const standing = sharedStanding(block.rows, index)
    const footnote = number(standing && sharedNote(block.rows, index))
    return {
      label: column.label,
      align: column.align ?? ('left' as const),
      ...(column.unit ? { unit: column.unit } : {}),
      ...(standing ? { standing } : {}),
      ...(footnote ? { footnote } : {})
    }
  })
  const rows = block.rows.map(row =>
    row.map((value, index): TableCell => {
      const column = columns[index]
      const footnote = column?.footnote ? undefined : number(value.note)
      const place = { value, align: column?.align ?? 'left', column: column?.label ?? '' }
      return { ...place, marked: column?.standing === undefined, ...(footnote ? { footnote } : {}) }
    })
  )
  const footnotes = texts.map((text, index) => ({ number: index + 1, text }))
  return { columns, rows, footnotes, notes: block.notes ?? [], blankRows: block.blankRows ?? 0 }
}

/** The one standing of a column of two values and more. Plain values need no mark, and an absence is said in every cell. */
function sharedStanding(rows: TableBlock['rows'], index: number): Standing | undefined {
  const values = valuesOf(rows, index)
  const first = values[0]?.standing
  if (values.length < 2 || first === undefined || WORDS_ARE_PLAIN.includes(first)) return undefined
  return values.every(({ standing }) => standing === first) ? first : undefined
}

function sharedNote(rows: TableBlock['rows'], index: number): string | undefined {
  const values = valuesOf(rows, index)
  const first = values[0]?.note
  return values.every(({ note }) => note === first) ? first : undefined
}

function valuesOf(rows: TableBlock['rows'], index: number): Value[] {
  return rows.flatMap(row => row[index] ?? []).filter(({ text }) => text !== '')
}
