import { taskKind } from '../domain/dates/task-kind.ts'
import type { Phase, Site } from '../model/site.ts'
import { addDays } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import type { SiteTask } from './tasks.ts'

/** How long the end of an establishment is told of after its day (rule of this project): by then the programs are changed. */
const TOLD_DAYS = 60

/**
 * Ends of establishments, and temporary systems to be taken away. What is to be taken away stays overdue until the site is removed; a site
 * of temporary planting without any such day has no date.
 */
export function phaseTasks(site: Site, on: IsoDate, stated: ReadonlySet<string>): SiteTask[] {
  const own = site.stations.filter(one => one.outOfService === undefined)
  const phased = [
    ...(site.phases ?? []).map(phase => ({ subject: site.id, phase })),
    ...own.flatMap(one => (one.phases ?? []).map(phase => ({ subject: one.zone, phase })))
  ]
  const tasks = phased.flatMap(({ subject, phase }) => taskOf(subject, phase, on))
  const isStated = [...stated].some(task => taskKind(task) === 'removal')
  const lacksDay = site.place === 'temporary' && !isStated && !tasks.some(one => one.kind === 'removal')
  return [...tasks, ...(lacksDay ? [{ kind: 'removal' as const, subject: site.id }] : [])]
}

function taskOf(subject: string, { name, to }: Phase, on: IsoDate): SiteTask[] {
  if (name === 'established') return []
  const kind = name === 'temporary' ? 'removal' : 'establishment-end'
  if (to === undefined) return [{ kind, subject }]
  return kind === 'establishment-end' && to < addDays(on, -TOLD_DAYS) ? [] : [{ kind, subject, dueOn: to }]
}
