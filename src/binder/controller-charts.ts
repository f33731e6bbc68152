import { assemblyIn } from './assembly-kind.ts'
import { groupBy } from '../base/collections.ts'
import type { Controller, Paper, Station } from '../model/site.ts'
import { roundedText } from '../units/show.ts'
import type { ChartBlock } from './sheet-blocks.ts'
import type { PageContext } from './context.ts'
import { revisionOf } from './context.ts'
import type { PlanOptions } from './plan-figure.ts'
import { patternOf, zonesFigure } from './plan-figure.ts'
import { rangeOf } from './range.ts'
import { daysText } from './days.ts'
import { showClock } from '../units/clock.ts'

/** From so many controllers of one station each on, one chart stands for all of them. */
const GROUP_FROM = 3
/** Stations beside which the plan still leaves room. */
const BESIDE_PLAN = 16
/** Plan above a table of so many rows; taller where they are fewer, mm. */
const PLAN_MM = {
  A4: { widthMm: 156, heightMm: 92, rows: 8, rowMm: 5 },
  Letter: { widthMm: 161, heightMm: 86, rows: 7, rowMm: 4 }
} as const

/** One page for each controller; small ones that are alike share a page. */
export function controllerCharts(context: PageContext): ChartBlock[] {
  const { site } = context
  const stationsOf = (id: string) => site.stations.filter(one => one.controller === id)
  const small = site.controllers.filter(one => stationsOf(one.id).length <= 1)
  const alike = [...groupBy(small, setAlike).values()].filter(group => group.length >= GROUP_FROM)
  const grouped = new Set(alike.flat())
  const groups = [...site.controllers.filter(one => !grouped.has(one)).map(one => [one]), ...alike]
  return groups.map(group =>
    chartOf(
      group,
      group.flatMap(one => stationsOf(one.id)),
      context
    )
  )
}

/** What a chart says once for all of its controllers. */
function setAlike({ sheetPath, supply, programs }: Controller): string {
  return JSON.stringify([sheetPath, supply, programs.map(({ id, days, starts }) => [id, days, starts])])
}

function chartOf(group: readonly Controller[], stations: readonly Station[], context: PageContext): ChartBlock {
  const { site, plan, words } = context
  const w = words.drawing.chart
  const names = rangeOf(group.map(one => one.id))
  const numbers = new Map(stations.map(one => [one.id, group.length > 1 ? one.id : String(one.number)]))
  const zones = stations.map(one => words.drawing.zone(one.zone, one.id))
  const title = { title: w.planTitle(names), alt: w.planAlt(names, zones) }
  const figure =
    stations.length > BESIDE_PLAN
      ? undefined
      : zonesFigure(numbers, title, planRoom(site.paper, stations.length), context)
  return {
    kind: 'chart',
    id: `chart-${group[0]?.id ?? ''}`,
    // A name stays on one line.
    title: w.heading(names.replaceAll(' ', '\u00a0'), group.length),
    site: site.title,
    keep: w.keep,
    asOf: w.asOf(plan.on, revisionOf(context)),
    ...(figure ? { figure } : { schematic: w.schematic }),
    columns: [w.pattern, w.station, w.zone, w.waters, w.valve, w.box, ...w.quarters],
    spanned: { label: w.minutes, columns: w.quarters.length },
    rows: [
      ...group.flatMap(one => masterRow(one, context)),
      ...stations.map(one => ({
        pattern: patternOf(one.id, context),
        cells: [
          numbers.get(one.id) ?? '',
          one.zone,
          one.waters ?? words.drawing.block.notSupplied,
          valves(one, one => one.size, context),
          valves(one, one => one.box, context),
          ...quarters(one, context)
        ]
      }))
    ],
    facts: facts(group, stations, context),
    foot: w.copies
  }
}

function planRoom(paper: Paper, stations: number): PlanOptions {
  const { widthMm, heightMm, rows, rowMm } = PLAN_MM[paper]
  return { widthMm, heightMm: heightMm + Math.max(0, rows - stations) * rowMm }
}

function masterRow({ masterValve, id }: Controller, { words }: PageContext): { cells: string[] }[] {
  if (!masterValve) return []
  const w = words.drawing
  const cells = [
    w.master,
    id,
    w.chart.master,
    masterValve.size ?? w.block.notSupplied,
    masterValve.box ?? w.block.notSupplied
  ]
  return [{ cells: [...cells, ...w.chart.quarters.map(() => '')] }]
}

function valves(
  station: Station,
  of: (valve: Station['valves'][number]) => string | undefined,
  { words }: PageContext
): string {
  const texts = station.valves.map(one => of(one) ?? words.drawing.block.notSupplied)
  return [...new Set(texts)].join(', ') || words.drawing.block.notSupplied
}

/** Minutes on a watering day of each quarter, all programs together, from the least month to the most; months without water do not count. */
function quarters({ controller, number }: Station, { plan, words }: PageContext): string[] {
  const w = words.drawing.chart
  const rows = (plan.schedules.get(controller)?.months ?? []).filter(one => one.station === number)
  const months = Array.from({ length: 12 }, (_, month) =>
    rows.reduce((sum, row) => sum + ((row.days[month] ?? 0) > 0 ? (row.minutesPerDay[month] ?? 0) : 0), 0)
  )
  return w.quarters.map((_, quarter) => {
    const watered = months.slice(quarter * 3, quarter * 3 + 3).filter(one => one > 0)
    if (watered.length === 0) return w.off
    const text = (minutes: number) => roundedText(minutes, minutes < 10 ? 1 : 0)
    return w.spread(text(Math.min(...watered)), text(Math.max(...watered)))
  })
}

function facts(group: readonly Controller[], stations: readonly Station[], context: PageContext): ChartBlock['facts'] {
  const { site, words } = context
  const w = words.drawing.chart
  const none = words.drawing.block.notSupplied
  const fact = (label: string, value: string | undefined) => ({ label, value: value || none, missing: !value })
  const [first] = group
  const supplies = site.supplies.filter(one => group.some(unit => unit.supply === one.id) || site.supplies.length === 1)
  const installer = site.contacts.find(one => one.role === 'installer')
  const programs = (first?.programs ?? []).map(one =>
    w.program(one.id, daysText(one.days, words), one.starts.map(start => showClock(start, site.units)).join(', '))
  )
  const changes = stations.flatMap(one =>
    [...(one.phases ?? site.phases ?? [])].flatMap(phase =>
      phase.name === 'established' && phase.from ? [w.established(one.zone, phase.from)] : []
    )
  )
  return [
    fact(w.programs, [...programs, ...new Set(changes)].join('. ')),
    fact(w.shutOff, supplies.flatMap(one => (one.shutOff ? [w.shutsOff(one.id, one.shutOff)] : [])).join('; ')),
    fact(w.meter, supplies.flatMap(one => (one.meter ? [`${one.id}: ${one.meter}`] : [])).join('; ')),
    fact(
      w.backflow,
      supplies
        .flatMap(({ id, backflow }) =>
          backflow
            ? [
                `${id}: ${[assemblyIn(backflow.kind, words), backflow.size, backflow.serial, backflow.where].filter(Boolean).join(', ')}`
              ]
            : []
        )
        .join('; ')
    ),
    fact(
      w.installer,
      installer?.public === true
        ? [installer.company, installer.name, installer.licence, installer.phone].filter(Boolean).join(', ')
        : [installer?.company, installer?.licence].filter(Boolean).join(', ')
    ),
    fact(
      w.warranty,
      site.warranties
        .flatMap(one => (one.start || one.end ? [w.warrantySpan(one.item, one.start ?? none, one.end ?? none)] : []))
        .join('; ')
    )
  ]
}
