import { distanceM } from '../domain/distance.ts'
import type { LatLon } from '../domain/distance.ts'
import { localPosition } from '../domain/drawing/local-position.ts'
import type { EastNorth } from '../domain/drawing/spot.ts'
import { LINE_KINDS } from '../model/drawing.ts'
import type { DrawingArea, DrawingLine, DrawingPoint, LineKind } from '../model/drawing.ts'
import type { At } from '../diagnostics/finding.ts'
import type { Details } from './faults/fault.ts'
import { nearest } from './improve/nearest.ts'

/** How the numbers of a file become meters east and north. */
export type Grid =
  | { readonly by: 'degrees'; readonly origin: LatLon; readonly near: LatLon }
  | { readonly by: 'meters'; readonly unitM: number }

export interface Shapes {
  readonly points: readonly DrawingPoint[]
  readonly areas: readonly DrawingArea[]
  readonly lines: readonly DrawingLine[]
}

/** What is wrong, and at which path of the file. */
export interface ShapeFault {
  readonly path: readonly (string | number)[]
  readonly details: Details
}

export type ShapeRead = { readonly shapes: Shapes } | ShapeFault

/** Farther than that from its site or origin, a corner is of another place, or its numbers are swapped (rule of this project). */
const FARTHEST_M = 5000
const NONE: Shapes = { points: [], areas: [], lines: [] }
/** What is no line: ground of a zone, and a point that ties are measured from. */
const OTHER_KINDS = ['zone', 'point'] as const
const KINDS = [...LINE_KINDS, ...OTHER_KINDS]
/** Other names of the same things. */
const SAME: Readonly<Record<string, string>> = {
  path: 'walk',
  footpath: 'walk',
  sidewalk: 'walk',
  kerb: 'curb',
  road: 'road edge',
  house: 'building'
}

/** One feature of a collection as what the drawing draws of it. */
export function shapesOf(feature: unknown, index: number, grid: Grid, at: At): ShapeRead {
  const path = ['features', index]
  const fault = (below: readonly string[], details: Details): ShapeFault => ({
    path: [...path, ...below],
    details: { feature: index + 1, ...details }
  })
  if (!isRecord(feature) || feature['type'] !== 'Feature') return fault([], { kind: 'no-feature' })
  const properties = isRecord(feature['properties']) ? feature['properties'] : {}
  const { name, zone } = { name: textOf(properties['name']), zone: textOf(properties['zone']) }
  const written = textOf(properties['kind']) || (zone === '' ? '' : 'zone')
  const what = kindOf(written)
  if (what === undefined) {
    const near = nearest(written, KINDS)
    const more = { written, known: KINDS, ...(near === undefined ? {} : { nearest: near }) }
    return fault(written === '' ? ['properties'] : ['properties', 'kind'], { kind: 'no-kind', ...more })
  }
  const geometry = isRecord(feature['geometry']) ? feature['geometry'] : {}
  const ways = waysOf(geometry, what)
  if (!ways) return fault(['geometry'], { kind: 'geometry', what, written: textOf(geometry['type']) || 'nothing' })
  if (what === 'point' && name === '') return fault(['properties'], { kind: 'no-name', what })
  if (what === 'zone' && zone === '' && name === '') return fault(['properties'], { kind: 'no-name', what })
  const wrong = ways
    .flat()
    .map(corner => cornerFault(corner, grid))
    .find(one => one !== undefined)
  if (wrong) return fault(['geometry', 'coordinates'], { what: name || what, ...wrong })
  const placed = ways.map(way => way.map(corner => spotOf(corner as Corner, grid)))
  return { shapes: drawn(what, placed, { name, zone: zone || name }, at) }
}

type What = LineKind | (typeof OTHER_KINDS)[number]
type Corner = readonly [number, number]

function kindOf(written: string): What | undefined {
  const plain = written.toLowerCase()
  return KINDS.find(one => one === (SAME[plain] ?? plain))
}

/** Lists of corners, by what the kind may be drawn from; undefined for another shape. */
function waysOf({ type, coordinates }: Readonly<Record<string, unknown>>, what: What): unknown[][] | undefined {
  const lists = (value: unknown, least: number): unknown[][] | undefined => {
    const ways = Array.isArray(value) ? (value as unknown[]) : []
    const are = ways.length > 0 && ways.every(way => Array.isArray(way) && way.length >= least)
    return are ? (ways as unknown[][]) : undefined
  }
  if (what === 'point') return type === 'Point' && Array.isArray(coordinates) ? [[coordinates]] : undefined
  const polygons = type === 'Polygon' ? [coordinates] : type === 'MultiPolygon' ? coordinates : undefined
  if (Array.isArray(polygons)) {
    const rings = (polygons as unknown[]).map(one => lists(one, 4))
    // The ground of a zone is one ring: a hole in it would be drawn as more ground.
    const fits = rings.length > 0 && rings.every(one => one !== undefined && (what !== 'zone' || one.length === 1))
    return fits ? rings.flatMap(one => one ?? []) : undefined
  }
  if (what === 'zone') return undefined
  return type === 'LineString'
    ? lists([coordinates], 2)
    : type === 'MultiLineString'
      ? lists(coordinates, 2)
      : undefined
}

function cornerFault(corner: unknown, grid: Grid): Details | undefined {
  const [x, y] = Array.isArray(corner) ? (corner as unknown[]) : []
  const written = shortened(corner)
  if (typeof x !== 'number' || typeof y !== 'number') return { kind: 'corner', written }
  if (grid.by === 'meters') {
    const m = Math.hypot(x, y) * grid.unitM
    return m > FARTHEST_M ? { kind: 'far', written, km: Math.round(m / 1000) } : undefined
  }
  if (Math.abs(x) > 180 || Math.abs(y) > 90) return { kind: 'degrees', written }
  const m = distanceM({ latitude: y, longitude: x }, grid.near)
  if (m <= FARTHEST_M) return undefined
  const swapped = Math.abs(x) <= 90 && distanceM({ latitude: x, longitude: y }, grid.near) <= FARTHEST_M
  return { kind: swapped ? 'swapped' : 'far', written, km: Math.round(m / 1000) }
}

function spotOf([x, y]: Corner, grid: Grid): EastNorth {
  if (grid.by === 'meters') return { eastM: x * grid.unitM, northM: y * grid.unitM }
  return localPosition({ latitude: y, longitude: x }, grid.origin)
}

function drawn(
  what: What,
  ways: readonly (readonly EastNorth[])[],
  { name, zone }: { readonly name: string; readonly zone: string },
  at: At
): Shapes {
  if (what === 'point') return { ...NONE, points: ways.flat().map(spot => ({ at, name, spot })) }
  if (what === 'zone') return { ...NONE, areas: ways.map(way => ({ at, zone, points: way.slice(0, -1) })) }
  // One name for the parts of one thing.
  const named = (index: number) => (name !== '' && index === 0 ? { name } : {})
  return { ...NONE, lines: ways.map((points, index) => ({ at, kind: what, points, ...named(index) })) }
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const textOf = (value: unknown): string => (typeof value === 'string' ? value.trim() : '')

function shortened(value: unknown): string {
  const text = JSON.stringify(value) ?? ''
  return text.length > 40 ? `${text.slice(0, 37)}...` : text
}
