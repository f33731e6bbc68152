import type { PlanSymbol } from '../../binder/figures/plan.ts'
import type { Spot } from './plan-pattern.ts'
import { MARK_MM } from './plan-symbols.ts'

/** Symbols that only touch, or cover each other by less, stay where they are, mm. */
const SLACK_MM = 0.5
const GAP_MM = 0.3
/** One that was moved may meet a third. */
const TRIES = 6

export interface SetMark {
  readonly symbol: PlanSymbol
  readonly at: Spot
}

/**
 * Where symbols are drawn, in their order: at their places, but one that would hide another is moved straight away from it until both are
 * seen. Boxes stay, since ties lead to them; of two others the second moves.
 */
export function spreadMarks(marks: readonly SetMark[]): Spot[] {
  const order = [...marks.keys()].sort((a, b) => rankOf(marks[a]) - rankOf(marks[b]) || a - b)
  const drawn = new Map<number, SetMark>()
  for (const index of order) {
    const mark = marks[index]
    if (mark) drawn.set(index, { ...mark, at: clearOf([...drawn.values()], mark) })
  }
  return marks.map(({ at }, index) => drawn.get(index)?.at ?? at)
}

const rankOf = (mark: SetMark | undefined): number => (mark?.symbol === 'box' || mark?.symbol === 'valve box' ? 0 : 1)

function clearOf(drawn: readonly SetMark[], mark: SetMark): Spot {
  let { at } = mark
  for (let tried = 0; tried < TRIES; tried += 1) {
    const hit = drawn.find(other => covers({ ...mark, at }, other))
    if (!hit) return at
    at = away(hit, { ...mark, at })
  }
  return at
}

function reach(a: SetMark, b: SetMark): { readonly wide: number; readonly high: number } {
  const half = ({ symbol }: SetMark) => (symbol === 'backflow' ? MARK_MM * 1.5 : MARK_MM)
  return { wide: half(a) + half(b), high: 2 * MARK_MM }
}

function covers(a: SetMark, b: SetMark): boolean {
  const { wide, high } = reach(a, b)
  return Math.abs(a.at.x - b.at.x) < wide - SLACK_MM && Math.abs(a.at.y - b.at.y) < high - SLACK_MM
}

/** As little as will do; up and to the right where both are at one place. */
function away(from: SetMark, mark: SetMark): Spot {
  const [dx, dy] = [mark.at.x - from.at.x, mark.at.y - from.at.y]
  const long = Math.hypot(dx, dy)
  const [ux, uy] = long === 0 ? [Math.SQRT1_2, -Math.SQRT1_2] : [dx / long, dy / long]
  const { wide, high } = reach(from, mark)
  const far = Math.min((wide + GAP_MM) / Math.abs(ux), (high + GAP_MM) / Math.abs(uy))
  return { x: from.at.x + ux * far, y: from.at.y + uy * far }
}
