import { MONO_EM } from '../letter-widths.ts'
import { label, line, rounded } from '../svg.ts'
import type { Box } from '../svg.ts'
import { lengthInside, shared } from './plan-geometry.ts'
import type { Spot } from './plan-pattern.ts'

/** Size of the figure on a tie, mm. */
const TEXT_MM = 2.5
/** A mark at either end, mm. */
const END_MM = 2.2
/** From the tie to the foot of its figure, mm: it stands on the tie, or hangs below it where that hides less. */
const SIDES = [-0.5, 2.3] as const
/** Where on the tie its figure is tried. */
const SHARES = [0.5, 0.4, 0.6, 0.32, 0.68]
const STEP_MM = 1.6

export interface Tie {
  readonly from: Spot
  readonly to: Spot
  readonly text: string
}

export interface PlacedTie extends Tie {
  /** Middle of the figure; it lies along the tie. */
  readonly at: Spot
  /** How far below the tie its foot stands, mm. */
  readonly below: number
  /** What the figure covers, in small squares along it; none where there is no figure. */
  readonly covers: readonly Box[]
}

/** Each figure on its tie where it covers least of what is taken; one that is longer than its tie is left to the detail of the box and the table. */
export function placeTies(ties: readonly Tie[], taken: readonly Box[]): PlacedTie[] {
  const full = [...taken]
  return ties.map(tie => {
    const long = Math.hypot(tie.to.x - tie.from.x, tie.to.y - tie.from.y)
    const wide = widthOf(tie.text)
    if (tie.text === '' || wide + 2 * END_MM > long) return { ...tie, text: '', at: tie.from, below: 0, covers: [] }
    const others = ties.filter(one => one !== tie)
    const room = SHARES.filter(share => Math.min(share, 1 - share) * long >= wide / 2 + END_MM)
    const tried = SIDES.flatMap(below =>
      room.map(share => {
        const at = along(tie, share)
        const covers = squares(tie, at, below, wide)
        return { at, below, covers, hidden: hiddenBy(covers, full, others) }
      })
    )
    const best = tried.reduce(
      (a, b) => (b.hidden < a.hidden - 1e-9 ? b : a),
      tried[0] ?? { at: along(tie, 0.5), below: SIDES[0], covers: [], hidden: 0 }
    )
    full.push(...best.covers)
    return { ...tie, at: best.at, below: best.below, covers: best.covers }
  })
}

function hiddenBy(covers: readonly Box[], taken: readonly Box[], others: readonly Tie[]): number {
  return covers.reduce((sum, cover) => {
    const boxes = taken.reduce((all, box) => all + shared(cover, box), 0)
    return sum + boxes + others.reduce((all, other) => all + lengthInside(other, cover), 0)
  }, 0)
}

const widthOf = (text: string): number => [...text].length * MONO_EM * TEXT_MM

function along({ from, to }: Tie, share: number): Spot {
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }
}

function squares({ from, to }: Tie, { x, y }: Spot, below: number, wide: number): Box[] {
  const long = Math.hypot(to.x - from.x, to.y - from.y)
  const east = to.x < from.x ? -1 : 1
  const [dx, dy] = [(east * (to.x - from.x)) / long, (east * (to.y - from.y)) / long]
  const above = TEXT_MM / 3 - below
  const count = Math.max(1, Math.ceil(wide / STEP_MM))
  return Array.from({ length: count }, (_, index) => {
    const off = ((index + 0.5) / count - 0.5) * wide
    const half = TEXT_MM / 2
    return {
      x: x + dx * off + dy * above - half,
      y: y + dy * off - dx * above - half,
      width: TEXT_MM,
      height: TEXT_MM
    }
  })
}

/** A tie as a dimension line: ticks at both ends, the distance on it, upright enough to be read. */
export function dimension({ from, to, text, at, below }: PlacedTie): string {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const length = Math.hypot(dx, dy) || 1
  const [nx, ny] = [(-dy / length) * 1.1, (dx / length) * 1.1]
  const tick = ({ x, y }: Spot) => line(x - nx, y - ny, x + nx, y + ny, { class: 'plan-tie' })
  const turn = (Math.atan2(dy, dx) * 180) / Math.PI
  const upright = turn > 90 ? turn - 180 : turn <= -90 ? turn + 180 : turn
  const rotate = `rotate(${rounded(upright)} ${rounded(at.x)} ${rounded(at.y)})`
  const words =
    text === ''
      ? ''
      : label(at.x, at.y + below, text, { class: 'plan-tie-text', 'text-anchor': 'middle', transform: rotate })
  return line(from.x, from.y, to.x, to.y, { class: 'plan-tie' }) + tick(from) + tick(to) + words
}
