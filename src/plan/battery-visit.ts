import { isAbsent } from '../base/absent.ts'
import { nextMonthDay } from '../domain/climate/winterize-by.ts'
import type { Controller, Site } from '../model/site.ts'
import type { MaintenanceTask } from '../model/maintenance.ts'
import { addDays, addInterval, daysBetween } from '../units/date.ts'
import type { IsoDate, MonthDay } from '../units/date.ts'
import type { BatteryPlan } from './plan.ts'
import type { DoAt, VisitKind } from './power-plan.ts'

interface Regular {
  readonly visit: VisitKind
  readonly task?: string
  readonly on: IsoDate
}

/**
 * The visit that should change the cells: the last regular one after `on` and no later than the due date. Regular are the first and the last
 * day of the season and the tasks of the maintenance plan for the whole site or for this box. An overdue set, and one without a date, is for
 * the next visit, whatever it is for. Undefined where nothing is to be changed.
 */
export function batteryVisit(
  site: Site,
  controller: Controller,
  battery: Pick<BatteryPlan, 'state' | 'dueOn'>,
  on: IsoDate
): DoAt | undefined {
  if (battery.state === 'none') return undefined
  if (battery.state === 'no-date' || isAbsent(battery.dueOn)) return { visit: 'next', on, because: 'no date' }
  if (battery.state === 'overdue') return { visit: 'next', on, because: 'overdue' }
  const due = battery.dueOn
  const regular = [...seasonVisits(site, due), ...taskVisits(site, controller, due)].filter(one => one.on > on)
  if (regular.length === 0) return { visit: 'own', on: due, because: 'none before due' }
  const last = regular.reduce((latest, one) => (one.on > latest.on ? one : latest))
  return { ...last, because: 'last before due' }
}

function seasonVisits({ season }: Site, due: IsoDate): readonly Regular[] {
  if (!season) return []
  return [
    { visit: 'start-up', on: lastMonthDay(season.from, due) },
    { visit: 'season-end', on: lastMonthDay(season.to, due) }
  ]
}

/** The last such day on or before a date. */
function lastMonthDay(day: MonthDay, due: IsoDate): IsoDate {
  const next = nextMonthDay(day, due)
  return next === due ? due : nextMonthDay(day, addDays(addInterval(due, { months: -12, days: 0 }), 1))
}

function taskVisits({ maintenance }: Site, { box }: Controller, due: IsoDate): readonly Regular[] {
  return (maintenance ?? []).flatMap(task => {
    if (task.box !== undefined && task.box !== box) return []
    const on = lastTaskDay(task, due)
    return on === undefined ? [] : [{ visit: 'task', task: task.task, on }]
  })
}

/** The last time on or before `due` that a task comes; steps are counted from its first day, so that a month's end stays one. */
function lastTaskDay({ due: first, last, every }: MaintenanceTask, due: IsoDate): IsoDate | undefined {
  const from = first ?? (last && every ? addInterval(last, every) : undefined)
  if (from === undefined || from > due) return undefined
  if (!every || (every.months === 0 && every.days === 0)) return from
  const nth = (times: number) => addInterval(from, { months: every.months * times, days: every.days * times })
  // No month is longer than 31 days, so that many times have come for certain.
  let times = Math.floor(daysBetween(from, due) / (every.months * 31 + every.days))
  while (nth(times + 1) <= due) times++
  return nth(times)
}
