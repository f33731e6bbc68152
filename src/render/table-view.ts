import type { Standing, TableBlock, Value } from '../binder/blocks.ts'

/** A table as it is set: which columns carry one mark for all their cells, and the notes below it, numbered. */
export interface TableView {
  readonly columns: readonly TableColumn[]
  readonly rows: readonly TableRow[]
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

export interface TableRow {
  readonly cells: readonly TableCell[]
  /** Every value of the row after its stated names came about in this way, so the mark stands with the names. */
  readonly standing?: Standing
  /** The name that carries the mark of the row: the first that is there. */
  readonly marksAt: number
  /** It has no name of its own and goes on with the row above. */
  readonly goesOn: boolean
  /** What it heads follows: no sheet ends with it. */
  readonly leads: boolean
}

export interface TableCell {
  readonly value: Value
  readonly align: TableColumn['align']
  /** False where the head of the column or the start of the row carries the mark. */
  readonly marked: boolean
  readonly footnote?: number
}

/** A dash says that there is none; how it came to be known is no matter. */
const isNothing = (text: string): boolean => text === '' || text === '–'

const isAbsence = (standing: Standing): boolean => standing === 'not-supplied' || standing === 'not-computed'

export function tableView(block: TableBlock): TableView {
  const often = namedOften(block)
  const texts: string[] = []
  const number = (text: string | undefined): number | undefined => {
    if (text === undefined || text === '' || often.includes(text)) return undefined
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
  const rows = block.rows.map((row, at): TableRow => {
    const rowStanding = standingOfRow(row, columns)
    const cells = row.map((value, index): TableCell => {
      const column = columns[index]
      const inHead = column?.standing === value.standing
      const bare = isNothing(value.text) || (inHead && column?.footnote !== undefined)
      const footnote = bare ? undefined : number(value.note)
      const marked = !isNothing(value.text) && !inHead && value.standing !== rowStanding
      return { value, align: column?.align ?? 'left', marked, ...(footnote ? { footnote } : {}) }
    })
    const marksAt = Math.max(
      0,
      row.findIndex(value => value.text !== '')
    )
    return {
      cells,
      marksAt,
      goesOn: marksAt > 0 && !row[0]?.blank,
      leads: block.leads?.includes(at) === true,
      ...(rowStanding ? { standing: rowStanding } : {})
    }
  })
  const footnotes = texts.map((text, index) => ({ number: index + 1, text }))
  const said = block.notes ?? []
  const unsaid = often.filter(name => !said.some(note => note.includes(name)))
  const notes = [...said, ...(unsaid.length > 0 ? [`calc ${unsaid.join(', ')}`] : [])]
  return { columns, rows, footnotes, notes, blankRows: block.blankRows ?? 0 }
}

/** The name of a calculation, as `calc` takes it. */
const CALCULATION = /^[a-z]+(-[a-z0-9]+)+$/u
/** A number at so many columns or more of one row says nothing: the name then stands once, below the table. */
const OFTEN = 4

function namedOften({ rows }: TableBlock): readonly string[] {
  const counts = rows.map(row => {
    const names = row.flatMap(({ note = '', standing }) =>
      standing === 'computed' && CALCULATION.test(note) ? [note] : []
    )
    return [...new Set(names)].filter(name => names.filter(one => one === name).length >= OFTEN)
  })
  return [...new Set(counts.flat())]
}

/** The one standing of a column of two values and more. What is absent says so in its own cell and does not count. */
function sharedStanding(rows: TableBlock['rows'], index: number): Standing | undefined {
  const values = valuesOf(rows, index)
  const first = values[0]?.standing
  if (values.length < 2 || first === undefined || first === 'stated') return undefined
  return values.every(({ standing }) => standing === first) ? first : undefined
}

/** A row of names and then numbers of one kind, where the columns do not say it already. */
function standingOfRow(row: readonly Value[], columns: readonly TableColumn[]): Standing | undefined {
  const first = row.findIndex(({ standing }) => standing !== 'stated')
  const numbers = row.filter(({ text, standing }, index) => {
    return index >= first && !isNothing(text) && !isAbsence(standing) && columns[index]?.standing !== standing
  })
  const standing = numbers[0]?.standing
  if (first < 1 || numbers.length < 3 || standing === 'stated') return undefined
  return numbers.every(value => value.standing === standing) ? standing : undefined
}

function sharedNote(rows: TableBlock['rows'], index: number): string | undefined {
  const values = valuesOf(rows, index)
  const first = values[0]?.note
  return values.every(({ note }) => note === first) ? first : undefined
}

function valuesOf(rows: TableBlock['rows'], index: number): Value[] {
  return rows.flatMap(row => row[index] ?? []).filter(({ text, standing }) => !isNothing(text) && !isAbsence(standing))
}
