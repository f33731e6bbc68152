import type { z } from 'zod'
import { parseDocument } from 'yaml'
import type { LatLon } from '../domain/distance.ts'
import type { At } from '../diagnostics/finding.ts'
import type { Drawing } from '../model/drawing.ts'
import { corrected } from './faults/corrected.ts'
import { mildFault } from './faults/fault.ts'
import type { Details } from './faults/fault.ts'
import type { FrontMatter } from './front-matter.ts'
import { nearest } from './improve/nearest.ts'
import { linesOfData, placeAt } from './lines.ts'
import type { Fault, SourceText } from './loaded.ts'
import { placeOf } from './place.ts'
import { shapesOf } from './plan-shapes.ts'
import type { Grid, Shapes } from './plan-shapes.ts'
import type { site } from './schema/site.ts'
import { isTooDeep } from './yaml/parse.ts'

type RawSite = z.output<typeof site>

/** What a file beside the site file adds to its drawing. */
export interface PlanFile extends Shapes {
  /** That its degrees were counted from. */
  readonly origin?: LatLon
}

export interface PlanRead {
  readonly plan?: PlanFile
  readonly faults: readonly Fault[]
}

const NOTHING: PlanRead = { faults: [] }
/** One sheet of paper can show no more (rule of this project). */
const MOST_BYTES = 512 * 1024
const MOST_CORNERS = 5000
/** More faults than this tell nothing new of a file. */
const MOST_FAULTS = 20
const PATH = ['drawing', 'file']

/**
 * References of the drawing from a GeoJSON file (RFC 7946) beside the site file. Its degrees are counted from the origin of the drawing; where
 * nothing of the drawing is in meters, from the location of the site. With a unit its numbers are east and north as in the site file.
 */
export function readPlanFile(front: FrontMatter, raw: RawSite | undefined, files: readonly SourceText[]): PlanRead {
  const written = raw?.drawing?.file
  if (written === undefined || written === null) return NOTHING
  const source = files.find(({ file }) => file.slice(file.lastIndexOf('/') + 1) === written)
  if (!source) return { faults: [notThere(front, written, files)] }
  const lines = linesOfData(source)
  const fault = (path: readonly (string | number)[], details: Details, offset = offsetOf(lines.text, path)): Fault =>
    mildFault('file/plan-file', '', placeAt(lines, offset, 1), details)
  if (source.trouble)
    return {
      faults: [
        mildFault('file/front-matter', '', placeAt(lines, 0, 0), { kind: 'unreadable', trouble: source.trouble })
      ]
    }
  const bytes = new TextEncoder().encode(lines.text).length
  if (bytes > MOST_BYTES) return { faults: [fault([], { kind: 'large', bytes, most: MOST_BYTES }, 0)] }
  const parsed = parsedJson(lines.text)
  if (lines.text.trim() === '') return { faults: [fault([], { kind: 'empty' }, 0)] }
  if ('offset' in parsed) return { faults: [fault([], { kind: 'json' }, parsed.offset)] }
  const { type, features, crs } = parsed.whole
  if (type !== 'FeatureCollection' || !Array.isArray(features))
    return { faults: [fault([], { kind: 'no-collection' }, 0)] }
  if (crs && !/CRS84|EPSG:+4326/u.test(JSON.stringify(crs))) return { faults: [fault(['crs'], { kind: 'crs' })] }
  const corners = cornersIn(features)
  if (corners > MOST_CORNERS) return { faults: [fault([], { kind: 'corners', corners, most: MOST_CORNERS }, 0)] }
  const grid = gridOf(raw ?? {})
  if (!grid) return { faults: [mildFault('file/plan-file', '', placeOf(front, PATH), { kind: 'no-origin' })] }
  const at: At = { file: source.file, path: [1] }
  const read = (features as unknown[]).map((feature, index) => shapesOf(feature, index, grid, at))
  const shapes = read.flatMap(one => ('shapes' in one ? [one.shapes] : []))
  const faults = read.flatMap(one => ('details' in one ? [one] : [])).slice(0, MOST_FAULTS)
  return {
    plan: {
      points: shapes.flatMap(one => one.points),
      areas: shapes.flatMap(one => one.areas),
      lines: shapes.flatMap(one => one.lines),
      ...(grid.by === 'degrees' ? { origin: grid.origin } : {})
    },
    faults: faults.map(({ path, details }) => fault(path, details))
  }
}

/** The drawing of the site file with what its file adds. */
export function withPlanFile(drawing: Drawing, plan: PlanFile | undefined): Drawing {
  if (!plan) return drawing
  const origin = drawing.origin ?? (plan.origin ? { at: drawing.at, ...plan.origin } : undefined)
  return {
    ...drawing,
    ...(origin ? { origin } : {}),
    points: [...drawing.points, ...plan.points],
    areas: [...drawing.areas, ...plan.areas],
    lines: [...drawing.lines, ...plan.lines]
  }
}

/** Undefined where degrees cannot be joined to the meters of the site file. */
function gridOf({ drawing, location }: Partial<RawSite>): Grid | undefined {
  const unit = drawing?.['file-unit']
  if (unit) return { by: 'meters', unitM: unit === 'ft' ? 0.3048 : 1 }
  const { latitude, longitude } = location ?? {}
  const place = typeof latitude === 'number' && typeof longitude === 'number' ? { latitude, longitude } : undefined
  const written = drawing?.origin
  const hasMeters =
    [...(drawing?.areas ?? []), ...(drawing?.lines ?? [])].length > 0 ||
    [...(drawing?.points ?? []), ...(drawing?.places ?? [])].some(one => one.at)
  const origin = written ? { latitude: written.latitude, longitude: written.longitude } : hasMeters ? undefined : place
  return origin ? { by: 'degrees', origin, near: place ?? origin } : undefined
}

function notThere(front: FrontMatter, written: string, files: readonly SourceText[]): Fault {
  const near = nearest(
    written,
    files.map(({ file }) => file.slice(file.lastIndexOf('/') + 1))
  )
  const details = {
    name: written,
    kind: 'drawing',
    known: [],
    key: 'file',
    ...(near === undefined ? {} : { nearest: near, corrected: corrected(front, PATH, near) })
  }
  return mildFault('file/dangling-reference', '', placeOf(front, PATH), details)
}

type Parsed =
  | { readonly whole: { readonly type?: unknown; readonly features?: unknown; readonly crs?: unknown } }
  | { readonly offset: number }

function parsedJson(text: string): Parsed {
  try {
    const whole: unknown = JSON.parse(text)
    return typeof whole === 'object' && whole !== null ? { whole } : { offset: 0 }
  } catch (error) {
    const position = /position (\d+)/u.exec(String(error))?.[1]
    return { offset: position === undefined ? Math.max(0, text.trimEnd().length - 1) : Number(position) }
  }
}

/** Lists of numbers, however deep. */
function cornersIn(value: unknown): number {
  let [count, open] = [0, [value]]
  while (open.length > 0) {
    const next: unknown[] = []
    for (const one of open) {
      if (Array.isArray(one) && typeof one[0] === 'number') count += 1
      else if (typeof one === 'object' && one !== null) for (const inner of Object.values(one)) next.push(inner)
    }
    open = next
  }
  return count
}

/** Where a part of the file begins. JSON is YAML, whose parser knows where each thing stands; asked only where something is wrong. */
function offsetOf(text: string, path: readonly (string | number)[]): number {
  if (isTooDeep(text)) return 0
  const document = parseDocument(text, { logLevel: 'silent' })
  for (let length = path.length; length > 0; length -= 1) {
    const node = document.getIn(path.slice(0, length), true) as { readonly range?: readonly [number] } | undefined
    if (node?.range) return node.range[0]
  }
  return 0
}
