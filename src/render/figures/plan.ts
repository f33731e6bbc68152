import type { PlanFigure, PlanLine, PlanMark, PlanSpot } from '../../binder/figures/plan.ts'
import { element, figure, label, line, rect, rounded } from '../svg.ts'
import type { Box } from '../svg.ts'
import { placeLabels } from './plan-labels.ts'
import type { PlacedLabel, WantedLabel } from './plan-labels.ts'
import { insideOf, patternFill } from './plan-pattern.ts'
import type { Spot } from './plan-pattern.ts'
import { planLegend } from './plan-legend.ts'
import { MARK_MM, planStroke, planSymbol } from './plan-symbols.ts'

/** Sizes of letters, mm. */
const NAME_MM = 3.1
const SMALL_MM = 2.5
/** A shape at least so wide and high is named by itself, mm. */
const ROOMY_MM = 12
/** Widths of letters by their height, with some to spare. */
const WIDE = 0.6

interface Text {
  readonly label: WantedLabel
  readonly lines: readonly { readonly text: string; readonly size: number; readonly strong: boolean }[]
}

/** A plan at its scale: one unit is a millimeter on paper. Ground first, then ties, then marks, labels on top. */
export function planFigure(plan: PlanFigure): string {
  const at = projection(plan)
  const { map } = plan
  const frame: Box = { x: map.xMm, y: map.yMm, width: map.widthMm, height: map.heightMm }
  const areas = plan.areas.map(one => ({ ...one, shape: one.points.map(at) }))
  const ground = areas
    .map(({ shape, pattern }) => (pattern === undefined ? '' : patternFill(shape, pattern)) + outline(shape))
    .join('')
  const lines = plan.lines.map(one => planStroke(one.kind, pathOf(one, at))).join('')
  const texts: Text[] = [
    ...plan.marks.map(mark => markText(mark, at(mark))),
    ...plan.points.map(point => nameText([{ text: point.label, size: SMALL_MM, strong: false }], at(point), 2)),
    ...areas
      .filter((one, index) => roomy(one.shape) || areas.findIndex(other => other.label === one.label) === index)
      .filter(one => one.label !== '')
      .map(({ label: name, shape }) => nameText([{ text: name, size: NAME_MM, strong: true }], insideOf(shape), 0)),
    ...plan.lines
      .filter(one => one.label !== '')
      .map(one => nameText([{ text: one.label, size: SMALL_MM, strong: false }], middle(one, at), 0))
  ]
  const ties = plan.ties.map(one => ({ from: at(one.from), to: at(one.to), text: one.text })).map(withRoom)
  const furniture = [...northArrow(plan, frame), ...scaleBars(plan, frame)]
  const taken = [
    ...furniture.map(one => one.box),
    ...plan.marks.map(mark => square(at(mark), MARK_MM * 1.5)),
    ...plan.points.map(point => square(at(point), 2)),
    ...ties.filter(one => one.text !== '').map(one => tieBox(one.from, one.to, one.text))
  ]
  const placed = placeLabels(
    texts.map(one => one.label),
    taken,
    frame
  )
  const inner = [
    rect(frame, { class: 'plan-frame' }),
    clippedTo(frame, ground + lines + ties.map(tie => dimension(tie.from, tie.to, tie.text)).join('')),
    placed.map((box, index) => leader(box, texts[index])).join(''),
    plan.points.map(point => planSymbol('point', at(point))).join(''),
    plan.marks.map(mark => planSymbol(mark.symbol, at(mark))).join(''),
    placed.map((box, index) => words(box, texts[index])).join(''),
    furniture.map(one => one.svg).join(''),
    planLegend(plan)
  ].join('')
  const svg = figure(plan.widthMm, plan.heightMm, plan.alt, inner)
  return svg.replace('<svg', `<svg style="width:${rounded(plan.widthMm)}mm;height:${rounded(plan.heightMm)}mm"`)
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

function markText({ label: name, holds }: PlanMark, spot: Spot): Text {
  const lines = [{ text: name, size: NAME_MM, strong: true }]
  if (holds) lines.push({ text: holds, size: SMALL_MM, strong: false })
  return nameText(lines, spot, MARK_MM * 1.3)
}

function nameText(lines: Text['lines'], { x, y }: Spot, away: number): Text {
  const width = Math.max(...lines.map(one => [...one.text].length * WIDE * one.size)) + 1
  const height = lines.reduce((sum, one) => sum + one.size * 1.25, 0.4)
  return { label: { x, y, width, height, away }, lines }
}

function words(box: PlacedLabel, text: Text | undefined): string {
  let y = box.y + 0.2
  return (text?.lines ?? [])
    .map(({ text: said, size, strong }) => {
      y += size * 1.25
      return label(box.x + box.width / 2, y - size * 0.3, said, {
        class: strong ? 'plan-name' : 'plan-small',
        'text-anchor': 'middle'
      })
    })
    .join('')
}

function leader(box: PlacedLabel, text: Text | undefined): string {
  if (!box.led || !text) return ''
  const { x, y } = text.label
  const to = {
    x: Math.min(Math.max(x, box.x), box.x + box.width),
    y: Math.min(Math.max(y, box.y), box.y + box.height)
  }
  return line(x, y, to.x, to.y, { class: 'plan-leader' })
}

/** Of many small patches of one zone the first is named, of large ones each. */
function roomy(shape: readonly Spot[]): boolean {
  const [xs, ys] = [shape.map(one => one.x), shape.map(one => one.y)]
  return Math.max(...xs) - Math.min(...xs) > ROOMY_MM && Math.max(...ys) - Math.min(...ys) > ROOMY_MM
}

function square({ x, y }: Spot, half: number): Box {
  return { x: x - half, y: y - half, width: 2 * half, height: 2 * half }
}

/** A tie as a dimension line: ticks at both ends, the distance on it, upright enough to be read. */
function dimension(from: Spot, to: Spot, text: string): string {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const length = Math.hypot(dx, dy) || 1
  const [nx, ny] = [(-dy / length) * 1.1, (dx / length) * 1.1]
  const tick = ({ x, y }: Spot) => line(x - nx, y - ny, x + nx, y + ny, { class: 'plan-tie' })
  const turn = (Math.atan2(dy, dx) * 180) / Math.PI
  const upright = turn > 90 ? turn - 180 : turn <= -90 ? turn + 180 : turn
  const [x, y] = [(from.x + to.x) / 2, (from.y + to.y) / 2]
  const rotate = `rotate(${rounded(upright)} ${rounded(x)} ${rounded(y)})`
  return (
    line(from.x, from.y, to.x, to.y, { class: 'plan-tie' }) +
    tick(from) +
    tick(to) +
    label(x, y - 0.5, text, { class: 'plan-tie-text', 'text-anchor': 'middle', transform: rotate })
  )
}

/** A tie too short for its figure is drawn without: the detail of the box has it, and the table. */
function withRoom<T extends { from: Spot; to: Spot; text: string }>(tie: T): T {
  const long = Math.hypot(tie.to.x - tie.from.x, tie.to.y - tie.from.y)
  return [...tie.text].length * WIDE * SMALL_MM > long ? { ...tie, text: '' } : tie
}

function tieBox(from: Spot, to: Spot, text: string): Box {
  const turn = Math.atan2(to.y - from.y, to.x - from.x)
  const long = [...text].length * WIDE * SMALL_MM
  const width = Math.abs(Math.cos(turn)) * long + 3
  const height = Math.abs(Math.sin(turn)) * long + 3
  return { x: (from.x + to.x - width) / 2, y: (from.y + to.y - height) / 2, width, height }
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

/** Middle of the longest stretch of a line, or the top of a ring. */
function middle({ points, circle }: PlanLine, at: (spot: PlanSpot) => Spot): Spot {
  if (circle) return at({ eastM: circle.eastM, northM: circle.northM + circle.radiusM })
  const spots = points.map(at)
  let best: Spot = spots[0] ?? { x: 0, y: 0 }
  let longest = -1
  for (const [index, a] of spots.slice(0, -1).entries()) {
    const b = spots[index + 1] ?? a
    const long = Math.hypot(b.x - a.x, b.y - a.y)
    if (long > longest) [longest, best] = [long, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }]
  }
  return best
}

interface Piece {
  readonly box: Box
  readonly svg: string
}

function northArrow({ north, titleBlock }: PlanFigure, frame: Box): Piece[] {
  const big = titleBlock ? 1 : 0.7
  const x = frame.x + frame.width - 7 * big
  const y = frame.y + 4 * big
  const arrow = `M${rounded(x)} ${rounded(y)}L${rounded(x + 3 * big)} ${rounded(y + 10 * big)}L${rounded(x)} ${rounded(y + 7.6 * big)}Z`
  const half = `M${rounded(x)} ${rounded(y)}L${rounded(x - 3 * big)} ${rounded(y + 10 * big)}L${rounded(x)} ${rounded(y + 7.6 * big)}Z`
  const box = { x: x - 4 * big, y: y - 1, width: 8 * big, height: 15 * big }
  return [
    {
      box,
      svg:
        rect(box, { class: 'plan-clear' }) +
        element('path', { d: arrow, class: 'plan-solid' }) +
        element('path', { d: half, class: 'plan-mark' }) +
        label(x, y + 13.4 * big, north, { class: 'plan-name', 'text-anchor': 'middle' })
    }
  ]
}

/** Bars of black and white parts, each in its own unit, at the foot on the left; the scale in figures above them. */
function scaleBars({ scale, ratio }: PlanFigure, frame: Box): Piece[] {
  const perM = 1000 / ratio
  const high = 6 * scale.bars.length + (scale.text ? 4.4 : 0.6)
  const width = Math.max(...scale.bars.map(one => one.lengthM * perM + 18), scale.text.length * 1.5 + 4)
  const box = { x: frame.x + 1.5, y: frame.y + frame.height - high - 1.5, width, height: high }
  const top = box.y + (scale.text ? 4.2 : 0.4)
  const bars = scale.bars.map(({ lengthM, parts, from, to }, row) => {
    const y = top + row * 6
    const x = box.x + 2
    const part = (lengthM * perM) / parts
    const blocks = Array.from({ length: parts }, (_, index) =>
      rect(
        { x: x + index * part, y: y + 3, width: part, height: 1.2 },
        { class: index % 2 === 0 ? 'plan-solid' : 'plan-mark' }
      )
    )
    return (
      blocks.join('') +
      label(x, y + 2.4, from, { class: 'plan-small' }) +
      label(x + lengthM * perM, y + 2.4, to, { class: 'plan-small', 'text-anchor': 'middle' })
    )
  })
  const text = scale.text ? label(box.x + 2, box.y + 3.2, scale.text, { class: 'plan-name' }) : ''
  return [{ box, svg: rect(box, { class: 'plan-clear' }) + text + bars.join('') }]
}
