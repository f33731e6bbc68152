import { taskKind } from '../domain/dates/task-kind.ts'
import type { TaskKind } from '../domain/dates/task-kind.ts'
import { nextMonthDay } from '../domain/climate/winterize-by.ts'
import type { Site } from '../model/site.ts'
import { addDays } from '../units/date.ts'
import type { IsoDate, MonthDay } from '../units/date.ts'
import type { SiteTask } from './tasks.ts'

/** A visit so long before the day counts for it, and one that is missing is told of for so long after it (rule of this project). */
const EARLY_DAYS = 120
const LATE_DAYS = 183

/**
 * Start-up on the first day of the season, winterizing on the last where lines are emptied, unless the site states a day of its own. A visit
 * says by its reason or its tasks that it was done. One that is missing is overdue only where an earlier visit shows that the site was there.
 */
export function seasonTasks(site: Site, on: IsoDate, stated: ReadonlySet<string>): SiteTask[] {
  const { season, winter } = site
  if (!season) return []
  const of = (kind: TaskKind, day: MonthDay): SiteTask[] => {
    if ([...stated].some(task => taskKind(task) === kind)) return []
    const dueOn = seasonDay(site, kind, day, on)
    return [{ kind, subject: site.id, dueOn, repeats: { months: 12, days: 0, anchor: dueOn } }]
  }
  const isEmptied = winter !== undefined && winter.method !== 'none'
  return [...of('start-up', season.from), ...(isEmptied ? of('winterizing', season.to) : [])]
}

function seasonDay({ visits }: Site, kind: TaskKind, day: MonthDay, on: IsoDate): IsoDate {
  const next = nextMonthDay(day, on)
  const before = nextMonthDay(day, addDays(next, -366))
  const past = before < on && before >= addDays(on, -LATE_DAYS) ? before : undefined
  const known = past !== undefined && visits.some(visit => visit.on < past)
  const done = (from: IsoDate) =>
    visits.some(visit => visit.on >= addDays(from, -EARLY_DAYS) && visit.on <= on && isOf(kind, visit))
  if (past !== undefined && known && !done(past)) return past
  return done(next) ? nextMonthDay(day, addDays(next, 1)) : next
}

function isOf(kind: TaskKind, { reason = '', tasks = [] }: Site['visits'][number]): boolean {
  return [reason, ...tasks].some(words => taskKind(words) === kind)
}
