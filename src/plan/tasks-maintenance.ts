import { taskKind } from '../domain/dates/task-kind.ts'
import type { MaintenanceTask } from '../model/maintenance.ts'
import type { Site } from '../model/site.ts'
import { addInterval } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { jobKey } from './open-jobs.ts'
import type { SiteTask } from './tasks.ts'

/**
 * The tasks that the site file states. The latest of its own `last` and the visits that list the task counts; a task that comes once and was
 * done is no longer there. A task at a box that is away stays out.
 */
export function maintenanceTasks(site: Site, on: IsoDate): SiteTask[] {
  return (site.maintenance ?? []).flatMap<SiteTask>(one => {
    if (one.box !== undefined && site.boxes.find(box => box.id === one.box)?.status !== undefined) return []
    const last = lastDone(site, one, on)
    if (last !== undefined && !one.every) return []
    const dueOn = dueOf(one, last)
    return [
      {
        kind: taskKind(one.task),
        task: one.task,
        subject: one.box ?? site.id,
        ...(one.box === undefined ? {} : { box: one.box }),
        ...(dueOn === undefined ? {} : { dueOn }),
        ...(one.minutes ? { minutesS: one.minutes.si } : {}),
        ...(one.tools ? { tools: one.tools } : {}),
        ...(one.parts ? { parts: one.parts } : {}),
        ...repeatsOf(one, last ?? dueOn)
      }
    ]
  })
}

function lastDone({ visits }: Site, { task, last }: MaintenanceTask, on: IsoDate): IsoDate | undefined {
  const done = visits.filter(
    visit => visit.on <= on && visit.tasks?.some(text => jobKey(text) === jobKey(task)) === true
  )
  return [...done.map(visit => visit.on), ...(last ? [last] : [])].sort().at(-1)
}

function dueOf({ every, due }: MaintenanceTask, last: IsoDate | undefined): IsoDate | undefined {
  return last !== undefined && every ? addInterval(last, every) : due
}

function repeatsOf({ every }: MaintenanceTask, anchor: IsoDate | undefined): Pick<SiteTask, 'repeats'> {
  if (!every || anchor === undefined) return {}
  return { repeats: { months: every.months, days: every.days, anchor } }
}
