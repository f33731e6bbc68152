import type { Box } from '../svg.ts'

export interface WantedLabel {
  /** What it names; it stands beside this, or in the middle of it. */
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
  /** Free space round the mark; 0 puts the label onto the spot first. */
  readonly away: number
}

export interface PlacedLabel extends Box {
  /** Stands so far off that a line leads to it. */
  readonly led: boolean
}

const EIGHT = [
  [1, 0],
  [1, -1],
  [-1, -1],
  [-1, 0],
  [1, 1],
  [-1, 1],
  [0, -1],
  [0, 1]
] as const
/** Less is rounding. */
const NOTHING_MM2 = 1e-6
/** Rings tried, mm beyond the mark. */
const RINGS = [0.6, 2.5, 5, 8, 12, 17, 23]

/**
 * Each label in the first free spot round its mark, nearest first, in the order of the list; where none is free, that which overlaps least.
 * `taken` is what no label may cover.
 */
export function placeLabels(wanted: readonly WantedLabel[], taken: readonly Box[], within: Box): PlacedLabel[] {
  const full: Box[] = [...taken]
  return wanted.map(label => {
    let best: PlacedLabel | undefined
    let least = Infinity
    for (const candidate of candidates(label)) {
      const cost = full.reduce((sum, box) => sum + shared(candidate, box), outside(candidate, within) * 3)
      if (cost < least - NOTHING_MM2) [least, best] = [cost, candidate]
      if (cost <= NOTHING_MM2) break
    }
    const placed = best ?? { x: label.x, y: label.y, width: label.width, height: label.height, led: false }
    full.push(placed)
    return placed
  })
}

function candidates({ x, y, width, height, away }: WantedLabel): PlacedLabel[] {
  const on = away === 0 ? [{ x: x - width / 2, y: y - height / 2, width, height, led: false }] : []
  const round = RINGS.flatMap((ring, index) =>
    EIGHT.map(([east, south]) => {
      const reach = away + ring
      const slant = east !== 0 && south !== 0 ? 0.75 : 1
      return {
        x: x + east * reach * slant + (east === 1 ? 0 : east === -1 ? -width : -width / 2),
        y: y + south * reach * slant + (south === 1 ? 0 : south === -1 ? -height : -height / 2),
        width,
        height,
        led: index > 0
      }
    })
  )
  return [...on, ...round]
}

/** Area that two boxes share. */
export function shared(a: Box, b: Box): number {
  const wide = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)
  const high = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y)
  return wide > 0 && high > 0 ? wide * high : 0
}

function outside(a: Box, within: Box): number {
  return a.width * a.height - shared(a, within)
}
