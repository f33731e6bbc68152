import Papa from 'papaparse'
import { isTag } from '../domain/tags/tag.ts'
import { TAG_STATES } from '../model/fleet.ts'
import type { RegisteredTag, TagState } from '../model/fleet.ts'
import { parseDate } from '../units/date.ts'
import { fatalFault, mildFault, sortFaults } from './faults/fault.ts'
import { csvRows } from './csv.ts'
import { mergeMarks } from './fences.ts'
import { dateWrong } from './improve/date.ts'
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
  const marks = mergeMarks(lines.text)
  if (marks[0] !== undefined) {
    const details = { kind: 'merge', lines: marks.map(String) }
    return { tags: [], faults: [fatalFault('file/register', '', placeOfLine(lines, marks[0]), details)] }
  }
  const { head, rows } = rowsOf(lines.text)
  const missing = REGISTER_COLUMNS.filter(column => !head.includes(column))
  if (missing.length > 0) {
    const details = {
      kind: head.some(cell => isTag(cell.toUpperCase())) ? 'no-head' : 'columns',
      missing,
      columns: [...REGISTER_COLUMNS]
    }
    return { tags: [], faults: [fatalFault('file/register', '', placeOfLine(lines, 1), details)] }
  }
  const faults: Fault[] = []
  const tags = new Map<string, RegisteredTag>()
  for (const { row, line, brokenQuotes } of rows) {
    const fault = rowFault(lines, row, line, brokenQuotes) ?? sameTag(lines, tags.get(row.tag), row, line)
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
  readonly rows: readonly { readonly row: Row; readonly line: number; readonly brokenQuotes: boolean }[]
}

function rowsOf(text: string): Rows {
  const [first, ...others] = csvRows(text).filter(({ cells }) => cells.some(cell => cell.trim() !== ''))
  const head = (first?.cells ?? []).map(cell => cell.trim().toLowerCase())
  return {
    head,
    rows: others.map(({ cells, line, brokenQuotes }) => ({ row: rowOf(head, cells), line, brokenQuotes }))
  }
}

function rowOf(head: readonly string[], cells: readonly string[]): Row {
  const cell = (column: Column) => plainCell(cells[head.indexOf(column)] ?? '')
  return {
    tag: cell('tag'),
    site: cell('site'),
    box: cell('box'),
    state: cell('state').toLowerCase(),
    issued: cell('issued'),
    now: cell('now')
  }
}

/** Undoes what keeps a cell from being a formula. */
function plainCell(cell: string): string {
  return cell.trim().replace(/^'(?=[=+\-@\t\r])/u, '')
}

function rowFault(lines: Lines, row: Row, line: number, brokenQuotes: boolean): Fault | undefined {
  const fault = (kind: string, details: Fault['details'] = {}) =>
    mildFault('file/register', row.box, placeOfLine(lines, line), { kind, tag: row.tag, ...details })
  if (brokenQuotes) return fault('quotes')
  const blank = (['tag', 'site', 'box', 'state'] as const).find(column => row[column] === '')
  if (blank) return fault('blank', { column: blank })
  const large = row.tag.toUpperCase()
  if (!isTag(row.tag)) return fault('tag', isTag(large) ? { nearest: large } : {})
  if (!isState(row.state)) {
    const near = nearest(row.state, TAG_STATES)
    return fault('state', { state: row.state, known: TAG_STATES, ...(near === undefined ? {} : { nearest: near }) })
  }
  if (row.issued !== '' && !parseDate(row.issued))
    return fault('date', { issued: row.issued, candidates: dateWrong(row.issued).details['candidates'] ?? [] })
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
