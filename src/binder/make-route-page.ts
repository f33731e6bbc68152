import type { Value } from './blocks.ts'
import type { DueItem } from './due-items.ts'
import { sortedDue } from './make-fleet-page.ts'
import { shoppingList } from './shopping.ts'
import type { SiteSummary } from './site-summary.ts'
import { minutesOf, PER_BOX, toolsOf } from './task-means.ts'
import { groupBy, naturalKey, sortedBy, sum } from '../base/collections.ts'
import type { LatLon } from '../domain/distance.ts'
import { distanceM } from '../domain/distance.ts'
import { levelWeeks, WEEKS_EARLY } from '../domain/level-weeks.ts'
import { areasOf, lengthM, shortOrder } from '../domain/route.ts'
import { addDays, daysBetween, epochDay, weekdayOf } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import type { Words } from '../words/words.ts'

/** Who goes where, with what, and how long it takes. Links are relative to office/. */
export interface RoutePage {
  readonly language: string
  readonly title: string
  readonly asOf: string
  readonly lead: string
  readonly order: string
  readonly fleet: { readonly label: string; readonly href: string }
  readonly areas: readonly { readonly heading: string; readonly stops: readonly RouteStop[] }[]
  readonly labels: Words['due']['route']['columns']
  readonly shopping: PlainTable
  readonly weeks: PlainTable
  readonly minutesRule: string
  readonly empty: string
  readonly foot: string
}

export interface PlainTable {
  readonly title: string
  readonly columns: readonly string[]
  readonly rows: readonly (readonly string[])[]
  /** The column, beside the first, that holds words. */
  readonly wordsIn?: number
  readonly note: string
}

export interface RouteStop {
  readonly number: number
  readonly site: string
  readonly title: string
  readonly href: string
  /** Time on site, and how far it is from the stop before. */
  readonly facts: readonly string[]
  readonly notes: readonly { readonly label: string; readonly text: string }[]
  readonly tasks: readonly {
    readonly box: string
    readonly what: string
    readonly due: Value
    readonly minutes: string
    readonly parts: string
  }[]
}

export interface RouteInput {
  readonly sites: readonly SiteSummary[]
  readonly on: IsoDate
  readonly within: number
  readonly words: Words
  readonly version: string
  /** Time on sites that a week holds, s; the work is levelled to it. */
  readonly weekS?: number
}

/** Sites nearer than that to another one are of one area (rule of this project). */
const AREA_M = 50_000

interface Stop {
  readonly site: SiteSummary
  readonly items: readonly DueItem[]
  readonly minutes: number
  readonly at?: LatLon
}

/** Everything without a date, overdue or due in time, by area and in a short order. A box stands once in it, with all its tasks. */
export function makeRoutePage({ sites, on, within, words, version, weekS }: RouteInput): RoutePage {
  const w = words.due.route
  const stops = sites.flatMap(site => stopOf(site, on, within))
  const items = stops.flatMap(stop => stop.items)
  let number = 0
  const areas = inAreas(stops).map(({ name, stops: here, kmM }) => ({
    heading: w.area(name ?? w.noPlace, here.length, timeText(sum(here.map(one => one.minutes))), kmText(kmM)),
    stops: here.map((stop, index) => stopView(stop, here[index - 1], (number += 1), words))
  }))
  return {
    language: words.language,
    title: w.title,
    asOf: words.office.asOf(on),
    lead: w.within(within, on),
    order: w.order,
    fleet: { label: w.fleet, href: 'index.html' },
    areas,
    labels: w.columns,
    shopping: shoppingTable(items, words),
    weeks: weekTable(stops, { on, words, ...(weekS === undefined ? {} : { weekMin: weekS / 60 }) }),
    minutesRule: w.minutesRule,
    empty: w.empty,
    foot: words.office.foot(version, on)
  }
}

function stopOf(site: SiteSummary, on: IsoDate, within: number): Stop[] {
  const items = sortedDue(site.due).filter(
    one => one.kind !== 'warranty-end' && (one.dueOn === undefined || daysBetween(on, one.dueOn) <= within)
  )
  if (items.length === 0) return []
  return [{ site, items, minutes: stopMinutes(items, site), ...(site.at ? { at: site.at } : {}) }]
}

function stopMinutes(items: readonly DueItem[], { stop }: SiteSummary): number {
  const boxes = new Set(items.flatMap(item => item.box ?? []))
  return sum(items.map(item => minutesOf(item, stop))) + PER_BOX * boxes.size
}

interface Area {
  /** Undefined for sites whose place is not known. */
  readonly name?: string
  readonly stops: readonly Stop[]
  readonly kmM: number
}

function inAreas(stops: readonly Stop[]): Area[] {
  const placed = stops.flatMap(stop => (stop.at ? [{ stop, at: stop.at }] : []))
  const areas = areasOf(
    placed.map(one => one.at),
    AREA_M
  ).map<Area>(indices => {
    const here = indices.flatMap(index => placed[index] ?? [])
    const points = here.map(one => one.at)
    const order = shortOrder(points)
    const inOrder = order.flatMap(index => here[index]?.stop ?? [])
    return { name: areaName(inOrder), stops: inOrder, kmM: lengthM(points, order) }
  })
  const lost = stops.filter(stop => !stop.at)
  return [...areas, ...(lost.length > 0 ? [{ stops: lost, kmM: 0 }] : [])]
}

/** What stands behind the last comma of the addresses, as a rule the town. */
function areaName(stops: readonly Stop[]): string {
  const towns = stops.map(({ site }) => site.stop.town ?? site.title)
  return [...new Set(towns)].slice(0, 3).join(', ')
}

function stopView(stop: Stop, before: Stop | undefined, number: number, words: Words): RouteStop {
  const { site, items, minutes, at } = stop
  const w = words.due.route
  const way = at && before?.at ? [w.where(kmText(distanceM(before.at, at)))] : []
  return {
    number,
    site: site.id,
    title: site.title,
    href: `${site.id}/index.html`,
    facts: [timeText(minutes), ...way],
    notes: notesOf(stop, words),
    tasks: sortedBy(items, item => naturalKey(item.box ?? '')).map(item => ({
      box: item.box ?? w.dash,
      what: item.subject === site.id || item.subject === item.box ? item.what : `${item.what}, ${item.subject}`,
      due: dueValue(item, words),
      minutes: String(Math.round(minutesOf(item, site.stop))),
      parts: item.needs.map(need => `${need.count} × ${need.item}`).join('; ') || w.dash
    }))
  }
}

function notesOf({ site: { stop }, items }: Stop, words: Words): RouteStop['notes'] {
  const w = words.due.route
  return [
    { label: w.access, text: stop.access.join('; ') },
    { label: w.tools, text: toolsOf(items, stop, words).join('; ') },
    { label: w.open, text: stop.open.join('; ') }
  ].filter(one => one.text !== '')
}

function dueValue({ dueOn, state }: DueItem, words: Words): Value {
  const w = words.due.route
  const shape = { overdue: 'bad', 'due-soon': 'soon', 'no-date': 'unknown', ok: 'good' } as const
  const text = dueOn === undefined ? w.noDate : state === 'overdue' ? w.overdue(dueOn) : dueOn
  return { text, standing: 'computed', mono: true, state: shape[state] }
}

function shoppingTable(items: readonly DueItem[], words: Words): PlainTable {
  const w = words.due.route
  const { item, count, spares, total } = w.shoppingColumns
  return {
    title: w.shopping,
    columns: [item, count, spares, total],
    rows: shoppingList(items).map(one => [one.item, ...[one.count, one.spares, one.count + one.spares].map(String)]),
    note: w.spareRule
  }
}

interface WeekWish {
  readonly on: IsoDate
  readonly words: Words
  readonly weekMin?: number
}

/** What is due at one site in one week, and the week it is planned for where the work is levelled. */
interface Trip {
  readonly site: SiteSummary
  readonly items: readonly DueItem[]
  readonly minutes: number
  /** Monday; empty for what is overdue or has no date. */
  readonly due: string
}

/** By the Monday of the week in which a task is due; what is overdue or has no date is for now. Where a week holds so much, also as it can be levelled. */
function weekTable(stops: readonly Stop[], { on, words, weekMin }: WeekWish): PlainTable {
  const w = words.due.route
  const { week, stops: sites, tasks, hours, planned, where } = w.weekColumns
  const trips = stops.flatMap(({ site, items }) => tripsOf(site, items, on))
  const mondays = weekMin === undefined ? [] : plannedWeeks(trips, on, weekMin)
  const all = sortedBy(new Set([...trips.map(one => one.due), ...mondays]), monday => monday)
  const rows = all.map(monday => {
    const here = trips.filter(one => one.due === monday)
    const due = [
      monday || w.now,
      String(here.length),
      String(sum(here.map(one => one.items.length))),
      timeText(sum(here.map(one => one.minutes)))
    ]
    if (weekMin === undefined) return due
    const then = trips.filter((_, index) => mondays[index] === monday)
    const minutes = sum(then.map(one => one.minutes))
    const over = minutes > weekMin ? w.over(timeText(minutes - weekMin)) : ''
    const names = [...new Set(then.map(one => one.site.title))].join(', ')
    return [...due, then.length === 0 ? w.dash : timeText(minutes) + over, names || w.dash]
  })
  const columns = [week, sites, tasks, hours, ...(weekMin === undefined ? [] : [planned(timeText(weekMin)), where])]
  const note = weekMin === undefined ? w.levelHint : w.levelRule(WEEKS_EARLY)
  return { title: w.weeks, columns, rows, wordsIn: columns.indexOf(where), note: `${w.minutesRule} ${note}` }
}

const mondayOf = (day: IsoDate): IsoDate => addDays(day, 1 - weekdayOf(epochDay(day)))

function tripsOf(site: SiteSummary, items: readonly DueItem[], on: IsoDate): Trip[] {
  const isLate = ({ dueOn }: DueItem): boolean => dueOn === undefined || dueOn < on
  const weeks = groupBy(items, item => (isLate(item) ? '' : mondayOf(item.dueOn ?? on)))
  return [...weeks].map(([due, these]) => ({ site, items: these, minutes: stopMinutes(these, site), due }))
}

/** The Monday for which each trip is planned. */
function plannedWeeks(trips: readonly Trip[], on: IsoDate, weekMin: number): IsoDate[] {
  const first = mondayOf(on)
  const jobs = trips.map(({ minutes, due }) => ({
    minutes,
    ...(due === '' ? {} : { dueWeek: daysBetween(first, due as IsoDate) / 7 })
  }))
  return levelWeeks(jobs, weekMin).map(week => addDays(first, 7 * week))
}

/** "1 h 25 min". */
function timeText(minutes: number): string {
  const whole = Math.round(minutes)
  const [hours, rest] = [Math.floor(whole / 60), whole % 60]
  return [hours > 0 ? `${hours}\u00a0h` : '', rest > 0 || hours === 0 ? `${rest}\u00a0min` : '']
    .filter(Boolean)
    .join(' ')
}

function kmText(m: number): string {
  if (m === 0) return ''
  return m < 10_000 ? `${(m / 1000).toFixed(1)}\u00a0km` : `${Math.round(m / 1000)}\u00a0km`
}
