import Papa from 'papaparse'

export interface CsvRow {
  readonly cells: readonly string[]
  /** Line on which it starts, from 1. */
  readonly line: number
  /** Where it starts in the text. */
  readonly start: number
  readonly delimiter: string
}

/** Rows of a table in the order of the text, blank ones too. Spreadsheets write commas, semicolons or tabs, and quote cells that hold line ends. */
export function csvRows(text: string): CsvRow[] {
  const rows: CsvRow[] = []
  let start = 0
  let line = 1
  Papa.parse<string[]>(text, {
    delimitersToGuess: [',', ';', '\t'],
    step: ({ data, meta }) => {
      rows.push({ cells: data, line, start, delimiter: meta.delimiter })
      line += text.slice(start, meta.cursor).split('\n').length - 1
      start = meta.cursor
    }
  })
  return rows
}

/** Where a cell starts in the text: after so many delimiters that stand outside of quotes, spaces passed over. */
export function cellStart(text: string, { start, delimiter }: CsvRow, column: number): number {
  let at = start
  let passed = 0
  for (let quoted = false; passed < column && at < text.length; at += 1) {
    if (text[at] === '"') quoted = !quoted
    else if (!quoted && text[at] === delimiter) passed += 1
    else if (!quoted && text[at] === '\n') break
  }
  while (text[at] === ' ') at += 1
  return at
}
