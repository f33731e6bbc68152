import type { Box } from '../svg.ts'
import { cross, grown, holds, lengthInside, shared } from './plan-geometry.ts'
import type { Stroke } from './plan-geometry.ts'

/** Somewhere that a name may stand. */
export interface Candidate {
  readonly box: Box
  /** How much less it is liked than the best place, in mm² of a thin line covered. */
  readonly dislike: number
  /** From what it names, where it stands off. */
  readonly leader?: Stroke
}

/** What a name should not cover, and how much that matters: by the area of a box, or by the length of a stroke. */
export type Obstacle =
  | { readonly box: Box; readonly weight: number }
  /** `half` of its thickness, mm. */
  | { readonly stroke: Stroke; readonly weight: number; readonly half?: number }

/** Two names over each other are the worst. */
const NAMES_TOUCH = 500
const NAMES_MM2 = 1000
/** A box touched at all. */
const TOUCH = 20
/** A stroke touched at all, as so many mm of it. */
const STROKE_TOUCH_MM = 3
/** A leader: each millimeter, through a name, across another. */
const LEADER_MM = 0.5
const LEADER_THROUGH = 60
const LEADERS_CROSS = 25
/** Over a line of the ground, by its weight. */
const LEADER_OVER = 1.5
/** It settles in two or three. */
const PASSES = 8
const NOTHING = 1e-9

/**
 * A place in the frame for each name, by its index, none where it has nowhere to stand: the one that covers least of what is drawn and of the
 * other names. Each takes the best that is left, in order; then each looks again while any gains by moving. The same input gives the same places.
 */
export function placeNames(
  wanted: readonly (readonly Candidate[])[],
  obstacles: readonly Obstacle[],
  within: Box
): (Candidate | undefined)[] {
  const choices = wanted.map(candidates =>
    candidates
      .filter(one => holds(within, one.box))
      .map(one => ({ one, alone: once(() => one.dislike + alone(one, obstacles)) }))
  )
  const placed: (Candidate | undefined)[] = wanted.map(() => undefined)
  for (let pass = 0; pass < PASSES; pass += 1) {
    let moved = false
    for (const [index, mine] of choices.entries()) {
      const others = placed.filter((_, other) => other !== index)
      const best = cheapest(mine, others, placed[index])
      if (best !== placed[index]) moved = true
      placed[index] = best
    }
    if (!moved) break
  }
  return placed
}

interface Choice {
  readonly one: Candidate
  /** What it costs whatever the other names do; reckoned only where it can still be the best. */
  readonly alone: () => number
}

function once(reckon: () => number): () => number {
  let known: number | undefined
  return () => (known ??= reckon())
}

/** Stays where it is unless another is better. */
function cheapest(
  choices: readonly Choice[],
  others: readonly (Candidate | undefined)[],
  now: Candidate | undefined
): Candidate | undefined {
  const costOf = (choice: Choice) =>
    others.reduce((sum, other) => sum + (other ? between(choice.one, other) : 0), choice.alone())
  const present = choices.find(({ one }) => one === now)
  let [best, least] = present ? [present.one, costOf(present)] : [undefined, Infinity]
  for (const choice of choices) {
    if (choice.one.dislike >= least - NOTHING || choice.alone() >= least - NOTHING) continue
    const cost = costOf(choice)
    if (cost < least - NOTHING) [best, least] = [choice.one, cost]
  }
  return best
}

function alone({ box, leader }: Candidate, obstacles: readonly Obstacle[]): number {
  let cost = 0
  if (leader) cost += LEADER_MM * Math.hypot(leader.to.x - leader.from.x, leader.to.y - leader.from.y)
  for (const obstacle of obstacles) {
    if ('stroke' in obstacle) {
      const inside = lengthInside(obstacle.stroke, grown(box, obstacle.half ?? 0))
      if (inside > NOTHING) cost += (STROKE_TOUCH_MM + inside) * obstacle.weight
      if (leader && cross(leader, obstacle.stroke)) cost += LEADER_OVER * obstacle.weight
      continue
    }
    const common = shared(box, obstacle.box)
    if (common > NOTHING) cost += TOUCH + common * obstacle.weight
    // A leader begins at the corner of its own mark.
    if (leader && !startsIn(leader, obstacle.box)) cost += lengthInside(leader, obstacle.box) * obstacle.weight
  }
  return cost
}

const startsIn = ({ from }: Stroke, { x, y, width, height }: Box): boolean =>
  from.x > x && from.x < x + width && from.y > y && from.y < y + height

function between(a: Candidate, b: Candidate): number {
  const common = shared(a.box, b.box)
  const over = common > NOTHING ? NAMES_TOUCH + common * NAMES_MM2 : 0
  const through = (leader: Stroke | undefined, { box }: Candidate) =>
    leader && lengthInside(leader, box) > NOTHING ? LEADER_THROUGH : 0
  const crossing = a.leader && b.leader && cross(a.leader, b.leader) ? LEADERS_CROSS : 0
  return over + through(a.leader, b) + through(b.leader, a) + crossing
}
