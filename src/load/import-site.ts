import { isDeepStrictEqual } from 'node:util'
import { distanceM } from '../domain/distance.ts'
import type { LatLon } from '../domain/distance.ts'
import { stationName } from './cross/records.ts'
import { appendRecord, setValue } from './edit-front.ts'
import { readFrontMatter } from './front-matter.ts'
import { isZone } from './import-rows.ts'
import type { ImportRow, ImportTrouble } from './import-rows.ts'
import type { Fault, SourceText } from './loaded.ts'
import { readAs } from './read-as.ts'
import { site as siteSchema } from './schema/site.ts'

type Cells = Readonly<Record<string, string>>
type Raw = Record<string, unknown>

/** A row as keys of a record, and what it changes. */
export interface ImportChange {
  readonly line: number
  readonly id: string
  readonly kind: 'box' | 'station'
  readonly isNew: boolean
  readonly changes: readonly { readonly key: string; readonly from?: string; readonly to: string }[]
}

export interface ImportFault {
  readonly line: number
  readonly fault: Fault
}

export interface Imported {
  /** The site file with every change in it; the same text where something does not fit. */
  readonly text: string
  readonly changes: readonly ImportChange[]
  readonly troubles: readonly ImportTrouble[]
  /** Values that the site file would not take, by the words of its checks. */
  readonly faults: readonly ImportFault[]
  /** Columns that mean nothing here. */
  readonly leftOut: readonly string[]
}

const BOX_TEXTS = ['where', 'load-rating', 'lid', 'lock', 'mounting', 'status']
const BOX_LISTS = ['ties', 'hazards']
const BOX_OTHER = ['latitude', 'longitude', 'accuracy']
const VALVE_TEXTS = [
  'size',
  'coil',
  'coil-resistance',
  'lowest-volts',
  'normal-flow',
  'minimum-flow',
  'normal-pressure',
  'by-hand'
]
const ZONE_TEXTS = ['zone', 'waters', 'area', 'efficiency', 'slope']
const KNOWN = ['kind', 'id', 'box', 'station', ...BOX_TEXTS, ...BOX_LISTS, ...BOX_OTHER, ...VALVE_TEXTS, ...ZONE_TEXTS]
/** Farther than that from its site, a box has its coordinates swapped or is of another site (rule of this project). */
const FARTHEST_M = 5000

/** Rows held against a site file. Either all of them fit, or the text stays as it is. Nothing that the file says and no row names is touched. */
export function importRows(rows: readonly ImportRow[], siteFile: SourceText, place: LatLon | undefined): Imported {
  const troubles: ImportTrouble[] = []
  const faults: ImportFault[] = []
  const changes: ImportChange[] = []
  const seen = new Map<string, number>()
  let text = siteFile.text
  for (const row of rows) {
    const wish = wishOf(row)
    const trouble = 'message' in wish ? wish : (twice(seen, wish, row.line) ?? farAway(wish, row.line, place))
    if (trouble || 'message' in wish) {
      if (trouble) troubles.push(trouble)
      continue
    }
    const wrong = faultsOf(wish)
    if (wrong.length > 0) {
      faults.push(...wrong.map(fault => ({ line: row.line, fault })))
      continue
    }
    const done = applied(text, wish, row.line)
    if ('message' in done) troubles.push(done)
    else {
      text = done.text
      changes.push(done.change)
    }
  }
  const fits = troubles.length === 0 && faults.length === 0
  const leftOut = [...new Set(rows.flatMap(row => Object.keys(row.cells)))].filter(key => !KNOWN.includes(key))
  return { text: fits ? text : siteFile.text, changes, troubles, faults, leftOut }
}

interface Wish {
  readonly kind: 'box' | 'station'
  readonly id: string
  /** Keys of the record; those of its valve apart. */
  readonly keys: Raw
  readonly valve: Raw
}

function wishOf({ cells, line }: ImportRow): Wish | ImportTrouble {
  const kind = isZone(cells) ? 'station' : 'box'
  const id = kind === 'box' ? (cells['id'] ?? cells['box']) : (cells['station'] ?? cells['id'])
  if (id === undefined) {
    const column = kind === 'box' ? 'id' : 'station'
    return {
      line,
      message: `The row has no ${column}.`,
      fix: `Fill in the column "${column}": ${kind === 'box' ? 'VB1' : 'K1/3'}`
    }
  }
  return kind === 'box'
    ? boxWish(id, cells, line)
    : { kind, id: stationName(id), keys: pick(cells, ZONE_TEXTS), valve: valveKeys(cells) }
}

function boxWish(id: string, cells: Cells, line: number): Wish | ImportTrouble {
  const { latitude, longitude, accuracy } = cells
  if ((latitude === undefined) !== (longitude === undefined))
    return { line, message: `${id} has only one of latitude and longitude.`, fix: 'Fill in both, or neither.' }
  const lists = Object.entries(pick(cells, BOX_LISTS)).map(([key, value]) => [key, parts(String(value))])
  const position =
    latitude === undefined
      ? {}
      : {
          position: {
            latitude: numberOr(latitude),
            longitude: numberOr(longitude ?? ''),
            ...(accuracy ? { accuracy } : {})
          }
        }
  return { kind: 'box', id, keys: { ...pick(cells, BOX_TEXTS), ...Object.fromEntries(lists), ...position }, valve: {} }
}

const parts = (text: string): string[] => text.split(/[;|]/u).flatMap(part => part.trim() || [])
const numberOr = (text: string): number | string => (/^-?\d+(?:\.\d+)?$/u.test(text) ? Number(text) : text)

function pick(cells: Cells, keys: readonly string[]): Raw {
  return Object.fromEntries(keys.flatMap(key => (cells[key] === undefined ? [] : [[key, cells[key]]])))
}

function valveKeys(cells: Cells): Raw {
  return { ...(cells['box'] === undefined ? {} : { box: cells['box'] }), ...pick(cells, VALVE_TEXTS) }
}

function twice(seen: Map<string, number>, { kind, id }: Wish, line: number): ImportTrouble | undefined {
  const first = seen.get(`${kind} ${id}`)
  seen.set(`${kind} ${id}`, first ?? line)
  return first === undefined
    ? undefined
    : { line, message: `${id} stands in line ${first} already.`, fix: 'Keep one of the two.' }
}

function farAway({ id, keys }: Wish, line: number, place: LatLon | undefined): ImportTrouble | undefined {
  const at = keys['position'] as LatLon | undefined
  if (!place || !at || typeof at.latitude !== 'number' || typeof at.longitude !== 'number') return undefined
  const m = distanceM(at, place)
  if (m <= FARTHEST_M) return undefined
  return {
    line,
    message: `${id} would stand ${Math.round(m / 1000)} km from its site.`,
    fix: 'Look whether latitude and longitude are swapped, and whether the row is of this site.'
  }
}

/** What the schema of site files says of the row alone. */
function faultsOf({ kind, id, keys, valve }: Wish): readonly Fault[] {
  const record = { id, ...keys, ...(Object.keys(valve).length > 0 ? { valve } : {}) }
  const data = { title: 'x', units: 'metric', [kind === 'box' ? 'boxes' : 'stations']: [record] }
  return readAs(siteSchema, readFrontMatter({ file: '', text: `---\n${JSON.stringify(data)}\n---\n` })).faults
}

type Applied = { readonly text: string; readonly change: ImportChange }

function applied(text: string, wish: Wish, line: number): Applied | ImportTrouble {
  const { kind, id, keys, valve } = wish
  const list = kind === 'box' ? 'boxes' : 'stations'
  const data = readFrontMatter({ file: '', text }).data
  const records = (data[list] ?? []) as Raw[]
  const index = records.findIndex(one => typeof one['id'] === 'string' && sameId(kind, one['id'], id))
  const hasValve = Object.keys(valve).length > 0
  const byHand = (key: string): ImportTrouble => ({
    line,
    message: `"${key}" of ${id} cannot be changed without touching other lines.`,
    fix: 'Change it in the site file by hand, and leave the cell blank.'
  })
  if (index < 0) {
    const record = { id, ...keys, ...(hasValve ? { valve } : {}) }
    const next = appendRecord(text, list, record)
    const expected = { ...data, [list]: [...records, record] }
    if (next === undefined || !reads(next, expected)) return byHand(list)
    const changes = Object.entries({ ...keys, ...valve }).map(([key, to]) => ({ key, to: shown(to) }))
    return { text: next, change: { line, id, kind, isNew: true, changes } }
  }
  const before = records[index] ?? {}
  if (Array.isArray(before['valve']) && hasValve) return byHand('valve')
  const steps = [
    ...Object.entries(keys).map(([key, to]) => ({ path: [list, index], key, to, from: before[key] })),
    ...(hasValve ? valveSteps([list, index], before['valve'] as Raw | null | undefined, valve) : [])
  ].filter(step => !isSame(step.from, step.to))
  const expected = structuredClone(data) as Raw
  let now = text
  for (const { path, key, to } of steps) {
    const next = setValue(now, path, key, to)
    setIn(expected, path, key, to)
    if (next === undefined || !reads(next, expected)) return byHand(key)
    now = next
  }
  const changes = steps.map(({ key, from, to }) => ({
    key,
    to: shown(to),
    ...(from === undefined || from === null ? {} : { from: shown(from) })
  }))
  return { text: now, change: { line, id, kind, isNew: false, changes } }
}

interface Step {
  readonly path: readonly (string | number)[]
  readonly key: string
  readonly to: unknown
  readonly from: unknown
}

function valveSteps(path: Step['path'], before: Raw | null | undefined, valve: Raw): Step[] {
  if (!before) return [{ path, key: 'valve', to: valve, from: before }]
  return Object.entries(valve).map(([key, to]) => ({ path: [...path, 'valve'], key, to, from: before[key] }))
}

function sameId(kind: Wish['kind'], a: string, b: string): boolean {
  return kind === 'box' ? a.trim() === b : stationName(a) === b
}

function isSame(from: unknown, to: unknown): boolean {
  if (typeof to === 'object') return isDeepStrictEqual(JSON.parse(JSON.stringify(from ?? null)), to)
  return from !== undefined && from !== null && String(from).trim() === String(to)
}

function setIn(data: Raw, path: Step['path'], key: string, to: unknown): void {
  let at = data as Record<string | number, unknown>
  for (const step of path) at = at[step] as Record<string | number, unknown>
  at[key] = to
}

/** The text says what it should and nothing else. */
function reads(text: string, expected: unknown): boolean {
  const { data, sound } = readFrontMatter({ file: '', text })
  const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value))
  return sound && isDeepStrictEqual(plain(data), plain(expected))
}

function shown(value: unknown): string {
  if (Array.isArray(value)) return value.join('; ')
  if (typeof value !== 'object' || value === null) return String(value)
  return Object.entries(value)
    .map(([key, inner]) => `${key} ${String(inner)}`)
    .join(', ')
}
