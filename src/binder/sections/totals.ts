import type { Block, TableBlock, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { computed, figure, notComputed, stated } from '../values.ts'
import { isAbsent } from '../../base/absent.ts'
import type { Site } from '../../model/site.ts'
import type { NextRun, SensorMark, TotalRow } from '../../plan/totals-plan.ts'
import type { Words } from '../../words/words.ts'
import { showClock } from '../../units/clock.ts'
import { roundedText, show } from '../../units/show.ts'

/** As many as the plan holds of each station. */
const RUNS_SHOWN = 3

/** Totals of the year by program, controller, supply and site. Nothing where nothing waters. */
export function totalsBlocks(context: PageContext): Block[] {
  return context.plan.totals.length === 0 ? [] : [totalsTable(context)]
}

/** The next runs, and days held back. Nothing where nothing waters. */
export function nextBlocks(context: PageContext): Block[] {
  return context.plan.totals.length === 0 ? [] : [nextTable(context), ...suspendedTable(context)]
}

function totalsTable(context: PageContext): TableBlock {
  const w = context.words.totals
  const rows = context.plan.totals.filter(row => row.of !== 'station' && !repeats(row, context))
  const missing = [...new Set(rows.flatMap(row => row.flowNotStated))]
  return {
    kind: 'table',
    caption: w.totals,
    columns: [
      { label: w.what },
      ...[w.openings, w.minutes, w.volume, w.depth].map(label => ({ label, align: 'right' as const }))
    ],
    rows: rows.map(row => totalRow(row, context)),
    notes: [w.totalsNote, ...(missing.length > 0 ? [w.flowNotStated(missing.join(', '))] : [])]
  }
}

/** The only program of a controller, and the only supply of a site, have the same figures as the next larger part. */
function repeats({ of, id }: TotalRow, { site }: PageContext): boolean {
  if (of === 'supply') return site.supplies.length === 1
  if (of === 'controller') return site.controllers.length === 1
  if (of !== 'program') return false
  const own = site.controllers.find(one => id.startsWith(`${one.id} `))
  return own?.programs.length === 1
}

function totalRow(row: TotalRow, { site, words }: PageContext): Value[] {
  const w = words.totals
  const name = row.of === 'site' ? w.kinds.site : `${w.kinds[row.of]} ${row.id}`
  const volume = row.volumeInYearM3
  const water = isAbsent(volume)
    ? notComputed(words, volume.reason)
    : computed(partly(row, show(volume, 'volume', site.units), w.atLeast), 'year-total')
  return [
    stated(name),
    computed(String(row.openings), 'year-total'),
    computed(roundedText(row.minutesInYear, 0), 'year-total'),
    water,
    figure(row.depthM, 'depth', site.units, words, 'year-total')
  ]
}

const partly = (row: TotalRow, text: string, atLeast: (text: string) => string): string =>
  row.flowNotStated.length === 0 ? text : atLeast(text)

function nextTable({ site, plan, words }: PageContext): TableBlock {
  const w = words.totals
  const ids = [...plan.next.keys()]
  const stops = (id: string) =>
    plan.sensorMarks.filter(mark => mark.stops && mark.stations.includes(id)).map(mark => mark.sensor)
  const sensors = ids.some(id => stops(id).length > 0)
  const runs = Array.from({ length: RUNS_SHOWN }, (_, index) => index)
  return {
    kind: 'table',
    wide: true,
    caption: w.next,
    columns: [
      { label: w.station },
      { label: w.waters },
      ...runs.map(index => ({ label: w.run(index + 1) })),
      ...(sensors ? [{ label: w.sensor }] : [])
    ],
    rows: ids.map(id => {
      const next = plan.next.get(id) ?? []
      return [
        stated(id, true),
        stated(watersOf(site, id)),
        ...runs.map(index => computed(runText(next[index], site, w.runText), 'run-sequence')),
        ...(sensors ? [stated(stops(id).join(', ') || '–')] : [])
      ]
    }),
    notes: [w.nextNote(plan.on), ...plan.sensorMarks.map(mark => sensorText(mark, site, words))]
  }
}

/** "RS1 (rain) stops all stations of its controller; could stop 512 openings (9,000 min) of the year." */
function sensorText({ sensor, kind, stops, openings, minutes }: SensorMark, site: Site, words: Words): string {
  const w = words.totals
  const acts = site.sensors.find(one => one.id === sensor)?.acts
  const does = acts ? w.acts[acts] : w.actsByKind[stops ? 'true' : 'false']
  return w.sensorText(sensor, kind, does, stops ? w.couldStop(openings, show(minutes * 60, 'minutes', site.units)) : '')
}

function watersOf(site: Site, id: string): string {
  const station = site.stations.find(one => one.id === id)
  return station ? [station.zone === id ? '' : station.zone, station.waters].filter(Boolean).join(' · ') || '–' : '–'
}

function runText(
  run: NextRun | undefined,
  site: Site,
  text: (date: string, time: string, minutes: string) => string
): string {
  if (!run) return '–'
  return text(run.on, showClock(run.minute, site.units), show(run.minutes * 60, 'minutes', site.units))
}

function suspendedTable({ site, words }: PageContext): TableBlock[] {
  const w = words.totals
  const rows = site.controllers.flatMap(controller => [
    ...(controller.suspensions ?? []).map(one => [controller.id, w.allPrograms, one.from, one.to, one.why ?? '–']),
    ...controller.programs.flatMap(program =>
      (program.suspensions ?? []).map(one => [controller.id, program.id, one.from, one.to, one.why ?? '–'])
    )
  ])
  if (rows.length === 0) return []
  return [
    {
      kind: 'table',
      caption: w.suspended,
      columns: [w.controller, w.program, w.from, w.to, w.why].map(label => ({ label })),
      rows: rows.map(row => row.map(text => stated(text)))
    }
  ]
}
