import type { PlanArea, PlanFigure, PlanLine, PlanMark, PlanSpot } from '../../binder/figures/plan.ts'
import { textEm } from '../letter-widths.ts'
import { element, figure, label, line, rect, rounded } from '../svg.ts'
import type { Box } from '../svg.ts'
import { furniture } from './plan-furniture.ts'
import { boxAround, isIn, shared, strokesOf } from './plan-geometry.ts'
import { placeNames } from './plan-labels.ts'
import type { Candidate, Obstacle } from './plan-labels.ts'
import { patternFill } from './plan-pattern.ts'
import type { Spot } from './plan-pattern.ts'
import { alongLine, besideMark, inShape } from './plan-places.ts'
import { planLegend } from './plan-legend.ts'
import { MARK_MM, asideMark, planStroke, planSymbol } from './plan-symbols.ts'
import { spreadMarks } from './plan-spread.ts'
import { dimension, placeTies } from './plan-ties.ts'
import type { PlacedTie } from './plan-ties.ts'

/** Sizes of letters, mm. */
const NAME_MM = 3.1
const SMALL_MM = 2.5
/** A shape at least so wide and high is named by itself, mm. */
const ROOMY_MM = 12
/** A ring as a shape of so many corners, where it is in the way of names. */
const RING = 24
/** Half of a permanent point, mm. */
const POINT_MM = 2

interface Line {
  readonly text: string
  readonly size: number
  readonly strong: boolean
}

/** A name, where it stands and from where a line leads to it. */
export interface PlacedName extends Box {
  readonly lines: readonly Line[]
  readonly leader?: Candidate['leader']
}

interface Wanted {
  readonly lines: readonly Line[]
  readonly candidates: readonly Candidate[]
}

/** A mark with its place and where its symbol is drawn. */
type LaidMark = PlanMark & { readonly place: Spot; readonly drawn: Spot }

/** A plan on paper: where everything is, before it is drawn. */
interface Laid {
  readonly at: (spot: PlanSpot) => Spot
  readonly frame: Box
  readonly areas: readonly (PlanArea & { readonly shape: readonly Spot[] })[]
  readonly ties: readonly PlacedTie[]
  readonly marks: readonly LaidMark[]
  readonly furniture: ReturnType<typeof furniture>
}

/** A plan at its scale: one unit is a millimeter on paper. Ground first, then ties, then marks, names on top. */
export function planFigure(plan: PlanFigure): string {
  const laid = layOut(plan)
  const { at, frame, areas, ties } = laid
  const names = namesOn(plan, laid)
  const ground = [
    ...areas.map(({ shape, pattern }) => (pattern === undefined ? '' : patternFill(shape, pattern))),
    ...names.map(name => clearing(name, areas)),
    ...areas.map(({ shape }) => outline(shape))
  ].join('')
  const lines = plan.lines.map(one => planStroke(one.kind, pathOf(one, at))).join('')
  const inner = [
    rect(frame, { class: 'plan-frame' }),
    clippedTo(frame, ground + lines + ties.map(dimension).join('')),
    names.map(leader).join(''),
    plan.points.map(point => planSymbol('point', at(point))).join(''),
    laid.marks.map(one => planSymbol(one.symbol, one.drawn)).join(''),
    laid.marks
      .filter(isAside)
      .map(one => asideMark(one.drawn, one.place))
      .join(''),
    names.map(words).join(''),
    laid.furniture.map(one => one.svg).join(''),
    planLegend(plan, laid.marks.some(isAside))
  ].join('')
  const svg = figure(plan.widthMm, plan.heightMm, plan.alt, inner)
  return svg.replace('<svg', `<svg style="width:${rounded(plan.widthMm)}mm;height:${rounded(plan.heightMm)}mm"`)
}

/** Every name of a plan at its place on paper. */
export function planNames(plan: PlanFigure): PlacedName[] {
  return namesOn(plan, layOut(plan))
}

function layOut(plan: PlanFigure): Laid {
  const at = projection(plan)
  const { map } = plan
  const frame: Box = { x: map.xMm, y: map.yMm, width: map.widthMm, height: map.heightMm }
  const drawn = spreadMarks(plan.marks.map(one => ({ symbol: one.symbol, at: at(one) })))
  const marks = plan.marks.map((one, index) => ({ ...one, place: at(one), drawn: drawn[index] ?? at(one) }))
  const symbols = symbolBoxes(plan, marks, at)
  const ties = placeTies(
    plan.ties.map(one => ({ from: at(one.from), to: at(one.to), text: one.text })),
    symbols
  )
  return {
    at,
    frame,
    areas: plan.areas.map(one => ({ ...one, shape: one.points.map(at) })),
    ties,
    marks,
    furniture: furniture(plan, frame, [...symbols, ...ties.flatMap(one => one.covers)])
  }
}

function symbolBoxes({ points }: PlanFigure, marks: readonly LaidMark[], at: Laid['at']): Box[] {
  return [...marks.map(one => markBox(one, one.drawn)), ...points.map(one => square(at(one), POINT_MM))]
}

function markBox({ symbol }: PlanMark, { x, y }: Spot): Box {
  const half = symbol === 'backflow' ? MARK_MM * 1.6 : MARK_MM * 1.15
  return { x: x - half, y: y - MARK_MM * 1.25, width: 2 * half, height: MARK_MM * 2.4 }
}

/** What a name should keep clear of: weights by how much it would hide. */
const WEIGHTS = { symbol: 40, tie: 40, furniture: 400, thick: 4, thin: 2, outline: 1.5, pattern: 8 } as const
const THICK_HALF_MM = 0.4
const THICK: ReadonlySet<PlanLine['kind']> = new Set(['wall', 'building', 'main', 'sleeve', 'curb'])

function namesOn(plan: PlanFigure, laid: Laid): PlacedName[] {
  const wanted = wantedNames(plan, laid)
  const places = placeNames(
    wanted.map(one => one.candidates),
    obstaclesOf(plan, laid),
    laid.frame
  )
  return wanted.flatMap(({ lines }, index) => {
    const place = places[index]
    return place ? [{ ...place.box, lines, ...(place.leader ? { leader: place.leader } : {}) }] : []
  })
}

function wantedNames(plan: PlanFigure, { at, areas, marks }: Laid): Wanted[] {
  const small = (text: string): Line[] => [{ text, size: SMALL_MM, strong: false }]
  const patterned = areas
    .filter(one => one.pattern !== undefined)
    .map(({ shape }) => ({ shape, around: boxAround(shape) }))
  const offPatterns = (candidates: readonly Candidate[]) => candidates.map(one => onGround(one, patterned))
  const wanted = [
    ...marks.map(mark => {
      const lines = [{ text: mark.label, size: NAME_MM, strong: true }, ...(mark.holds ? small(mark.holds) : [])]
      return { lines, candidates: offPatterns(besideMark(mark.drawn, sizeOf(lines), MARK_MM * 1.3)) }
    }),
    ...plan.points.map(point => {
      const lines = small(point.label)
      return { lines, candidates: offPatterns(besideMark(at(point), sizeOf(lines), POINT_MM)) }
    }),
    ...areas
      .filter((one, index) => roomy(one.shape) || areas.findIndex(other => other.label === one.label) === index)
      .map(({ label: text, shape }) => {
        const lines = [{ text, size: NAME_MM, strong: true }]
        return { lines, candidates: inShape(shape, sizeOf(lines)) }
      }),
    ...plan.lines.map(one => {
      const lines = small(one.label)
      return { lines, candidates: offPatterns(alongLine(spotsOf(one, at), sizeOf(lines))) }
    })
  ]
  return wanted.filter(({ lines }) => lines[0]?.text !== '')
}

/** On a pattern letters are harder to read, halo or not. */
function onGround(
  one: Candidate,
  patterned: readonly { readonly shape: readonly Spot[]; readonly around: Box }[]
): Candidate {
  const near = patterned.filter(area => shared(one.box, area.around) > 0)
  if (near.length === 0) return one
  const { x, y, width, height } = one.box
  const tried = [0.1, 0.5, 0.9].flatMap(share =>
    [0.15, 0.85].map(down => ({ x: x + share * width, y: y + down * height }))
  )
  const hidden = tried.filter(spot => near.some(area => isIn(spot, area.shape))).length
  return hidden === 0 ? one : { ...one, dislike: one.dislike + hidden * WEIGHTS.pattern }
}

function obstaclesOf(plan: PlanFigure, { at, areas, ties, marks, furniture: pieces }: Laid): Obstacle[] {
  const boxes = (all: readonly Box[], weight: number): Obstacle[] => all.map(box => ({ box, weight }))
  return [
    ...boxes(symbolBoxes(plan, marks, at), WEIGHTS.symbol),
    ...boxes(
      ties.flatMap(one => one.covers),
      WEIGHTS.tie
    ),
    ...boxes(
      pieces.map(one => one.box),
      WEIGHTS.furniture
    ),
    ...ties.map(stroke => ({ stroke, weight: WEIGHTS.thin })),
    ...areas.flatMap(({ shape }) => strokesOf(shape, true).map(stroke => ({ stroke, weight: WEIGHTS.outline }))),
    ...plan.lines.flatMap(one => {
      const [weight, half] = THICK.has(one.kind) ? [WEIGHTS.thick, THICK_HALF_MM] : [WEIGHTS.thin, 0]
      return [...strokesOf(one.points.map(at)), ...strokesOf(ringOf(one, at))].map(stroke => ({ stroke, weight, half }))
    })
  ]
}

function spotsOf(line: PlanLine, at: Laid['at']): Spot[] {
  return line.circle ? ringOf(line, at) : line.points.map(at)
}

function ringOf({ circle }: PlanLine, at: Laid['at']): Spot[] {
  if (!circle) return []
  return Array.from({ length: RING + 1 }, (_, index) => {
    const angle = (index / RING) * 2 * Math.PI
    return at({
      eastM: circle.eastM + circle.radiusM * Math.sin(angle),
      northM: circle.northM + circle.radiusM * Math.cos(angle)
    })
  })
}

/** Free space round a name, mm. */
const CLEAR_MM = 0.4

function sizeOf(lines: readonly Line[]): { width: number; height: number } {
  return {
    width: Math.max(...lines.map(one => textEm(one.text) * one.size)) + 2 * CLEAR_MM,
    height: lines.reduce((sum, one) => sum + one.size * 1.2, 0.3)
  }
}

/** An inner drawing hides what is outside it, and needs no id as a clip path does. */
function clippedTo({ x, y, width, height }: Box, inner: string): string {
  const viewBox = [x, y, width, height].map(rounded).join(' ')
  return element('svg', { x, y, width, height, viewBox }, inner)
}

export function projection({ map, ratio, middle: { eastM, northM } }: PlanFigure): (spot: PlanSpot) => Spot {
  const perM = 1000 / ratio
  return spot => ({
    x: map.xMm + map.widthMm / 2 + (spot.eastM - eastM) * perM,
    y: map.yMm + map.heightMm / 2 - (spot.northM - northM) * perM
  })
}

function words({ x, y, width, lines }: PlacedName): string {
  let baseline = y + 0.1
  return lines
    .map(({ text, size, strong }) => {
      baseline += size * 1.2
      return label(x + width / 2, baseline - size * 0.27, text, {
        class: strong ? 'plan-name' : 'plan-small',
        'text-anchor': 'middle'
      })
    })
    .join('')
}

function leader({ leader: stroke }: PlacedName): string {
  if (!stroke) return ''
  return line(stroke.from.x, stroke.from.y, stroke.to.x, stroke.to.y, { class: 'plan-leader' })
}

const isAside = ({ drawn, place }: LaidMark): boolean => drawn.x !== place.x || drawn.y !== place.y

/** A pattern stops short of a name that stands on it. */
function clearing({ x, y, width, height }: PlacedName, areas: Laid['areas']): string {
  const box = { x, y, width, height }
  const onPattern = areas.some(({ shape, pattern }) => pattern !== undefined && shared(box, boxAround(shape)) > 0)
  return onPattern ? rect(box, { class: 'plan-clear' }) : ''
}

/** Of many small patches of one zone the first is named, of large ones each. */
function roomy(shape: readonly Spot[]): boolean {
  const { width, height } = boxAround(shape)
  return width > ROOMY_MM && height > ROOMY_MM
}

function square({ x, y }: Spot, half: number): Box {
  return { x: x - half, y: y - half, width: 2 * half, height: 2 * half }
}

function outline(shape: readonly Spot[]): string {
  return element('path', { d: `${dOf(shape)}Z`, class: 'plan-outline' })
}

const dOf = (shape: readonly Spot[]): string =>
  shape.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${rounded(x)} ${rounded(y)}`).join('')

function pathOf({ points, circle }: PlanLine, at: (spot: PlanSpot) => Spot): string {
  const ring = circle ? ringPath(at(circle), at({ ...circle, eastM: circle.eastM + circle.radiusM })) : ''
  return dOf(points.map(at)) + ring
}

function ringPath(middleSpot: Spot, edge: Spot): string {
  const r = rounded(edge.x - middleSpot.x)
  const [left, right, y] = [rounded(2 * middleSpot.x - edge.x), rounded(edge.x), rounded(middleSpot.y)]
  return `M${left} ${y}A${r} ${r} 0 0 1 ${right} ${y}A${r} ${r} 0 0 1 ${left} ${y}`
}
