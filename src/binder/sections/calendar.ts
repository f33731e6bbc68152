import { groupBy, sum } from '../../base/collections.ts'
import { addInterval } from '../../units/date.ts'
import type { IsoDate } from '../../units/date.ts'
import { showStated } from '../../units/show.ts'
import type { Block, Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { dueItems } from '../due-items.ts'
import { rangeOf } from '../range.ts'
import { minutesOf } from '../task-means.ts'
import { computed, notSupplied, orNotSupplied, stated } from '../values.ts'

const LOG_LINES = 5
const MONTHS_AHEAD = 12
interface Due {
  readonly what: string
  /** Left out where it is the site. */
  readonly subject?: string
  readonly on: IsoDate
  readonly minutes: number
}

/** What is due month by month, with its time, and each task with how often, tools and parts. */
export function calendarSection(context: PageContext): Section {
  const { site, words } = context
  const w = words.handover.calendar
  const due = dueDays(context)
  const tasks = site.maintenance ?? []
  return {
    id: 'calendar',
    title: words.handover.sections.calendar,
    newPage: false,
    blocks: [
      { kind: 'paragraph', text: `${w.lead} ${w.logAt(words.binder.sections.visits)}` },
      months(due, context),
      labor(due, context),
      { kind: 'paragraph', text: w.routine, small: true },
      ...(tasks.length === 0
        ? [{ kind: 'not-supplied', text: `${w.tasks}: ${words.binder.notSupplied}` } as const]
        : [taskTable(context)])
    ]
  }
}

/** What was done, to be filled in. It stands with the other logs, under the visits. */
export function maintenanceLog({ words }: PageContext): Block {
  const w = words.handover.calendar
  return {
    kind: 'table',
    caption: w.log,
    columns: w.logColumns.map(label => ({ label })),
    rows: [],
    blankRows: LOG_LINES
  }
}

const keyOf = (on: IsoDate): string => on.slice(0, 7)

/** Everything that falls due within a year; what comes again, each time. What is overdue counts for the month of the data date. */
function dueDays(context: PageContext): Due[] {
  const { on } = context.plan
  const end = addInterval(on, { months: MONTHS_AHEAD, days: 0 })
  const stations = context.site.stations.length
  return dueItems(context).flatMap<Due>(item => {
    const { what, subject, dueOn, task } = item
    if (dueOn === undefined) return []
    const minutes = minutesOf(item, { stations })
    const days: IsoDate[] = []
    const step = task?.repeats
    for (let day = dueOn; day < end && days.length < 366; day = addInterval(day, step ?? { months: 0, days: 0 })) {
      days.push(day < on ? on : day)
      if (!step || step.months + step.days === 0) break
    }
    const of = subject === context.site.id ? {} : { subject }
    return days.map(day => ({ what, ...of, on: day, minutes }))
  })
}

function months(due: readonly Due[], { plan, words }: PageContext): Block {
  const w = words.handover.calendar
  const byMonth = groupBy(due, one => keyOf(one.on))
  const rows = Array.from({ length: MONTHS_AHEAD }, (_, index) => {
    const first = addInterval(`${plan.on.slice(0, 8)}01` as IsoDate, { months: index, days: 0 })
    const mine = byMonth.get(keyOf(first)) ?? []
    const named = namesOf(mine)
    return [
      stated(`${words.boxPage.months[Number(first.slice(5, 7)) - 1] ?? ''} ${first.slice(0, 4)}`),
      stated(named.join('; ') || w.nothing),
      mine.length === 0 ? stated(w.nothing) : computed(String(sum(mine.map(one => one.minutes))))
    ]
  })
  return { kind: 'table', caption: w.months, columns: w.monthColumns.map(label => ({ label })), rows }
}

/** "Battery, 9 V alkaline, MR-01 … MR-08 (6) (05-20)": what falls due alike on the same days is named once. */
function namesOf(due: readonly Due[]): string[] {
  const things = [...groupBy(due, one => JSON.stringify([one.what, one.subject])).values()].flatMap(all => {
    const [first] = all
    return first ? [{ ...first, days: all.map(one => one.on.slice(5)).join(', ') }] : []
  })
  return [...groupBy(things, one => JSON.stringify([one.what, one.days])).values()].flatMap(alike => {
    const [first] = alike
    const subjects = rangeOf(alike.flatMap(one => one.subject ?? []))
    return first ? [`${[first.what, subjects].filter(Boolean).join(', ')} (${first.days})`] : []
  })
}

function labor(due: readonly Due[], { words }: PageContext): Block {
  const w = words.handover.calendar
  const year = sum(due.map(one => one.minutes))
  const day = Math.max(0, ...[...groupBy(due, one => one.on).values()].map(all => sum(all.map(one => one.minutes))))
  const text = (minutes: number) => computed(w.minutes(Math.round(minutes)))
  return {
    kind: 'facts',
    caption: w.labor,
    rows: [
      { label: w.perDay, value: text(day) },
      { label: w.perWeek, value: text(year / 52) },
      { label: w.perMonth, value: text(year / 12) },
      { label: w.perYear, value: text(year) }
    ]
  }
}

function taskTable(context: PageContext): Block {
  const { site, words } = context
  const w = words.handover.calendar
  const next = new Map(dueItems(context).map(one => [one.task?.task, one.dueOn]))
  return {
    kind: 'table',
    caption: w.tasks,
    columns: w.taskColumns.map(label => ({ label })),
    rows: (site.maintenance ?? []).map(one => [
      stated([one.task, one.box].filter(Boolean).join(', ')),
      stated(one.every?.text ?? w.once),
      orNotSupplied(one.last ?? (one.every ? undefined : w.nothing), words, true),
      one.minutes ? stated(showStated(one.minutes)) : notSupplied(words),
      stated(
        [...(one.tools ?? []), ...(one.parts ?? []).map(part => `${part.count} × ${part.item}`)].join('; ') || w.nothing
      ),
      stated(next.get(one.task) ?? w.nothing, true)
    ])
  }
}
