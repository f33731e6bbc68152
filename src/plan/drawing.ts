import { chooseScale } from '../domain/drawing/scale.ts'
import type { Frame } from '../domain/drawing/scale.ts'
import type { EastNorth } from '../domain/drawing/spot.ts'
import { pointKey } from '../domain/drawing/tie-text.ts'
import type { Circle, PlaceKind } from '../model/drawing.ts'
import type { Box, Paper, Site } from '../model/site.ts'
import type { Bounds, DrawingPlan, DrawnArea, DrawnMark, DrawnTie, Unplaced } from './drawing-plan.ts'
import { groundOf, knownTies, placeOf } from './drawing-spots.ts'
import type { FoundPlace, Ground, WrittenPlace } from './drawing-spots.ts'
import type { Working } from './plan.ts'

/** Ground that a sheet shows, mm: upright; turned with its legend beside it; turned with the legend below, for a long band of ground. */
export const MAP_FRAMES: Readonly<Record<Paper, readonly [upright: Frame, turned: Frame, band: Frame]>> = {
  A4: [
    { widthMm: 168, heightMm: 184 },
    { widthMm: 194, heightMm: 152 },
    { widthMm: 260, heightMm: 104 }
  ],
  Letter: [
    { widthMm: 173, heightMm: 166 },
    { widthMm: 176, heightMm: 156 },
    { widthMm: 242, heightMm: 108 }
  ]
}

/** Kept free round the outermost thing for its label, mm. */
const EDGE_MM = 11
/** A circle as a ring of so many corners. */
const ROUND = 48

interface Asked extends WrittenPlace {
  readonly what: PlaceKind
  readonly of: string
  readonly name?: string
}

export interface DrawingWork {
  readonly drawing: DrawingPlan
  readonly workings: readonly Working[]
}

/** Places of all things of a site, by what is written of them, and the scale that shows them. */
export function planDrawing(site: Site): DrawingWork {
  const ground = groundOf(site)
  const areas = areasOf(site)
  const found = asked(site, areas).map(one => ({ one, place: placeOf(one, ground) }))
  const marks = found.flatMap(({ one, place }) => markOf(one, place))
  const points = [...ground.points.values()]
  const lines = (site.drawing?.lines ?? []).map(({ kind, name, points: way, circle }) => ({
    kind,
    points: way,
    ...(name ? { name } : {}),
    ...(circle ? { circle } : {})
  }))
  const bounds = boundsOf([
    ...marks,
    ...points,
    ...areas.flatMap(one => one.points),
    ...lines.flatMap(one => [...one.points, ...(one.circle ? ringOf(one.circle) : [])])
  ])
  return {
    drawing: {
      ...(bounds && marks.length > 0 ? { bounds, sheet: sheetOf(bounds, site) } : {}),
      marks,
      points,
      areas,
      lines,
      ties: found.flatMap(({ one, place }) => tiesOf(one, place, ground)),
      unplaced: [...found.flatMap(({ one, place }) => unplacedOf(one, place)), ...withoutRecord(site)]
    },
    workings: found.flatMap(({ place }) => ('working' in place && place.working ? [place.working] : []))
  }
}

/** All that a record says has a place, boxes first; of a box its own record and the drawing's together. */
function asked(site: Site, areas: readonly DrawnArea[]): Asked[] {
  const places = site.drawing?.places ?? []
  const boxes = site.boxes.map((box): Asked => {
    const more = places.find(one => one.what === 'box' && one.of === box.id)
    const position = more?.position ?? box.position
    return {
      what: 'box',
      of: box.id,
      subject: box.id,
      ties: [...box.ties, ...(more?.ties ?? [])],
      near: groundNear(box, site, areas),
      ...(more?.spot ? { spot: more.spot } : {}),
      ...(position ? { position } : {}),
      ...(more?.side ? { side: more.side } : {})
    }
  })
  const ids = new Set(site.boxes.map(one => one.id))
  const others = places
    .filter(one => one.what !== 'box' || !ids.has(one.of ?? ''))
    .map(({ what, of = '', name, spot, position, ties, side }): Asked => ({
      what,
      of,
      subject: name ?? `${of} ${what}`.trim(),
      ties,
      near: [],
      ...(name ? { name } : {}),
      ...(spot ? { spot } : {}),
      ...(position ? { position } : {}),
      ...(side ? { side } : {})
    }))
  return [...boxes, ...others]
}

/** Ground that the valves of a box water. */
function groundNear(box: Box, { stations }: Site, areas: readonly DrawnArea[]): (readonly EastNorth[])[] {
  const served = stations.filter(one => one.valves.some(valve => valve.box === box.id)).map(one => one.id)
  return areas.filter(one => one.stations.some(id => served.includes(id))).map(one => one.points)
}

function areasOf({ drawing, stations }: Site): DrawnArea[] {
  return (drawing?.areas ?? []).flatMap(({ zone, points, circle }) => {
    const corners = circle ? ringOf(circle) : points
    const of = stations.filter(one => one.id === zone || pointKey(one.zone) === pointKey(zone))
    return corners.length < 3 ? [] : [{ zone: of[0]?.zone ?? zone, stations: of.map(one => one.id), points: corners }]
  })
}

export function ringOf({ eastM, northM, radiusM }: Circle): EastNorth[] {
  return Array.from({ length: ROUND }, (_, index) => {
    const angle = (index / ROUND) * 2 * Math.PI
    return { eastM: eastM + radiusM * Math.cos(angle), northM: northM + radiusM * Math.sin(angle) }
  })
}

function markOf({ what, of, name }: Asked, place: FoundPlace): DrawnMark[] {
  return place.spot ? [{ ...place.spot, what, of, by: place.by, ...(name ? { name } : {}) }] : []
}

function tiesOf(one: Asked, place: FoundPlace, ground: Ground): DrawnTie[] {
  const [mark] = markOf(one, place)
  if (!mark) return []
  return knownTies(one.ties, ground).map(({ point, amount, lengthM }) => ({ mark, point, amount, lengthM }))
}

function unplacedOf({ what, of, subject }: Asked, place: FoundPlace): Unplaced[] {
  if (place.spot) return []
  const { because, reason } = place
  return [{ what, of: of || subject, because, ...(reason ? { reason } : {}) }]
}

/** Supplies, controllers, sensors, valves and splices of which nothing says where they are: in no box, and not on the drawing. */
function withoutRecord({ supplies, controllers, sensors, stations, drawing }: Site): Unplaced[] {
  const drawn = (what: PlaceKind, of: string) =>
    drawing?.places.some(one => one.what === what && one.of === of) === true
  const nothing = (what: Unplaced['what'], of: string): Unplaced => ({ what, of, because: 'nothing' })
  return [
    ...supplies.flatMap(({ id, backflow }) => [
      ...(drawn('shut-off', id) ? [] : [nothing('shut-off', id)]),
      ...(!backflow || backflow.kind === 'not fitted' || drawn('backflow', id) ? [] : [nothing('backflow', id)])
    ]),
    ...controllers
      .filter(one => one.box === undefined && !drawn('controller', one.id))
      .map(one => nothing('controller', one.id)),
    ...sensors.filter(one => one.box === undefined && !drawn('sensor', one.id)).map(one => nothing('sensor', one.id)),
    ...stations.filter(one => one.valves.some(valve => valve.box === undefined)).map(one => nothing('valve', one.id)),
    ...stations
      .filter(one => one.splices.some(splice => splice.box === undefined) && !drawn('splice', one.id))
      .map(one => nothing('splice', one.id))
  ]
}

function boundsOf(spots: readonly EastNorth[]): Bounds | undefined {
  if (spots.length === 0) return undefined
  const [easts, norths] = [spots.map(one => one.eastM), spots.map(one => one.northM)]
  return { west: Math.min(...easts), south: Math.min(...norths), east: Math.max(...easts), north: Math.max(...norths) }
}

function sheetOf({ west, south, east, north }: Bounds, { paper, units }: Site): DrawingPlan['sheet'] & object {
  const frames = MAP_FRAMES[paper].map(({ widthMm, heightMm }) => ({
    widthMm: widthMm - 2 * EDGE_MM,
    heightMm: heightMm - 2 * EDGE_MM
  }))
  const { ratio, frame } = chooseScale(east - west, north - south, frames, units)
  return { ratio, turned: frame > 0, legend: frame === 1 ? 'beside' : 'below' }
}
