import type { Box } from '../svg.ts'
import { boxAround, isIn, nearestIn, strokesOf } from './plan-geometry.ts'
import type { Stroke } from './plan-geometry.ts'
import type { Candidate } from './plan-labels.ts'
import { insideOf } from './plan-pattern.ts'
import type { Spot } from './plan-pattern.ts'

export interface Size {
  readonly width: number
  readonly height: number
}

/** Close to its mark: right first, as one reads, then left, then the slants, then above and below. */
const CLOSE: readonly (readonly [degrees: number, dislike: number])[] = [
  [0, 0],
  [180, 0.4],
  [-35, 0.6],
  [35, 0.7],
  [-145, 0.8],
  [145, 0.9],
  [-90, 1],
  [90, 1.2]
]
const CLOSE_MM = 0.6
/** Rings farther off, mm beyond the mark, each tried all round. */
const RINGS = [2.5, 4.5, 7, 10, 14, 19, 25]
const ROUND = 16
const RING_DISLIKE = 4
/** A name nearer than this needs no line to it, mm. */
const LED_MM = 1.6

/** Beside a mark, or farther off with a line that leads to it; `away` is half the size of the mark. */
export function besideMark(spot: Spot, size: Size, away: number): Candidate[] {
  const close = CLOSE.map(([degrees, dislike]) => candidate(spot, size, away, away + CLOSE_MM, degrees, dislike))
  const off = RINGS.flatMap(ring => {
    const at = (degrees: number, share?: number) =>
      candidate(
        spot,
        size,
        away,
        away + ring,
        degrees,
        RING_DISLIKE + ring * 0.3 + (share === undefined ? 0 : 0.5),
        share
      )
    const round = Array.from({ length: ROUND }, (_, index) => at((index * 360) / ROUND))
    // Straight above and below, also with the line at one of its ends.
    return [...round, ...[-90, 90].flatMap(degrees => [at(degrees, 0.1), at(degrees, 0.9)])]
  })
  return [...close, ...off]
}

/** `share`: how far along the name its line ends; by the direction where it is not given. */
function candidate(
  spot: Spot,
  size: Size,
  away: number,
  reach: number,
  degrees: number,
  dislike: number,
  share?: number
): Candidate {
  const angle = (degrees * Math.PI) / 180
  const [east, south] = [Math.cos(angle), Math.sin(angle)]
  const part = (direction: number) => (direction > 0.35 ? 0 : direction < -0.35 ? 1 : 0.5)
  const box = {
    x: spot.x + east * reach - (share ?? part(east)) * size.width,
    y: spot.y + south * reach - part(south) * size.height,
    ...size
  }
  const leader = leaderTo(box, spot, away)
  return leader ? { box, dislike, leader } : { box, dislike }
}

function leaderTo(box: Box, spot: Spot, away: number): Stroke | undefined {
  const to = nearestIn(box, spot)
  const length = Math.hypot(to.x - spot.x, to.y - spot.y)
  if (length <= away + LED_MM) return undefined
  const share = away / length
  return { from: { x: spot.x + (to.x - spot.x) * share, y: spot.y + (to.y - spot.y) * share }, to }
}

/** Steps of the grid that is tried in a shape, each way. */
const GRID = 7
const MIDDLE_MM = 0.12
const OVER_EDGE = 6
const AT_SIDE = 4.5
const OUTSIDE_SHAPE = 7

/** In a shape, near its middle, wholly inside where there is room; else beside it. */
export function inShape(shape: readonly Spot[], size: Size): Candidate[] {
  const middle = insideOf(shape)
  const around = boxAround(shape)
  const centered = ({ x, y }: Spot): Box => ({ x: x - size.width / 2, y: y - size.height / 2, ...size })
  const inner = Array.from({ length: GRID * GRID }, (_, index) => ({
    x: around.x + (around.width * ((index % GRID) + 0.5)) / GRID,
    y: around.y + (around.height * (Math.floor(index / GRID) + 0.5)) / GRID
  }))
    .map(spot => ({ spot, box: centered(spot) }))
    .filter(({ box }) => cornersOf(box).every(corner => isIn(corner, shape)))
    .map(({ spot, box }) => ({ box, dislike: Math.hypot(spot.x - middle.x, spot.y - middle.y) * MIDDLE_MM }))
  const beside = besideMark(middle, size, 0.3).map(one => ({ ...one, dislike: one.dislike + OUTSIDE_SHAPE }))
  const sides = [
    { x: around.x + around.width + CLOSE_MM, y: middle.y - size.height / 2 },
    { x: around.x - size.width - CLOSE_MM, y: middle.y - size.height / 2 },
    { x: middle.x - size.width / 2, y: around.y - size.height - CLOSE_MM },
    { x: middle.x - size.width / 2, y: around.y + around.height + CLOSE_MM }
  ].map(at => ({ box: { ...at, ...size }, dislike: AT_SIDE }))
  return [
    ...inner,
    { box: centered(middle), dislike: inner.length > 0 ? OVER_EDGE * 2 : OVER_EDGE },
    ...sides,
    ...beside
  ]
}

function cornersOf({ x, y, width, height }: Box): Spot[] {
  return [
    { x, y },
    { x: x + width, y },
    { x, y: y + height },
    { x: x + width, y: y + height }
  ]
}

/** Shares of a stretch at which its name is tried. */
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8, 0.05, 0.95]
const STRETCHES = 3
const BESIDE_MM = 0.9
const ON_LINE = 2.5

/** Beside one of the longest stretches of a line, near its middle; on it where there is no room on either side. */
export function alongLine(spots: readonly Spot[], size: Size): Candidate[] {
  const stretches = strokesOf(spots)
    .map((stroke, index) => ({ stroke, index, long: lengthOf(stroke) }))
    .sort((a, b) => b.long - a.long || a.index - b.index)
    .slice(0, STRETCHES)
  return stretches.flatMap(({ stroke: { from, to }, long }, rank) => {
    const [nx, ny] = long === 0 ? [0, 1] : [-(to.y - from.y) / long, (to.x - from.x) / long]
    const off = (Math.abs(nx) * size.width) / 2 + (Math.abs(ny) * size.height) / 2 + BESIDE_MM
    return SHARES.flatMap((share, tried) => {
      const x = from.x + (to.x - from.x) * share - size.width / 2
      const y = from.y + (to.y - from.y) * share - size.height / 2
      const dislike = rank + tried * 0.3
      return [
        { box: { x: x + nx * off, y: y + ny * off, ...size }, dislike },
        { box: { x: x - nx * off, y: y - ny * off, ...size }, dislike },
        { box: { x, y, ...size }, dislike: dislike + ON_LINE }
      ]
    })
  })
}

const lengthOf = ({ from, to }: Stroke): number => Math.hypot(to.x - from.x, to.y - from.y)
