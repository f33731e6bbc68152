import { atLeast, atMost } from '../domain/within.ts'
import type { ProductSheet } from '../model/site.ts'
import { keptRule } from './advice-days.ts'
import type { AdviceGroup } from './advice-groups.ts'
import { capPassed, cycleInMonth, programFor, startsMost } from './advice-program.ts'
import { partsOf } from './advice-solve-of.ts'
import type { SolveOf } from './advice-solve-of.ts'

/** Within a tenth or a step of the need in every month, and inside every limit. */
export function meetsAsSet(group: AdviceGroup, of: SolveOf): boolean {
  const { asSet } = group
  const { controller, scheduled } = of
  if (keptRule(group, of).length === 0) return false
  if (asSet.starts.length > startsMost(controller.sheet)) return false
  if (controller.sheet?.cycleSoak === false && asSet.stations.some(one => one.runTime.cycles > 1)) return false
  if (capPassed(asSet, partsOf(group, asSet.days, asSet.starts.length, of))) return false
  const made = programFor(partsOf(group, asSet.days, asSet.starts.length, of))
  if (!('program' in made)) return false
  const { program } = made
  return group.entries.every(({ asSet: entry, need }, index) => {
    const wanted = program.stations[index]
    if (!need || !wanted) return true
    if (need.longestCycle !== 'no limit' && !atMost(entry.runTime.cycleS, need.longestCycle)) return false
    return Array.from({ length: 12 }, (_, at) => at + 1).every(month => {
      const set = cycleInMonth(entry, asSet, month, scheduled.stepS) * entry.runTime.cycles
      const right = cycleInMonth(wanted, program, month, scheduled.stepS) * wanted.runTime.cycles
      const room = Math.max(scheduled.stepS * wanted.runTime.cycles, right * TOLERANCE)
      return (
        atLeast(set, right - room) &&
        atMost(set, right + room) &&
        isSettable(entry.runTime.cycleS, controller.sheet, scheduled.stepS)
      )
    })
  })
}

/** A tenth: what is known of plants, soil and weather is not known more closely. Rule of the project. */
const TOLERANCE = 0.1

function isSettable(cycleS: number, sheet: ProductSheet | undefined, stepS: number): boolean {
  const steps = cycleS / stepS
  return (
    Math.abs(steps - Math.round(steps)) < 1e-6 &&
    atLeast(cycleS, sheet?.runTimeLeast?.si ?? 0) &&
    atMost(cycleS, sheet?.runTimeMost?.si ?? Infinity)
  )
}
