import { sortedBy } from '../../base/collections.ts'
import type { OutsideRun } from '../../domain/schedule/windows.ts'

/** Of many runs that break the same rule, the one to tell about: the longest outside, the earliest of those. */
export function worstOf(outside: readonly OutsideRun[]): OutsideRun | undefined {
  return sortedBy(
    outside,
    one => -one.outsideMinutes,
    one => one.run.day
  )[0]
}
