import { absent, isAbsent } from '../base/absent.ts'
import { dueDate } from '../domain/dates/due-date.ts'
import { dueState } from '../domain/dates/due-state.ts'
import type { Backflow, Site, Supply } from '../model/site.ts'
import type { IsoDate } from '../units/date.ts'
import type { DuePlan, Working } from './plan.ts'

export interface BackflowsPlanned {
  /** By supply id, for supplies that say something of a backflow assembly. */
  readonly backflows: Map<string, DuePlan>
  readonly workings: readonly Working[]
}

/** When each backflow assembly is due for its test: the site's interval, 12 months where none is stated. */
export function planBackflows(site: Site, on: IsoDate): BackflowsPlanned {
  const backflows = new Map<string, DuePlan>()
  const workings: Working[] = []
  for (const supply of site.supplies) {
    if (!supply.backflow) continue
    const { plan, steps } = planBackflow({ ...supply.backflow, ...lastTest(site, supply, on) }, on)
    backflows.set(supply.id, plan)
    if (steps.length > 0) workings.push({ calculation: 'due-date', subject: backflowSubject(supply), steps })
  }
  return { backflows, workings }
}

/** The latest test that was passed: the site file's, or one that a visit up to `on` records. */
function lastTest(site: Site, { id, backflow }: Supply, on: IsoDate): Pick<Backflow, 'tested'> {
  const passed = site.visits
    .filter(visit => visit.on <= on && visit.tests?.some(test => test.supply === id && test.passed))
    .map(visit => visit.on)
  const days = [...passed, ...(backflow?.tested ? [backflow.tested] : [])].sort()
  const last = days.at(-1)
  return last === undefined ? {} : { tested: last }
}

export const isNotFitted = (backflow: Backflow): boolean => /^(not fitted|none)\b/iu.test(backflow.kind.trim())

function planBackflow(backflow: Backflow, on: IsoDate): { readonly plan: DuePlan; readonly steps: readonly string[] } {
  const { tested, interval, reason } = backflow
  if (isNotFitted(backflow))
    return {
      plan: { dueOn: absent(reason ? `not fitted: ${reason}` : 'not fitted, and no reason is given') },
      steps: []
    }
  if (tested === undefined) return { plan: { dueOn: absent('no test is on file') }, steps: [] }
  const due = dueDate({ last: tested, ...(interval ? { interval } : {}) })
  if (isAbsent(due)) return { plan: { dueOn: due }, steps: [] }
  const { daysOverdue } = dueState(due.value.dueOn, on)
  return {
    plan: { dueOn: due.value.dueOn, ...(daysOverdue === undefined ? {} : { daysOverdue }) },
    steps: due.steps
  }
}

const backflowSubject = (supply: Supply): string => `${supply.id} backflow`
