import type { Block, Section, TableBlock, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { computed, stated } from '../values.ts'
import { sum } from '../../base/collections.ts'
import { MONTHS, yearOf } from '../../units/date.ts'
import { roundedText, showNumber, unitFor } from '../../units/show.ts'
import type { SchedulePlan, StationMonths } from '../../plan/plan.ts'

export function scheduleSection(context: PageContext): Section {
  const { site, plan, words } = context
  const w = words.binder.schedule
  const schedules = [...plan.schedules.values()].filter(one => one.months.length > 0)
  const blocks: Block[] = [{ kind: 'paragraph', text: w.lead(yearOf(plan.on)) }]
  if (site.season) blocks.push({ kind: 'paragraph', text: w.outOfSeason(site.season.from, site.season.to) })
  blocks.push(...schedules.flatMap(one => [minutesTable(one, context), monthTable(one, context)]))
  blocks.push(...figures(schedules, context))
  return {
    id: 'schedule',
    title: words.binder.sections.schedule,
    newPage: true,
    notSupplied: schedules.length === 0,
    blocks: schedules.length === 0 ? [{ kind: 'not-supplied', text: w.nothing }] : blocks
  }
}

const monthColumns = MONTHS.map(month => ({ label: month, align: 'right' as const }))

function names({ site }: PageContext, controller: string, row: StationMonths): Value[] {
  const station = site.stations.find(one => one.controller === controller && one.number === row.station)
  return [
    stated(`${row.program} ${row.station}`, true),
    stated(station ? [station.zone, station.waters].filter(Boolean).join(' · ') : '–')
  ]
}

const number = (value: number, places: number): Value => computed(value === 0 ? '–' : roundedText(value, places))

/** Percent, watering days and minutes on a watering day: what the controller is set to. */
function minutesTable({ controller, months }: SchedulePlan, context: PageContext): TableBlock {
  const w = context.words.binder.schedule
  const programs = [...new Set(months.map(one => one.program))]
  const rows: Value[][] = programs.flatMap(program => {
    const own = months.filter(one => one.program === program)
    const [first] = own
    if (!first) return []
    return [
      [
        stated(program, true),
        stated(w.percent),
        ...first.percent.map(value => stated(`${roundedText(value * 100, 0)}`)),
        stated('')
      ],
      [stated(program, true), stated(w.days), ...first.days.map(value => number(value, 1)), number(sum(first.days), 0)],
      ...own.map(row => [
        ...names(context, controller, row),
        ...row.minutesPerDay.map((value, index) => number(row.days[index] ? value : 0, 1)),
        stated('')
      ])
    ]
  })
  return {
    kind: 'table',
    wide: true,
    caption: `${controller}: ${w.minutesPerDay}`,
    columns: [{ label: w.station }, { label: w.waters }, ...monthColumns, { label: w.year, align: 'right' }],
    rows
  }
}

/** Minutes and water of the whole month. */
function monthTable({ controller, months }: SchedulePlan, context: PageContext): TableBlock {
  const { site, words } = context
  const w = words.binder.schedule
  const unit = unitFor('volume', site.units)
  const rows = months.flatMap(row => {
    const minutes = [
      ...names(context, controller, row),
      ...row.minutes.map(value => number(value, 0)),
      number(sum(row.minutes), 0)
    ]
    if (!row.volumeM3) return [minutes]
    const volume = (m3: number): Value => computed(m3 === 0 ? '–' : showNumber(m3, 'volume', site.units))
    return [
      minutes,
      [stated(''), stated(`${w.volume}, ${unit}`), ...row.volumeM3.map(volume), volume(sum(row.volumeM3))]
    ]
  })
  const missing = months.some(row => !row.volumeM3)
  return {
    kind: 'table',
    wide: true,
    caption: `${controller}: ${w.minutes}`,
    columns: [{ label: w.station }, { label: w.waters }, ...monthColumns, { label: w.year, align: 'right' }],
    rows,
    ...(missing ? { notes: [w.noFlow] } : {})
  }
}

function figures(schedules: readonly SchedulePlan[], { site, words }: PageContext): Block[] {
  const w = words.binder.schedule
  const rows = schedules.flatMap(one => one.months)
  const byMonth = (of: (row: StationMonths) => readonly number[] | undefined) =>
    MONTHS.map((_, index) => sum(rows.map(row => of(row)?.[index] ?? 0)))
  const minutes = byMonth(row => row.minutes)
  const volumes = byMonth(row => row.volumeM3)
  const blocks: Block[] = [
    {
      kind: 'figure',
      caption: w.figureCaption,
      figure: {
        figure: 'months',
        title: w.figureTitle,
        unit: 'min',
        months: MONTHS.map((label, index) => ({
          label,
          value: minutes[index] ?? 0,
          text: roundedText(minutes[index] ?? 0, 0)
        }))
      }
    }
  ]
  if (sum(volumes) > 0) {
    blocks.push({
      kind: 'figure',
      caption: w.volumeFigureCaption,
      figure: {
        figure: 'months',
        title: w.volumeFigureTitle,
        unit: unitFor('volume', site.units),
        months: MONTHS.map((label, index) => ({
          label,
          value: volumes[index] ?? 0,
          text: showNumber(volumes[index] ?? 0, 'volume', site.units)
        }))
      }
    })
  }
  return blocks
}
