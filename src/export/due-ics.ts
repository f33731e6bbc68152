import type { DueItem } from '../binder/due-items.ts'
import { keyOf } from '../binder/shopping.ts'
import { addDays, addInterval, dayOf, monthOf } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import type { Words } from '../words/words.ts'
import { calendarText } from './ics.ts'
import type { CalendarLine } from './ics.ts'

export interface CalendarFacts {
  readonly on: IsoDate
  readonly words: Words
  readonly version: string
  /** Whose calendar it is: the host of the public address. Part of every identity, so it must not change. */
  readonly host: string
  /** Address and coordinates of a site, by its id. */
  readonly placeOf: (site: string) => {
    readonly address?: string
    readonly latitude?: number
    readonly longitude?: number
  }
}

/**
 * The due list as a calendar feed (RFC 5545). Each thing is one event of a whole day, so no time zone moves it; its identity stays when its
 * date does, so a program that reads the feed again moves the event. What comes again on fixed days repeats. What has no date stands on the
 * day of the list, so that no calendar hides it. The same list and day give the same bytes.
 */
export function dueIcs(items: readonly DueItem[], facts: CalendarFacts): string {
  const w = facts.words.due.calendar
  const dated = [...new Map(items.filter(one => one.dueOn !== undefined).map(one => [keyOf(one), one])).values()]
  const undated = items.filter(one => one.dueOn === undefined)
  return calendarText([
    ['BEGIN', 'VCALENDAR'],
    ['VERSION', '2.0'],
    ['PRODID', `-//Underlid//${facts.version}//EN`],
    ['CALSCALE', 'GREGORIAN'],
    ['METHOD', 'PUBLISH'],
    ['X-WR-CALNAME', w.name, 'text'],
    ...(undated.length > 0 ? undatedEvent(undated, facts) : []),
    ...dated.flatMap(item => event(item, facts)),
    ['END', 'VCALENDAR']
  ])
}

function event(item: DueItem, facts: CalendarFacts): CalendarLine[] {
  const { on, words, placeOf } = facts
  const w = words.due.calendar
  const due = item.dueOn ?? on
  const { address, latitude, longitude } = placeOf(item.site)
  const summary = w.summary(item.what, item.subject, item.siteTitle)
  const needs = item.needs.map(need => `${need.count} × ${need.item}`)
  return [
    ['BEGIN', 'VEVENT'],
    ['UID', identity(keyOf(item), facts)],
    ['DTSTAMP', stamp(on)],
    ['DTSTART;VALUE=DATE', compact(due)],
    ['DTEND;VALUE=DATE', compact(addDays(due, 1))],
    ['SUMMARY', item.state === 'overdue' ? w.overdue(summary) : summary, 'text'],
    ['DESCRIPTION', [item.box, ...needs].filter(Boolean).join('\n') || item.what, 'text'],
    ...(address === undefined ? [] : [['LOCATION', address, 'text'] as const]),
    ...(latitude === undefined || longitude === undefined ? [] : [['GEO', `${latitude};${longitude}`] as const]),
    ['CATEGORIES', item.kind, 'text'],
    ...repetition(item),
    ['TRANSP', 'TRANSPARENT'],
    ['END', 'VEVENT']
  ]
}

function undatedEvent(items: readonly DueItem[], facts: CalendarFacts): CalendarLine[] {
  const { on, words } = facts
  const w = words.due.calendar
  const lines = items.map(item => w.summary(item.what, item.subject, item.siteTitle))
  return [
    ['BEGIN', 'VEVENT'],
    ['UID', identity('no-date', facts)],
    ['DTSTAMP', stamp(on)],
    ['DTSTART;VALUE=DATE', compact(on)],
    ['DTEND;VALUE=DATE', compact(addDays(on, 1))],
    ['SUMMARY', w.noDate(items.length), 'text'],
    ['DESCRIPTION', lines.join('\n'), 'text'],
    ['TRANSP', 'TRANSPARENT'],
    ['END', 'VEVENT']
  ]
}

/**
 * Steps of days or of months from the anchor, a day that a month does not have being its last one, as the due date itself counts. The 31st is the
 * last day of every month. The 29th and 30th have no rule that calendar programs agree on where February is among the months, so the next days
 * are written out. One that is overdue does not repeat: nobody knows from when it will be counted.
 */
function repetition({ task, state, dueOn }: DueItem): CalendarLine[] {
  const repeats = task?.repeats
  if (!repeats || state === 'overdue' || dueOn === undefined) return []
  const { months, days, anchor } = repeats
  if (months === 0) return [['RRULE', `FREQ=DAILY;INTERVAL=${days}`]]
  if (days > 0) return []
  const steps = Array.from({ length: WRITTEN_OUT }, (_, index) =>
    addInterval(anchor, { months: months * (index + 1), days: 0 })
  ).filter(day => day >= dueOn)
  const february = steps.some(day => monthOf(day) === 2)
  const day = dayOf(anchor)
  if (february && day > 28 && day < 31 && months % 12 !== 0) return [['RDATE;VALUE=DATE', steps.map(compact).join(',')]]
  const last = day === 31 || (february && day > 28)
  return [['RRULE', everyMonths(months, monthOf(dueOn), `BYMONTHDAY=${last ? -1 : day}`)]]
}

/** How many days of a task that comes again are written out where no rule can say them. */
const WRITTEN_OUT = 24

function everyMonths(months: number, month: number, day: string): string {
  if (months % 12 !== 0) return `FREQ=MONTHLY;INTERVAL=${months};${day}`
  return `FREQ=YEARLY;INTERVAL=${months / 12};BYMONTH=${month};${day}`
}

/** Letters, digits and a few marks, so that no program changes it. */
function identity(key: string, { host }: CalendarFacts): string {
  const plain = key.replace(/[^A-Za-z0-9./-]+/gu, letters => [...new TextEncoder().encode(letters)].map(hex).join(''))
  return `${plain}@${host}`
}

const hex = (octet: number): string => `_${octet.toString(16).padStart(2, '0')}`
const compact = (day: IsoDate): string => day.replaceAll('-', '')
const stamp = (on: IsoDate): string => `${compact(on)}T000000Z`
