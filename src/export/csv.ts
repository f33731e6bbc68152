import Papa from 'papaparse'

/** Told to spreadsheets, which take a file without it for an old code page and spoil "m²" and "Ω". Readers of CSV know to skip it. */
export const BYTE_ORDER_MARK = '\uFEFF'

export type Cell = string | number | null

/**
 * RFC 4180: CRLF, every text in quotes, so that a spreadsheet that parts cells at semicolons does not find one inside. Text that would be a
 * formula gets an apostrophe in front; numbers stay numbers.
 */
export function csvText(columns: readonly string[], rows: readonly (readonly Cell[])[]): string {
  const cells = rows.map(row => row.map(cell => (typeof cell === 'string' ? harmless(cell) : cell)))
  const quotes = (value: unknown) => typeof value === 'string'
  return `${Papa.unparse([[...columns], ...cells], { newline: '\r\n', quotes })}\r\n`
}

/** A sign that starts a formula, also behind spaces or in its wide form, and line ends that a cell may start with. */
function harmless(text: string): string {
  const bare = text.replace(/(?![\t\r\n])\p{Cc}/gu, '')
  return /^[\s\u00a0]*[=+\-@＝＋－＠\t\r\n|%]/u.test(bare) ? `'${bare}` : bare
}
