import { visitName } from './battery-visit.ts'
import type { PageContext } from './context.ts'
import { isAbsent, isPresent } from '../base/absent.ts'
import { dueState } from '../domain/dates/due-state.ts'
import type { TaskKind } from '../domain/dates/task-kind.ts'
import { planTasks } from '../plan/tasks.ts'
import type { SiteTask } from '../plan/tasks.ts'
import type { BatteryPlan } from '../plan/plan.ts'
import type { IsoDate } from '../units/date.ts'
import type { Words } from '../words/words.ts'

export interface DueItem {
  readonly site: string
  readonly siteTitle: string
  readonly box?: string
  readonly subject: string
  readonly kind: TaskKind
  readonly what: string
  readonly dueOn?: IsoDate
  readonly state: 'overdue' | 'due-soon' | 'no-date' | 'ok'
  readonly needs: readonly { readonly item: string; readonly count: number }[]
  /** What the site file says of the task: how long it takes, what to take along, on which days it comes again. */
  readonly task?: Pick<SiteTask, 'task' | 'minutesS' | 'tools' | 'repeats'>
}

/** Everything dated on a site. One that is out of service or removed has nothing due; what is away stays on record and out of the list. */
export function dueItems(context: PageContext): DueItem[] {
  const { site, plan, words } = context
  if (site.status === 'removed' || site.status === 'out-of-service') return []
  const tasks = planTasks(site, plan.on).map<DueItem>(task => ({
    ...head(context),
    ...(task.box === undefined ? {} : { box: task.box }),
    subject: task.subject,
    kind: task.kind,
    what: wordsOf(task, words),
    ...dated(task.dueOn, plan.on),
    needs: (task.parts ?? []).map(({ item, count }) => ({ item, count })),
    task
  }))
  return [...batteryItems(context), ...backflowItems(context), ...tasks]
}

function head({ site }: PageContext): Pick<DueItem, 'site' | 'siteTitle'> {
  return { site: site.id, siteTitle: site.title }
}

function dated(dueOn: IsoDate | undefined, on: IsoDate): Pick<DueItem, 'dueOn' | 'state'> {
  return dueOn === undefined ? { state: 'no-date' } : { dueOn, state: dueState(dueOn, on).state }
}

function batteryItems(context: PageContext): DueItem[] {
  const { site, plan, words } = context
  return [...plan.batteries.values()].flatMap<DueItem>(battery => {
    if (battery.state === 'none') return []
    const box = site.controllers.find(one => one.id === battery.controller)?.box
    return [
      {
        ...head(context),
        ...(box === undefined ? {} : { box }),
        subject: battery.controller,
        kind: 'battery',
        what: batteryText(battery, words),
        ...(isPresent(battery.dueOn) ? { dueOn: battery.dueOn } : {}),
        state: battery.state,
        needs: [{ item: battery.kind, count: battery.count }]
      }
    ]
  })
}

/** With the visit that should do it, where it is one that comes anyway: the due date alone says only when it is too late. */
function batteryText({ count, kind, doAt }: BatteryPlan, words: Words): string {
  const what = words.office.battery(count, kind)
  if (!doAt || doAt.visit === 'next' || doAt.visit === 'own') return what
  return words.power.due.whatAt(what, words.power.visitOn(visitName(doAt, words), doAt.on))
}

function backflowItems(context: PageContext): DueItem[] {
  const { site, plan, words } = context
  return site.supplies.flatMap<DueItem>(supply => {
    const due = plan.backflows.get(supply.id)
    if (!due || !supply.backflow || supply.backflow.reason) return []
    return [
      {
        ...head(context),
        subject: supply.id,
        kind: 'backflow',
        what: words.office.backflow,
        ...dated(isAbsent(due.dueOn) ? undefined : due.dueOn, plan.on),
        needs: []
      }
    ]
  })
}

function wordsOf({ kind, task }: SiteTask, words: Words): string {
  if (kind === 'battery' || kind === 'backflow' || kind === 'maintenance') return words.due.maintenance(task ?? kind)
  return words.due.task(kind, task)
}
