import { sortedBy, sum } from '../../base/collections.ts'
import { atMost } from '../within.ts'

/** A stretch of open valve on one supply. Seconds count from any one midnight, the same for all. */
export interface Opening {
  readonly name: string
  readonly fromS: number
  readonly toS: number
  readonly flowM3s: number
}

/** Time during which the same valves are open. */
export interface FlowStretch {
  readonly fromS: number
  readonly toS: number
  readonly flowM3s: number
  /** In the order in which they opened. */
  readonly names: readonly string[]
}

/**
 * What is drawn over time, stretch by stretch, in order; none for times with every valve shut. A valve that shuts at the second in which
 * another opens does not run with it. 9.2 gpm from 22:00 to 22:50 and 8.8 gpm from 22:30 to 23:15: 9.2, 18.0, 8.8.
 */
export function* flowStretches(openings: readonly Opening[]): Generator<FlowStretch> {
  const opening = sortedBy(
    openings.filter(one => one.toS > one.fromS),
    one => one.fromS
  )
  let open: Opening[] = []
  let next = 0
  let now = opening[0]?.fromS ?? 0
  while (next < opening.length || open.length > 0) {
    const starts = opening[next]?.fromS ?? Infinity
    if (open.length === 0) now = starts
    for (let one = opening[next]; one && one.fromS <= now; one = opening[next]) {
      open.push(one)
      next += 1
    }
    const until = Math.min(opening[next]?.fromS ?? Infinity, ...open.map(one => one.toS))
    if (until > now)
      yield { fromS: now, toS: until, flowM3s: sum(open.map(one => one.flowM3s)), names: open.map(one => one.name) }
    now = until
    open = open.filter(one => one.toS > until)
  }
}

/** The stretch with the greatest flow, the earliest where several draw as much. Undefined where nothing opens. */
export function peakOf(stretches: Iterable<FlowStretch>): FlowStretch | undefined {
  let peak: FlowStretch | undefined
  for (const one of stretches) if (!peak || !atMost(one.flowM3s, peak.flowM3s)) peak = one
  return peak
}

/**
 * Groups that may run one after another, none drawing more than the limit: the largest flows first, each into the first group with room.
 * Undefined where one of them alone draws more.
 */
export function groupsWithin<T extends { readonly flowM3s: number }>(
  parts: readonly T[],
  limitM3s: number
): readonly (readonly T[])[] | undefined {
  const groups: T[][] = []
  for (const part of sortedBy(parts, one => -one.flowM3s)) {
    if (!atMost(part.flowM3s, limitM3s)) return undefined
    const room = groups.find(group => atMost(sum(group.map(one => one.flowM3s)) + part.flowM3s, limitM3s))
    if (room) room.push(part)
    else groups.push([part])
  }
  return groups
}
