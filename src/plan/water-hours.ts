import { absent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { sum } from '../base/collections.ts'
import { DAY_MINUTES, windowLength } from '../units/clock.ts'
import type { Window } from '../units/clock.ts'

export interface AllowedHours {
  /** In 24 hours. */
  readonly allowedS: number
  /** Where a night begins: at the end of the longest stretch without water. Minutes after midnight. */
  readonly nightFrom: number
}

/** Of the hours that the rules of a day leave. Absent where none limits them, or nothing is left. */
export function allowedHours(windows: readonly Window[]): Maybe<AllowedHours> {
  if (windows.length === 0) return absent('the rules leave no hour')
  const allowed = sum(windows.map(windowLength))
  if (allowed === DAY_MINUTES) return absent('no rule limits the hours')
  return { allowedS: allowed * 60, nightFrom: endOfLongestGap(windows) }
}

/** Windows in order round the clock: each gap ends where a window opens. */
function endOfLongestGap(windows: readonly Window[]): number {
  const inOrder = [...windows].sort((a, b) => a.from - b.from)
  let [longest, end] = [0, 0]
  for (const [index, { from }] of inOrder.entries()) {
    const before = inOrder.at(index - 1)
    const gap = before ? windowLength({ from: before.to, to: from }) : 0
    if (gap > longest) [longest, end] = [gap, from]
  }
  return end
}
