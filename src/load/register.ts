import Papa from 'papaparse'
import { isTag } from '../domain/tags/tag.ts'
import { TAG_STATES } from '../model/fleet.ts'
import type { RegisteredTag, TagState } from '../model/fleet.ts'
import { parseDate } from '../units/date.ts'
import { fatalFault, mildFault, sortFaults } from './faults/fault.ts'
import { nearest } from './improve/nearest.ts'
import { linesOfData, placeOfLine } from './lines.ts'
import type { Lines } from './lines.ts'
import type { Fault, SourceText } from './loaded.ts'

export const REGISTER_COLUMNS = ['tag', 'site', 'box', 'state', 'issued', 'now'] as const
type Column = (typeof REGISTER_COLUMNS)[number]
type Row = Readonly<Record<Column, string>>

export interface LoadedRegister {
  readonly tags: readonly RegisteredTag[]
  readonly faults: readonly Fault[]
}

/**
 * The register of tags, sites/tags.csv. A line that cannot be taken is left out and told of; the others stand, since a printed code must
 * stay answerable whatever happened to its neighbor. A tag's place is its line: `path` is the line's number.
 */
export function loadRegister(source: SourceText): LoadedRegister {
  const lines = linesOfData(source)
  if (source.trouble) {
    const details = { kind: 'unreadable', trouble: source.trouble }
    return { tags: [], faults: [fatalFault('file/register', '', placeOfLine(lines, 1), details)] }
  }
  if (lines.text.trim() === '') {
    const details = { kind: 'empty', columns: [...REGISTER_COLUMNS] }
    return { tags: [], faults: [fatalFault('file/register', '', placeOfLine(lines, 1), details)] }
  }
  const { head, rows } = rowsOf(lines.text)
  const missing = REGISTER_COLUMNS.filter(column => !head.includes(column))
  if (missing.length > 0) {
    const details = { kind: 'columns', missing, columns: [...REGISTER_COLUMNS] }
    return { tags: [], faults: [fatalFault('file/register', '', placeOfLine(lines, 1), details)] }
  }
  const faults: Fault[] = []
  const tags = new Map<string, RegisteredTag>()
  for (const { row, line } of rows) {
    const fault = rowFault(lines, row, line) ?? sameTag(lines, tags.get(row.tag), row, line)
    if (fault) faults.push(fault)
    else tags.set(row.tag, registered(source.file, row, line))
  }
  return { tags: [...tags.values()], faults: sortFaults(faults) }
}

/** The register as a spreadsheet opens it safely: a cell that would be a formula is kept as text. Lines end in LF. */
export function writeRegister(tags: readonly Omit<RegisteredTag, 'at'>[]): string {
  const rows = tags.map(({ tag, site, box, state, issued = '', now = '' }) => [tag, site, box, state, issued, now])
  return `${Papa.unparse([[...REGISTER_COLUMNS], ...rows], { newline: '\n', escapeFormulae: true })}\n`
}

interface Rows {
  readonly head: readonly string[]
  readonly rows: readonly { readonly row: Row; readonly line: number }[]
}

/** Spreadsheets write commas, semicolons or tabs, and quote cells that hold line ends; each row knows the line it starts on. */
function rowsOf(text: string): Rows {
  const parsed: { cells: readonly string[]; line: number }[] = []
  let start = 0
  let line = 1
  Papa.parse<string[]>(text, {
    delimitersToGuess: [',', ';', '\t'],
    step: ({ data, meta }) => {
      parsed.push({ cells: data, line })
      line += text.slice(start, meta.cursor).split('\n').length - 1
      start = meta.cursor
    }
  })
  const [first, ...others] = parsed
  const head = (first?.cells ?? []).map(cell => cell.trim().toLowerCase())
  const filled = others.filter(({ cells }) => cells.some(cell => cell.trim() !== ''))
  return { head, rows: filled.map(({ cells, line: at }) => ({ row: rowOf(head, cells), line: at })) }
}

function rowOf(head: readonly string[], cells: readonly string[]): Row {
  const cell = (column: Column) => plainCell(cells[head.indexOf(column)] ?? '')
  return {
    tag: cell('tag'),
    site: cell('site'),
    box: cell('box'),
    state: cell('state'),
    issued: cell('issued'),
    now: cell('now')
  }
}

/** Undoes what keeps a cell from being a formula. */
function plainCell(cell: string): string {
  return cell.trim().replace(/^'(?=[=+\-@\t\r])/u, '')
}

function rowFault(lines: Lines, row: Row, line: number): Fault | undefined {
  const fault = (kind: string, details: Fault['details'] = {}) =>
    mildFault('file/register', row.box, placeOfLine(lines, line), { kind, tag: row.tag, ...details })
  const blank = (['tag', 'site', 'box', 'state'] as const).find(column => row[column] === '')
  if (blank) return fault('blank', { column: blank })
  if (!isTag(row.tag)) return fault('tag')
  if (!isState(row.state)) {
    const near = nearest(row.state, TAG_STATES)
    return fault('state', { state: row.state, known: TAG_STATES, ...(near === undefined ? {} : { nearest: near }) })
  }
  if (row.issued !== '' && !parseDate(row.issued)) return fault('date', { issued: row.issued })
  return row.state === 'replaced' && !isTag(row.now) ? fault('now', { now: row.now }) : undefined
}

function sameTag(lines: Lines, first: RegisteredTag | undefined, row: Row, line: number): Fault | undefined {
  if (!first) return undefined
  const firstPlace = placeOfLine(lines, Number(first.at.path[0]))
  const details = { id: row.tag, kind: 'tags', firstLine: firstPlace.line }
  const fault = mildFault('file/duplicate-id', row.box, placeOfLine(lines, line), details)
  return { ...fault, related: [{ place: firstPlace, note: `${row.tag} stands here first` }] }
}

function registered(file: string, row: Row, line: number): RegisteredTag {
  const issued = parseDate(row.issued)
  return {
    at: { file, path: [line] },
    tag: row.tag,
    site: row.site,
    box: row.box,
    state: row.state as TagState,
    ...(issued ? { issued } : {}),
    ...(row.now === '' ? {} : { now: row.now })
  }
}

function isState(text: string): text is TagState {
  return (TAG_STATES as readonly string[]).includes(text)
}
