import { isMap, isSeq, LineCounter, parseDocument } from 'yaml'
import { csvRows } from './csv.ts'
import type { CsvRow } from './csv.ts'
import { areaCell, groundOf } from './import-ground.ts'
import type { SourceText } from './loaded.ts'
import { oneLine } from './one-line.ts'
import { DEEPEST } from './yaml/plain.ts'

/** One thing of a surveyor's file, before it is held against a site. */
export interface ImportRow {
  /** Line of the file on which it begins; counts from 1. */
  readonly line: number
  /** Keys in small letters with hyphens; blank cells are left out. */
  readonly cells: Readonly<Record<string, string>>
}

export interface ImportTrouble {
  readonly line: number
  readonly message: string
  readonly fix: string
}

export type ReadRows =
  | {
      readonly ok: true
      readonly rows: readonly ImportRow[]
      readonly troubles: readonly ImportTrouble[]
      /** What was passed over, by what it is: shapes that are not points. */
      readonly passedOver: readonly string[]
    }
  | { readonly ok: false; readonly message: string; readonly fix: string }

/** Of a row by what it says of its kind, else by what it names: a station or its zone, not a box. */
export function isZone(cells: ImportRow['cells']): boolean {
  const said = cells['kind']?.toLowerCase() ?? ''
  if (/box/u.test(said)) return false
  if (/valve|zone|station/u.test(said)) return true
  return cells['station'] !== undefined || /\/\d+$/u.test(cells['id'] ?? '')
}

/** Rows of a CSV, or features of a GeoJSON, by what the file begins with. */
export function rowsOfFile(source: SourceText): ReadRows {
  const text = source.text.replace(/^\uFEFF/u, '')
  const read = /^\s*[{[]/u.test(text) ? rowsOfGeojson(text) : rowsOfCsv(text)
  if (!read.ok || read.rows.length > 0 || read.troubles.length > 0) return read
  return refused('The file holds no rows.', 'Write a line of column names and a line for each box or station below it.')
}

const refused = (message: string, fix: string): ReadRows => ({ ok: false, message, fix })

const SAME: ReadonlyMap<string, string> = new Map([
  ['lat', 'latitude'],
  ['lon', 'longitude'],
  ['lng', 'longitude'],
  ['long', 'longitude'],
  ['name', 'id'],
  ['type', 'kind'],
  ['color', 'colour']
])

function keyOf(head: string): string {
  const key = oneLine(head)
    .toLowerCase()
    .replace(/[\s_]+/gu, '-')
  return SAME.get(key) ?? key
}

function rowsOfCsv(text: string): ReadRows {
  const [head, ...filled] = csvRows(text).filter(({ cells }) => cells.some(cell => cell.trim() !== ''))
  const keys = (head?.cells ?? []).map(keyOf)
  const twice = keys.find((key, index) => key !== '' && keys.indexOf(key) !== index)
  if (twice !== undefined) return refused(`Two columns mean "${twice}".`, 'Keep the one that is right.')
  const grid = keys.find(key => /^(?:east|north)ing$|^[xy]$/u.test(key))
  if (grid !== undefined && !keys.includes('latitude'))
    return refused(`Column "${grid}" is of a local grid.`, 'Export latitude and longitude, WGS 84, in degrees.')
  const rows = filled.map(({ cells, line, delimiter }) => ({ line, cells: cellsOf(keys, cells, delimiter) }))
  return { ok: true, rows, troubles: filled.flatMap(row => rowTrouble(row, keys.length)), passedOver: [] }
}

function rowTrouble({ cells, line, brokenQuotes, delimiter }: CsvRow, columns: number): ImportTrouble[] {
  if (brokenQuotes)
    return [
      {
        line,
        message: 'A quotation mark of this row is not closed, or text follows one that is.',
        fix: 'Close it; within quotes write a quotation mark twice.'
      }
    ]
  if (cells.length === columns) return []
  const sign = { ';': 'semicolon', '\t': 'tab' }[delimiter] ?? 'comma'
  const message = `The row has ${cells.length} ${cells.length === 1 ? 'cell' : 'cells'}, the first line ${columns}.`
  return [{ line, message, fix: `Put text that holds a ${sign} in quotes.` }]
}

function cellsOf(keys: readonly string[], cells: readonly string[], delimiter: string): Record<string, string> {
  const pairs = keys.map((key, index) => [key, degreesOr(key, plainCell(cells[index] ?? ''), delimiter)] as const)
  return Object.fromEntries(pairs.filter(([key, cell]) => key !== '' && cell !== ''))
}

/** Undoes what keeps a cell from being a formula. */
function plainCell(cell: string): string {
  return oneLine(cell).replace(/^'(?=[=+\-@])/u, '')
}

/** Where semicolons or tabs part the cells, the comma of degrees is that of decimals: no angle has thousands. Amounts stay as written, since 1,950 may be either. */
function degreesOr(key: string, cell: string, delimiter: string): string {
  const isDegrees = delimiter !== ',' && (key === 'latitude' || key === 'longitude')
  return isDegrees ? cell.replace(/^([+-]?\d{1,3}),(\d+)$/u, '$1.$2') : cell
}

interface Feature {
  readonly id?: unknown
  readonly geometry?: { readonly type?: unknown; readonly coordinates?: unknown } | null
  readonly properties?: Readonly<Record<string, unknown>> | null
}

function rowsOfGeojson(text: string): ReadRows {
  const whole = parsedJson(text)
  if (whole === undefined) return refused('The file is not whole JSON.', 'Export it again.')
  const isOne = whole.type === 'Feature'
  if (!isOne && (whole.type !== 'FeatureCollection' || !Array.isArray(whole.features)))
    return refused('The file is not a GeoJSON FeatureCollection.', 'Export the points as GeoJSON, RFC 7946.')
  if (isDeeper(whole, DEEPEST))
    return refused('The file is nested far deeper than any GeoJSON.', 'Export the points as GeoJSON, RFC 7946.')
  const crs = JSON.stringify(whole.crs ?? '')
  if (whole.crs && !/CRS84|EPSG:+4326/u.test(crs))
    return refused(
      'The coordinates are of another reference system.',
      'Export longitude and latitude, WGS 84 (RFC 7946).'
    )
  const lines = featureLines(text)
  const features: readonly unknown[] = isOne ? [whole] : (whole.features as unknown[])
  const read = features.map((feature, index) => featureRow(feature, lines[index] ?? 1))
  return {
    ok: true,
    rows: read.flatMap(one => ('cells' in one ? [one] : [])),
    troubles: read.flatMap(one => ('cells' in one ? [] : [one])),
    passedOver: features.flatMap((feature, index) => shapeOf(feature, lines[index] ?? 1))
  }
}

function parsedJson(text: string): { type?: unknown; features?: unknown; crs?: unknown } | undefined {
  try {
    return (JSON.parse(text) as { type?: unknown } | null) ?? {}
  } catch {
    return undefined
  }
}

/** JSON is YAML, whose parser knows where each thing stands. */
function featureLines(text: string): number[] {
  const counter = new LineCounter()
  const root = parseDocument(text, { lineCounter: counter }).contents
  const features = isMap(root) ? root.get('features', true) : undefined
  if (!isSeq(features)) return []
  return features.items.map(item => counter.linePos((item as { range?: [number] | null }).range?.[0] ?? 0).line)
}

function isDeeper(value: unknown, levels: number): boolean {
  if (typeof value !== 'object' || value === null) return false
  return levels === 0 || Object.values(value).some(inner => isDeeper(inner, levels - 1))
}

function featureRow(feature: unknown, line: number): ImportRow | ImportTrouble {
  if (typeof feature !== 'object' || feature === null || Array.isArray(feature))
    return { line, message: 'This is no feature of GeoJSON.', fix: 'Export it again, or take it out.' }
  const { id, geometry, properties } = feature as Feature
  const pairs = Object.entries(properties ?? {}).map(([key, value]) => [keyOf(key), cellText(value)] as const)
  const own = Object.fromEntries(pairs.filter(([, value]) => value !== ''))
  const cells = { ...(typeof id === 'string' || typeof id === 'number' ? { id: String(id) } : {}), ...own }
  const at = pointOf(geometry)
  if (at === undefined) return groundRow(cells, geometry, line)
  const [longitude, latitude] = Array.isArray(at) ? (at as unknown[]) : []
  if (typeof longitude !== 'number' || typeof latitude !== 'number')
    return { line, message: 'The point has no coordinates.', fix: 'Write [longitude, latitude] in degrees.' }
  return { line, cells: { ...cells, latitude: String(latitude), longitude: String(longitude) } }
}

/** The ground of a zone gives its area, where the row does not state one; that of a box says nothing. */
function groundRow(cells: ImportRow['cells'], geometry: Feature['geometry'], line: number): ImportRow | ImportTrouble {
  const ground = isZone(cells) ? groundOf(geometry) : undefined
  if (ground === undefined) return { line, cells }
  if (ground === 'no-ground')
    return {
      line,
      message: 'The corners of this polygon enclose no ground.',
      fix: 'Give each ring four corners or more, [longitude, latitude] in degrees, the last as the first.'
    }
  return { line, cells: { area: areaCell(ground.areaM2), ...cells } }
}

/** Coordinates of a point, and of several points that are one: some programs write no other kind. */
function pointOf(geometry: Feature['geometry']): unknown {
  const { type, coordinates } = geometry ?? {}
  if (type === 'Point') return coordinates ?? null
  return type === 'MultiPoint' && Array.isArray(coordinates) && coordinates.length === 1
    ? (coordinates as unknown[])[0]
    : undefined
}

function shapeOf(feature: unknown, line: number): string[] {
  const { geometry } = (feature ?? {}) as Feature
  if (!geometry || pointOf(geometry) !== undefined) return []
  const row = featureRow(feature, line)
  if (!('cells' in row) || (isZone(row.cells) && groundOf(geometry) !== undefined)) return []
  return [`the ${typeof geometry.type === 'string' ? oneLine(geometry.type) : 'shape'} in line ${line}`]
}

function cellText(value: unknown): string {
  if (Array.isArray(value)) return value.map(cellText).join('; ')
  return typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean'
    ? oneLine(String(value))
    : ''
}
