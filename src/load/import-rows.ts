import Papa from 'papaparse'
import { isMap, isSeq, LineCounter, parseDocument } from 'yaml'
import type { SourceText } from './loaded.ts'

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
  | { readonly ok: true; readonly rows: readonly ImportRow[]; readonly troubles: readonly ImportTrouble[] }
  | { readonly ok: false; readonly message: string; readonly fix: string }

/** Rows of a CSV, or features of a GeoJSON, by what the file begins with. */
export function rowsOfFile(source: SourceText): ReadRows {
  const text = source.text.replace(/^\uFEFF/u, '')
  return /^\s*\{/u.test(text) ? rowsOfGeojson(text) : rowsOfCsv(text)
}

const SAME: Readonly<Record<string, string>> = {
  lat: 'latitude',
  lon: 'longitude',
  lng: 'longitude',
  long: 'longitude',
  name: 'id',
  type: 'kind',
  color: 'colour'
}

function keyOf(head: string): string {
  const key = head
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/gu, '-')
  return SAME[key] ?? key
}

function rowsOfCsv(text: string): ReadRows {
  const records: { readonly cells: readonly string[]; readonly line: number }[] = []
  let [start, line] = [0, 1]
  Papa.parse<string[]>(text, {
    delimitersToGuess: [',', ';', '\t'],
    step: ({ data, meta }) => {
      records.push({ cells: data, line })
      line += text.slice(start, meta.cursor).split('\n').length - 1
      start = meta.cursor
    }
  })
  const [head, ...others] = records
  const keys = (head?.cells ?? []).map(keyOf)
  const twice = keys.find((key, index) => key !== '' && keys.indexOf(key) !== index)
  if (twice !== undefined)
    return { ok: false, message: `Two columns mean "${twice}".`, fix: 'Keep the one that is right.' }
  const grid = keys.find(key => /^(?:east|north)ing$|^[xy]$/u.test(key))
  if (grid !== undefined && !keys.includes('latitude'))
    return {
      ok: false,
      message: `Column "${grid}" is of a local grid.`,
      fix: 'Export latitude and longitude, WGS 84, in degrees.'
    }
  const filled = others.filter(({ cells }) => cells.some(cell => cell.trim() !== ''))
  const troubles = filled
    .filter(({ cells }) => cells.length !== keys.length)
    .map(one => ({
      line: one.line,
      message: `The row has ${one.cells.length} cells, the first line ${keys.length}.`,
      fix: 'Put text that holds a comma in quotes.'
    }))
  const rows = filled.map(({ cells, line: at }) => ({ line: at, cells: cellsOf(keys, cells) }))
  return { ok: true, rows, troubles }
}

function cellsOf(keys: readonly string[], cells: readonly string[]): Record<string, string> {
  const pairs = keys.map((key, index) => [key, plainCell(cells[index] ?? '')] as const)
  return Object.fromEntries(pairs.filter(([key, cell]) => key !== '' && cell !== ''))
}

/** Undoes what keeps a cell from being a formula. */
function plainCell(cell: string): string {
  return cell.trim().replace(/^'(?=[=+\-@])/u, '')
}

interface Feature {
  readonly id?: unknown
  readonly geometry?: { readonly type?: unknown; readonly coordinates?: unknown } | null
  readonly properties?: Readonly<Record<string, unknown>> | null
}

function rowsOfGeojson(text: string): ReadRows {
  const no = (message: string, fix: string): ReadRows => ({ ok: false, message, fix })
  const whole = parsedJson(text)
  if (whole === undefined) return no('The file is not whole JSON.', 'Export it again.')
  if (whole.type !== 'FeatureCollection' || !Array.isArray(whole.features))
    return no('The file is not a GeoJSON FeatureCollection.', 'Export the points as GeoJSON, RFC 7946.')
  const crs = JSON.stringify(whole.crs ?? '')
  if (whole.crs && !/CRS84|EPSG:+4326/u.test(crs))
    return no('The coordinates are of another reference system.', 'Export longitude and latitude, WGS 84 (RFC 7946).')
  const lines = featureLines(text)
  const read = (whole.features as Feature[]).map((feature, index) => featureRow(feature, lines[index] ?? 1))
  return {
    ok: true,
    rows: read.flatMap(one => ('cells' in one ? [one] : [])),
    troubles: read.flatMap(one => ('cells' in one ? [] : [one]))
  }
}

function parsedJson(text: string): { type?: unknown; features?: unknown; crs?: unknown } | undefined {
  try {
    return JSON.parse(text) as { type?: unknown }
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

function featureRow({ id, geometry, properties }: Feature, line: number): ImportRow | ImportTrouble {
  const pairs = Object.entries(properties ?? {}).map(([key, value]) => [keyOf(key), cellText(value)] as const)
  const own = Object.fromEntries(pairs.filter(([, value]) => value !== ''))
  const cells = { ...(typeof id === 'string' || typeof id === 'number' ? { id: String(id) } : {}), ...own }
  if (!geometry || geometry.type !== 'Point') return { line, cells }
  const at = geometry.coordinates
  const [longitude, latitude] = Array.isArray(at) ? (at as unknown[]) : []
  if (typeof longitude !== 'number' || typeof latitude !== 'number')
    return { line, message: 'The point has no coordinates.', fix: 'Write [longitude, latitude] in degrees.' }
  return { line, cells: { ...cells, latitude: String(latitude), longitude: String(longitude) } }
}

function cellText(value: unknown): string {
  if (Array.isArray(value)) return value.map(cellText).join('; ')
  return typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean'
    ? String(value).trim()
    : ''
}
