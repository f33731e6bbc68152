import Papa from 'papaparse'

export interface CsvRow {
  readonly cells: readonly string[]
  /** Line on which it starts, from 1. */
  readonly line: number
  /** Where it starts in the text. */
  readonly start: number
  readonly delimiter: string
  /** A quotation mark that is opened in this row and closed nowhere, or text behind a closed one. */
  readonly brokenQuotes: boolean
}

const DELIMITERS = [',', ';', '\t'] as const

/** Rows of a table in the order of the text, blank ones too. Spreadsheets write commas, semicolons or tabs, and quote cells that hold line ends. */
export function csvRows(text: string): CsvRow[] {
  const rows: CsvRow[] = []
  let start = 0
  let line = 1
  const delimiter = delimiterOf(text)
  Papa.parse<string[]>(text, {
    delimiter,
    step: ({ data, meta, errors }) => {
      const brokenQuotes = errors.some(one => one.type === 'Quotes')
      rows.push({ cells: data, line, start, delimiter, brokenQuotes })
      line += text.slice(start, meta.cursor).split(/\r\n|\r|\n/u).length - 1
      start = meta.cursor
    }
  })
  return rows
}

/** The one that stands most often in the first line that is not blank, outside of quotes; the comma where none does. */
function delimiterOf(text: string): string {
  const [head = ''] = /^.*\S.*$/mu.exec(text) ?? []
  const bare = head.replace(/"(?:[^"]|"")*"/gu, '')
  const count = (of: string): number => bare.split(of).length - 1
  return DELIMITERS.reduce<string>((best, one) => (count(one) > count(best) ? one : best), ',')
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
