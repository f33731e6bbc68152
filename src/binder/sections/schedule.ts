import type { Block, Section, TableBlock, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { phaseFacts } from '../phase-facts.ts'
import { nextBlocks, totalsBlocks } from './totals.ts'
import { computed, stated } from '../values.ts'
import { rangeOf } from '../range.ts'
import { groupBy, sum } from '../../base/collections.ts'
import { yearOf } from '../../units/date.ts'
import { roundedText, showNumber, unitFor } from '../../units/show.ts'
import type { SchedulePlan, StationMonths } from '../../plan/plan.ts'

export function scheduleSection(context: PageContext): Section {
  const { site, plan, words } = context
  const w = words.binder.schedule
  const schedules = [...plan.schedules.values()].filter(one => one.months.length > 0)
  const blocks: Block[] = [{ kind: 'paragraph', text: w.lead(yearOf(plan.on)) }]
  if (site.season) blocks.push({ kind: 'paragraph', text: w.outOfSeason(site.season.from, site.season.to) })
  blocks.push(phaseFacts(context))
  blocks.push(settingsTable(schedules, context), ...monthTables(schedules, context), ...nextBlocks(context))
  blocks.push(...figures(schedules, context), ...totalsBlocks(context))
  return {
    id: 'schedule',
    title: words.binder.sections.schedule,
    newPage: true,
    notSupplied: schedules.length === 0,
    blocks: schedules.length === 0 ? [{ kind: 'not-supplied', text: w.nothing }, phaseFacts(context)] : blocks
  }
}

/** A program of so many rows, percent and days among them, is not parted. */
const WHOLE_ROWS = 6

const monthColumns = ({ time }: PageContext['words']) =>
  time.months.map(month => ({ label: month, align: 'right' as const }))

/** A row of a schedule with the controller it belongs to. */
interface Row extends StationMonths {
  readonly controller: string
}

const rowsOf = (schedules: readonly SchedulePlan[]): Row[] =>
  schedules.flatMap(({ controller, months }) => months.map(row => ({ ...row, controller })))

/** "K1/3 A": the station, and the program where the controller has several. */
function names({ site }: PageContext, row: Row): Value[] {
  const id = `${row.controller}/${row.station}`
  const station = site.stations.find(one => one.id === id)
  const several = (site.controllers.find(one => one.id === row.controller)?.programs.length ?? 0) > 1
  const what = station ? [station.zone === id ? '' : station.zone, station.waters].filter(Boolean).join(' · ') : '–'
  return [stated(several ? `${id} ${row.program}` : id, true), stated(what)]
}

const number = (value: number, places: number, calculation: string): Value =>
  computed(value === 0 ? '–' : roundedText(value, places), calculation)

/** Percent, watering days and minutes on a watering day: what the controllers are set to. Programs that share percents and days share rows. */
function settingsTable(schedules: readonly SchedulePlan[], context: PageContext): TableBlock {
  const w = context.words.binder.schedule
  const programs = [...groupBy(rowsOf(schedules), row => JSON.stringify([row.percent, row.days])).values()]
  const rows = programs.map((group): Value[][] => {
    const [first] = group
    if (!first) return []
    const ids = rangeOf([...new Set(group.map(row => `${row.controller} ${row.program}`))])
    return [
      [
        stated(ids, true),
        stated(w.percent),
        ...first.percent.map(value => stated(roundedText(value * 100, 0))),
        stated('')
      ],
      [
        stated(''),
        stated(w.days),
        ...first.days.map(value => number(value, 1, 'watering-days')),
        number(sum(first.days), 0, 'watering-days')
      ],
      ...group.map(row => [
        ...names(context, row),
        ...row.minutesPerDay.map((value, index) => number(row.days[index] ? value : 0, 1, 'monthly-percent')),
        stated('')
      ])
    ]
  })
  return { ...monthly(w.minutesPerDay, context.words), rows: rows.flat(), leads: leadsOf(rows.map(one => one.length)) }
}

/** Percent and days stay with the first station; a program of few stations stands whole. */
function leadsOf(lengths: readonly number[]): number[] {
  const starts = lengths.map((_, index) => sum(lengths.slice(0, index)))
  return lengths.flatMap((length, index) =>
    Array.from({ length: length <= WHOLE_ROWS ? length - 1 : 2 }, (_, row) => (starts[index] ?? 0) + row)
  )
}

/** Minutes, and water where a flow is stated, of the whole month. */
function monthTables(schedules: readonly SchedulePlan[], context: PageContext): TableBlock[] {
  const { site, words } = context
  const w = words.binder.schedule
  const rows = rowsOf(schedules)
  const minutes = rows.map(row => [
    ...names(context, row),
    ...row.minutes.map(value => number(value, 0, 'monthly-minutes')),
    number(sum(row.minutes), 0, 'monthly-minutes')
  ])
  const volume = (m3: number): Value =>
    computed(m3 === 0 ? '–' : showNumber(m3, 'volume', site.units), 'monthly-minutes')
  const volumes = rows.flatMap(row =>
    row.volumeM3 ? [[...names(context, row), ...row.volumeM3.map(volume), volume(sum(row.volumeM3))]] : []
  )
  const unit = unitFor('volume', site.units)
  const missing = volumes.length < rows.length
  return [
    { ...monthly(w.minutes, words), rows: minutes },
    ...(volumes.length > 0
      ? [{ ...monthly(`${w.volume}, ${unit}`, words), rows: volumes, ...(missing ? { notes: [w.noFlow] } : {}) }]
      : [])
  ]
}

function monthly(caption: string, words: PageContext['words']): Omit<TableBlock, 'rows'> {
  const w = words.binder.schedule
  return {
    kind: 'table',
    wide: true,
    caption,
    columns: [{ label: w.station }, { label: w.waters }, ...monthColumns(words), { label: w.year, align: 'right' }]
  }
}

function figures(schedules: readonly SchedulePlan[], { site, words }: PageContext): Block[] {
  const w = words.binder.schedule
  const rows = schedules.flatMap(one => one.months)
  const byMonth = (of: (row: StationMonths) => readonly number[] | undefined) =>
    words.time.months.map((_, index) => sum(rows.map(row => of(row)?.[index] ?? 0)))
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
        months: words.time.months.map((label, index) => ({
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
        months: words.time.months.map((label, index) => ({
          label,
          value: volumes[index] ?? 0,
          text: showNumber(volumes[index] ?? 0, 'volume', site.units)
        }))
      }
    })
  }
  return blocks
}
