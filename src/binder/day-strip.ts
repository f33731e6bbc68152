import type { Block, FigureSpec, TableBlock, Value } from './blocks.ts'
import type { PageContext } from './context.ts'
import { rangeOf } from './range.ts'
import { computed, notSupplied, stated } from './values.ts'
import { groupBy, naturalKey, sortedBy, sum } from '../base/collections.ts'
import { isAbsent } from '../base/absent.ts'
import type { Site, Station } from '../model/site.ts'
import { stationFlowM3s } from '../plan/station-flow.ts'
import type { StripDay, StripPlan, StripRun } from '../plan/strips-plan.ts'
import { DAY_MINUTES, showClock } from '../units/clock.ts'
import { epochDay, weekdayOf } from '../units/date.ts'
import { fromSi } from '../units/quantity.ts'
import { show, unitFor } from '../units/show.ts'
import type { UnitSystem } from '../units/show.ts'

const NOON = DAY_MINUTES / 2
const HOURS_APART = 3

type Strip = Extract<FigureSpec, { figure: 'day-strip' }>

/** The watering day with its runs and the watering week with its nights, each figure with its table. */
export function stripBlocks(strip: StripPlan, context: PageContext): Block[] {
  return [dayFigure(strip, context), runsTable(strip, context), weekFigure(strip, context), nightsTable(strip, context)]
}

/** A figure by the id of its controller, or of the supply that several share. */
export function stripsOf(of: StripPlan['of'], id: string, context: PageContext): Block[] {
  return context.plan.strips.filter(one => one.of === of && one.id === id).flatMap(one => stripBlocks(one, context))
}

function nameOf({ of, id, controllers }: StripPlan, { words }: PageContext): string {
  return of === 'controller' ? id : words.strips.onSupply(id, rangeOf(controllers))
}

function dayFigure(strip: StripPlan, context: PageContext): Block {
  const { site, words } = context
  const { day } = strip
  const load = loadOf(strip, context)
  const figure: Strip = {
    figure: 'day-strip',
    title: words.strips.dayTitle(strip.id, day.on),
    fromMinute: NOON,
    toMinute: NOON + DAY_MINUTES,
    hours: hourMarks(site.units),
    windows: day.allowed.map(({ fromMinute, toMinute }) => ({
      from: fromMinute,
      to: toMinute,
      label: words.strips.window
    })),
    lanes: lanesOf(strip, site),
    ...(load ? { load } : {})
  }
  return { kind: 'figure', figure, caption: dayCaption(strip, context) }
}

/** Speaks of what is drawn and of nothing else: without a rule there are no hours behind the lanes, without a flow nothing below them. */
function dayCaption(strip: StripPlan, context: PageContext): string {
  const { day } = strip
  const { dayParts: w } = context.words.strips
  return [
    w.lead(nameOf(strip, context), day.on),
    ...(day.allowed.length > 0 ? [w.hours] : context.site.wateringRules.length === 0 ? [w.noRule] : []),
    ...(day.load.length > 0 ? [w.load] : [])
  ].join(' ')
}

function weekCaption(strip: StripPlan, context: PageContext): string {
  const { week } = strip
  const { weekParts: w } = context.words.strips
  return [
    w.lead(nameOf(strip, context)),
    ...(week.some(one => one.load.length > 0) ? [w.load] : []),
    ...(week.some(one => one.allowed.length > 0) ? [w.hours] : [])
  ].join(' ')
}

function lanesOf({ day, controllers }: StripPlan, site: Site): Strip['lanes'] {
  const lanes = groupBy(day.runs, run => run.station)
  return sortedBy(lanes.entries(), ([id]) => naturalKey(id)).map(([id, runs]) => ({
    label: laneLabel(
      id,
      site.stations.find(one => one.id === id),
      controllers.length > 1
    ),
    bars: runs.map(({ fromMinute, toMinute, program }) => ({ from: fromMinute, to: toMinute, label: program }))
  }))
}

function laneLabel(id: string, station: Station | undefined, several: boolean): string {
  if (!station || station.zone === id || station.zone === station.controller) return id
  return several ? `${id} · ${station.zone}` : `${station.number} · ${station.zone}`
}

const flowIn = (m3s: number, units: UnitSystem): number => fromSi(m3s, unitFor('flow', units), 'flow')

function loadOf({ day, limitM3s }: StripPlan, { site, words }: PageContext): Strip['load'] {
  if (day.load.length === 0) return undefined
  const { units } = site
  const most = Math.max(...day.load.map(one => one.flowM3s))
  const w = words.strips
  return {
    label: w.load(unitFor('flow', units)),
    steps: stepsOf(day, units),
    top: flowIn(Math.max(most, limitM3s ?? 0), units),
    peak: { value: flowIn(most, units), label: w.peak(show(most, 'flow', units)) },
    ...(limitM3s === undefined
      ? {}
      : { limit: { value: flowIn(limitM3s, units), label: w.limit(show(limitM3s, 'flow', units)) } })
  }
}

function stepsOf({ load }: StripDay, units: UnitSystem) {
  return load.map(({ fromMinute, toMinute, flowM3s }) => ({
    from: fromMinute,
    to: toMinute,
    value: flowIn(flowM3s, units)
  }))
}

function runsTable({ day, flowNotStated }: StripPlan, { site, words }: PageContext): TableBlock {
  const w = words.strips
  const right = 'right' as const
  const clock = (minute: number): Value => computed(showClock(minute % DAY_MINUTES, site.units), 'run-sequence')
  const ran = flowNotStated.filter(id => day.runs.some(run => run.station === id))
  return {
    kind: 'table',
    caption: w.runs,
    columns: [
      { label: w.opens, align: right },
      { label: w.shuts, align: right },
      { label: w.station },
      { label: w.waters },
      { label: w.program },
      { label: w.minutes, align: right },
      { label: w.flow, align: right }
    ],
    rows: day.runs.map(run => {
      const station = site.stations.find(one => one.id === run.station)
      return [
        clock(run.fromMinute),
        clock(run.toMinute),
        stated(run.station, true),
        stated(watersOf(run, station)),
        stated(run.program),
        computed(show((run.toMinute - run.fromMinute) * 60, 'minutes', site.units), 'monthly-minutes'),
        flowValue(station, site.units, words)
      ]
    }),
    ...(ran.length === 0 ? {} : { notes: [w.noFlow(rangeOf(ran))] })
  }
}

function watersOf({ station: id }: StripRun, station: Station | undefined): string {
  return station ? [station.zone === id ? '' : station.zone, station.waters].filter(Boolean).join(' · ') || '–' : '–'
}

function flowValue(station: Station | undefined, units: UnitSystem, words: PageContext['words']): Value {
  const flow = station && stationFlowM3s(station)
  return flow === undefined || isAbsent(flow) ? notSupplied(words) : stated(show(flow, 'flow', units))
}

function weekFigure(strip: StripPlan, context: PageContext): Block {
  const { site, words } = context
  const { units } = site
  const w = words.strips
  const { week, limitM3s } = strip
  const most = Math.max(0, ...week.flatMap(day => day.load.map(one => one.flowM3s)))
  return {
    kind: 'figure',
    caption: weekCaption(strip, context),
    figure: {
      figure: 'week-strip',
      title: w.weekTitle(strip.id),
      fromMinute: NOON,
      toMinute: NOON + DAY_MINUTES,
      hours: hourMarks(units),
      rows: week.map(day => ({
        label: nightName(day, words),
        sum: day.runs.length === 0 ? '–' : show(openS(day), 'minutes', units),
        windows: day.allowed.map(({ fromMinute, toMinute }) => ({ from: fromMinute, to: toMinute })),
        steps: stepsOf(day, units)
      })),
      top: flowIn(Math.max(most, limitM3s ?? 0), units),
      ...(limitM3s === undefined
        ? {}
        : { limit: { value: flowIn(limitM3s, units), label: w.limit(show(limitM3s, 'flow', units)) } })
    }
  }
}

const openS = ({ runs }: StripDay): number => sum(runs.map(run => (run.toMinute - run.fromMinute) * 60))

/** "Mon 07-06". */
function nightName({ on }: StripDay, { strips }: PageContext['words']): string {
  return strips.row(strips.weekdays[weekdayOf(epochDay(on)) - 1] ?? '', on.slice(5))
}

function nightsTable({ week, limitM3s }: StripPlan, { site, words }: PageContext): TableBlock {
  const w = words.strips
  const right = 'right' as const
  const { units } = site
  return {
    kind: 'table',
    caption: w.days,
    columns: [
      { label: w.night },
      { label: w.first, align: right },
      { label: w.last, align: right },
      { label: w.count, align: right },
      { label: w.open, align: right },
      { label: w.most, align: right }
    ],
    rows: week.map(day => {
      const { runs, load } = day
      const name = stated(nightName(day, words))
      if (runs.length === 0) return [name, ...Array.from({ length: 5 }, () => stated('–'))]
      const last = Math.max(...runs.map(run => run.toMinute))
      const most = Math.max(0, ...load.map(one => one.flowM3s))
      const over = limitM3s !== undefined && most > limitM3s * (1 + 1e-9)
      return [
        name,
        computed(showClock((runs[0]?.fromMinute ?? 0) % DAY_MINUTES, units), 'run-sequence'),
        computed(showClock(last % DAY_MINUTES, units), 'run-sequence'),
        computed(String(runs.length), 'watering-days'),
        computed(show(openS(day), 'minutes', units), 'monthly-minutes'),
        load.length === 0
          ? notSupplied(words)
          : { ...computed(show(most, 'flow', units), 'supply-peak'), ...(over ? { state: 'bad' as const } : {}) }
      ]
    })
  }
}

function hourMarks(units: UnitSystem): { minute: number; label: string }[] {
  const marks = []
  for (let minute = NOON; minute <= NOON + DAY_MINUTES; minute += HOURS_APART * 60) {
    marks.push({ minute, label: showClock(minute % DAY_MINUTES, units) })
  }
  return marks
}
