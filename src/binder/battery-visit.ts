import type { DoAt } from '../plan/power-plan.ts'
import type { Words } from '../words/words.ts'
import type { Value } from './blocks.ts'
import { computed, stated } from './values.ts'

/** "start-up visit", or the name of the task. */
export function visitName({ visit, task }: DoAt, { power }: Words): string {
  return visit === 'task' ? power.visits.task(task ?? power.visits.next) : power.visits[visit]
}

/** "start-up visit, 2026-03-15"; a dash where nothing is to be changed. The next visit has no day of its own. */
export function visitValue(doAt: DoAt | undefined, words: Words): Value {
  if (!doAt) return stated('–')
  const name = visitName(doAt, words)
  return computed(doAt.visit === 'next' ? name : words.power.visitOn(name, doAt.on), 'due-date')
}
