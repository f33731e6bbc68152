import { isPresent } from '../base/absent.ts'
import { groupBy, sortedBy, sum } from '../base/collections.ts'
import { barredTogether, PARTS } from '../domain/schedule/rules.ts'
import { DAY_S } from '../domain/schedule/run-times.ts'
import { sequenceEndS, sequenceProgram } from '../domain/schedule/sequence.ts'
import { complement } from '../domain/schedule/stretches.ts'
import type { DayPattern, YearRuns } from '../domain/schedule/year-runs.ts'
import { flowStretches } from '../domain/supply/peak-flow.ts'
import type { Opening } from '../domain/supply/peak-flow.ts'
import type { Controller, Site, Supply } from '../model/site.ts'
import { DAY_MINUTES } from '../units/clock.ts'
import { fromEpochDay, weekdayOf } from '../units/date.ts'
import type { EpochDay } from '../units/date.ts'
import type { SchedulePlan } from './plan.ts'
import { ruleFacts } from './rule-facts.ts'
import { scheduledController } from './schedules.ts'
import { stationFlowM3s } from './station-flow.ts'
import type { PassPlan, StripDay, StripLoad, StripPlan, StripRun } from './strips-plan.ts'
import { controllersOn, oneAtATime } from './supply-peaks.ts'

const NOON = DAY_MINUTES / 2

export interface StripsPlanned {
  /** One for each supply that several controllers water from, and one for each other controller that waters. */
  readonly strips: readonly StripPlan[]
  /** By controller id. */
  readonly passes: ReadonlyMap<string, readonly PassPlan[]>
}

/** The watering day and week of each supply or controller, and how long each program takes. */
export function planStrips(site: Site, schedules: ReadonlyMap<string, SchedulePlan>): StripsPlanned {
  const groups = groupsOf(site, schedules)
  return {
    strips: groups.flatMap(group => stripOf(site, group, schedules) ?? []),
    passes: new Map(site.controllers.map(one => [one.id, passesOf(site, one)]))
  }
}

function passesOf(site: Site, controller: Controller): readonly PassPlan[] {
  const { stepS, delayS } = scheduledController(site, controller)
  const settings = { percent: 1, stepS, delayS }
  return controller.programs.map(({ id, stations }) => ({
    program: id,
    lengthMinutes: sequenceEndS(sequenceProgram(stations, settings)) / 60
  }))
}

interface Group {
  readonly of: StripPlan['of']
  readonly id: string
  readonly controllers: readonly Controller[]
  readonly supply?: Supply
}

function groupsOf(site: Site, schedules: ReadonlyMap<string, SchedulePlan>): readonly Group[] {
  const waters = ({ id }: Controller) => (schedules.get(id)?.legal.days.length ?? 0) > 0
  const shared = site.supplies.flatMap<Group>(supply => {
    const controllers = controllersOn(site, supply).filter(waters)
    return controllers.length > 1 ? [{ of: 'supply', id: supply.id, controllers, supply }] : []
  })
  const held = new Set(shared.flatMap(one => one.controllers))
  const others = site.controllers.filter(one => waters(one) && !held.has(one))
  const alone = others.map<Group>(one => {
    const supply = site.supplies.find(each => controllersOn(site, each).includes(one))
    return { of: 'controller', id: one.id, controllers: [one], ...(supply ? { supply } : {}) }
  })
  return [...shared, ...alone]
}

function stripOf(
  site: Site,
  { of, id, controllers, supply }: Group,
  schedules: ReadonlyMap<string, SchedulePlan>
): StripPlan | undefined {
  const calendars = controllers.map(one => ({ id: one.id, days: schedules.get(one.id)?.legal.days ?? [] }))
  const fullest = fullestDay(calendars.map(one => one.days))
  if (fullest === undefined) return undefined
  const first = fullest - (weekdayOf(fullest) - 1)
  const week = Array.from({ length: 7 }, (_, index) => stripDay(site, calendars, first + index))
  const day = week[fullest - first]
  if (!day) return undefined
  const drawn = new Set(week.flatMap(one => one.runs.map(run => run.station)))
  const limit = supply?.limit?.si
  return {
    of,
    id,
    controllers: controllers.map(one => one.id),
    day,
    week,
    ...(limit === undefined ? {} : { limitM3s: limit }),
    flowNotStated: [...drawn].filter(station => flowOf(site, station) === undefined)
  }
}

interface Calendar {
  readonly id: string
  readonly days: YearRuns
}

/** The day from noon on which most valve is open, all together; the first of those. Patterns are added up once. */
function fullestDay(calendars: readonly YearRuns[]): EpochDay | undefined {
  const known = new Map<DayPattern, readonly [beforeNoonS: number, afterS: number]>()
  const open = new Map<EpochDay, number>()
  const add = (day: EpochDay, seconds: number) => {
    if (seconds > 0) open.set(day, (open.get(day) ?? 0) + seconds)
  }
  for (const days of calendars)
    for (const { day, pattern } of days) {
      const [before, after] = known.get(pattern) ?? splitAtNoon(pattern)
      known.set(pattern, [before, after])
      add(day - 1, before)
      add(day, after)
    }
  // The night before the first day of the year would be told with a date of the year before.
  const first = Math.min(...calendars.map(days => days[0]?.day ?? Infinity))
  if (open.size > 1) open.delete(first - 1)
  const most = Math.max(...open.values())
  return sortedBy(open.entries(), ([day]) => day).find(([, seconds]) => seconds === most)?.[0]
}

function splitAtNoon(pattern: DayPattern): readonly [number, number] {
  const early = pattern.filter(run => run.startS < NOON * 60)
  const all = sum(pattern.map(run => run.durationS))
  const before = sum(early.map(run => run.durationS))
  return [before, all - before]
}

function stripDay(site: Site, calendars: readonly Calendar[], day: EpochDay): StripDay {
  const runs = sortedBy(
    calendars.flatMap(calendar => [-1, 0, 1].flatMap(offset => runsOn(calendar, day, offset))),
    run => run.fromMinute
  )
  return { on: fromEpochDay(day), runs, load: loadOf(site, runs), allowed: allowedOn(site, day) }
}

/** Runs of a program's day `offset` days after the strip's, as minutes of the strip's own day. */
function runsOn({ id, days }: Calendar, day: EpochDay, offset: number): StripRun[] {
  const pattern = findDay(days, day + offset) ?? []
  return pattern.flatMap(({ station, program, cycle, startS, durationS }) => {
    const from = offset * DAY_MINUTES + startS / 60
    if (from < NOON || from >= NOON + DAY_MINUTES) return []
    const toMinute = Math.min(from + durationS / 60, NOON + DAY_MINUTES)
    return [{ station: `${id}/${station}`, controller: id, program, cycle, fromMinute: from, toMinute }]
  })
}

function findDay(days: YearRuns, day: EpochDay): DayPattern | undefined {
  let [low, high] = [0, days.length]
  while (low < high) {
    const middle = (low + high) >>> 1
    if ((days[middle]?.day ?? Infinity) < day) low = middle + 1
    else high = middle
  }
  return days[low]?.day === day ? days[low]?.pattern : undefined
}

/** A controller opens one valve at a time, so that of two runs of one that meet only the larger is counted. */
function loadOf(site: Site, runs: readonly StripRun[]): readonly StripLoad[] {
  const own = [...groupBy(runs, run => run.controller).values()].flatMap(each => [
    ...oneAtATime(
      each.flatMap<Opening>(({ station, fromMinute, toMinute }) => {
        const flowM3s = flowOf(site, station)
        return flowM3s === undefined ? [] : [{ name: station, fromS: fromMinute * 60, toS: toMinute * 60, flowM3s }]
      })
    )
  ])
  return [...flowStretches(own)].map(({ fromS, toS, flowM3s }) => ({
    fromMinute: fromS / 60,
    toMinute: toS / 60,
    flowM3s
  }))
}

function flowOf(site: Site, id: string): number | undefined {
  const station = site.stations.find(one => one.id === id)
  const flow = station && stationFlowM3s(station)
  return flow !== undefined && isPresent(flow) ? flow : undefined
}

/** From noon to noon, out of two calendar days. */
function allowedOn(site: Site, day: EpochDay): StripDay['allowed'] {
  const barredOn = barredTogether(site.wateringRules, PARTS, ruleFacts(site))
  const barred = [0, 1].map(offset => barredOn(day + offset))
  if (barred.every(one => one.length === 0)) return []
  const parts = barred.flatMap((one, offset) =>
    complement(one).map(([fromS, toS]) => ({
      fromMinute: Math.max(offset * DAY_MINUTES + fromS / 60, NOON),
      toMinute: Math.min((offset * DAY_S + toS) / 60, NOON + DAY_MINUTES)
    }))
  )
  return joined(parts.filter(one => one.toMinute > one.fromMinute))
}

function joined(parts: StripDay['allowed']): StripDay['allowed'] {
  const all: { fromMinute: number; toMinute: number }[] = []
  for (const part of parts) {
    const last = all.at(-1)
    if (last && last.toMinute === part.fromMinute) last.toMinute = part.toMinute
    else all.push({ ...part })
  }
  return all
}
