import { DAY_MINUTES } from '../../units/clock.ts'
import type { Window } from '../../units/clock.ts'
import { DAY_S } from './run-times.ts'

/** Part of a day, in seconds after midnight, up to 86,400. */
export type Stretch = readonly [fromS: number, toS: number]

/** In order, and none meets another. */
export type Stretches = readonly Stretch[]

export const NONE: Stretches = []
export const WHOLE_DAY: Stretches = [[0, DAY_S]]

/** What the windows leave of a day. Without any window every hour is allowed, so nothing is left. */
export function outsideOf(windows: readonly Window[]): Stretches {
  if (windows.length === 0) return NONE
  const left = complement(merged(windows.flatMap(stretchesOf)))
  return left.length === 0 ? NONE : left
}

/** The stretches of a day that the windows cover. */
export function insideOf(windows: readonly Window[]): Stretches {
  const covered = merged(windows.flatMap(stretchesOf))
  return covered.length === 0 ? NONE : covered
}

/** Overlapping and meeting stretches as one. */
export function merged(stretches: readonly Stretch[]): Stretches {
  const joined: [number, number][] = []
  for (const [fromS, toS] of [...stretches].sort(([a], [b]) => a - b)) {
    const last = joined.at(-1)
    if (last && fromS <= last[1]) last[1] = Math.max(last[1], toS)
    else joined.push([fromS, toS])
  }
  return joined
}

/** The rest of the day. */
export function complement(stretches: Stretches): Stretches {
  const rest: Stretch[] = []
  let reached = 0
  for (const [fromS, toS] of [...stretches, [DAY_S, DAY_S] as const]) {
    if (fromS > reached) rest.push([reached, fromS])
    reached = Math.max(reached, toS)
  }
  return rest
}

/** As windows of the clock: what ends at midnight and goes on from midnight is one. The whole day is 00:00-00:00. */
export function asWindows(stretches: Stretches): Window[] {
  const windows = stretches.map(([fromS, toS]) => ({ from: fromS / 60, to: (toS / 60) % DAY_MINUTES }))
  const [first, last] = [windows[0], windows.at(-1)]
  if (!first || !last || first === last || first.from !== 0 || last.to !== 0) return windows
  return [...windows.slice(1, -1), { from: last.from, to: first.to }]
}

/** A window as one or two stretches of one day. */
function stretchesOf({ from, to }: Window): Stretch[] {
  if (to > from) return [[from * 60, to * 60]]
  const evening: Stretch = [from * 60, DAY_S]
  return to === 0 ? [evening] : [evening, [0, to * 60]]
}
