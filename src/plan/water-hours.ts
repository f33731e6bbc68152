import { absent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import type { WateringRule } from '../model/site.ts'
import { DAY_MINUTES } from '../units/clock.ts'
import type { Window } from '../units/clock.ts'

export interface AllowedHours {
  /** In 24 hours. */
  readonly allowedS: number
  /** Where a night begins: at the end of the longest stretch without water. Minutes after midnight. */
  readonly nightFrom: number
}

/** What all rules together allow in a day. Absent where none limits the hours, or nothing is left. */
export function allowedHours(rules: readonly WateringRule[]): Maybe<AllowedHours> {
  const minutes = Array.from({ length: DAY_MINUTES }, (_, minute) => rules.every(rule => allows(rule, minute)))
  const allowed = minutes.filter(Boolean).length
  if (allowed === DAY_MINUTES) return absent('no rule limits the hours')
  if (allowed === 0) return absent('the rules leave no hour')
  return { allowedS: allowed * 60, nightFrom: endOfLongestGap(minutes) }
}

function allows({ windows, barred = [] }: WateringRule, minute: number): boolean {
  return (windows.length === 0 || windows.some(one => holds(one, minute))) && !barred.some(one => holds(one, minute))
}

function holds({ from, to }: Window, minute: number): boolean {
  return to > from ? minute >= from && minute < to : minute >= from || minute < to
}

/** Twice round the clock, so that a gap across midnight is seen whole. */
function endOfLongestGap(minutes: readonly boolean[]): number {
  let [gap, longest, end] = [0, 0, 0]
  for (const [index, isAllowed] of [...minutes, ...minutes].entries()) {
    if (isAllowed && gap > longest) [longest, end] = [gap, index % DAY_MINUTES]
    gap = isAllowed ? 0 : gap + 1
  }
  return end
}
