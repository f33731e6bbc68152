import { roleIn } from './role-words.ts'
import type { TableBlock, Value } from './blocks.ts'
import type { PageContext } from './context.ts'
import { computed, measured, stated } from './values.ts'
import { sortedBy } from '../base/collections.ts'
import { BAND_C } from '../domain/wire/expected-reading.ts'
import { COPPER } from '../reference/copper.ts'
import type { TrendPoint } from '../plan/trends.ts'
import { roundedText, show, showStated } from '../units/show.ts'

/** Every reading on file, station by station and visit by visit, with how far it has moved from the first; and room for more. */
export function trendTables(context: PageContext): TableBlock[] {
  const { site, plan, words } = context
  const w = words.units.trend
  const { station, on, by } = words.binder.wires
  const right = 'right' as const
  const degrees = (temperatureC: number): string => show(temperatureC, 'temperature', site.units)
  return [
    {
      kind: 'table',
      caption: w.caption,
      columns: [
        { label: station },
        { label: on },
        { label: w.temperature, align: right },
        { label: w.loopAt, align: right },
        { label: w.at20, align: right },
        { label: w.change, align: right },
        { label: w.coilAt, align: right },
        { label: w.at20, align: right },
        { label: w.change, align: right },
        { label: by }
      ],
      rows: site.stations.flatMap(one => {
        const trends = plan.trends.get(one.id)
        if (!trends) return []
        const closing = w.closing(one.id)
        return [
          ...rowsOf(one.id, trends.loop, trends.coil, context),
          ...rowsOf(closing, trends.closingLoop, trends.closingCoil, context)
        ]
      }),
      blankRows: 6,
      notes: [w.note(degrees(BAND_C.least), percentAt(BAND_C.least), degrees(BAND_C.most), percentAt(BAND_C.most))]
    }
  ]
}

/** "−7.9" or "+5.9": what copper reads at a temperature, against 20 °C (NBS Handbook 100, 1966). */
const percentAt = (temperatureC: number): string => signed(COPPER.perC * (temperatureC - COPPER.baseC) * 100)

function signed(value: number): string {
  const text = roundedText(value, 1)
  return value > 0 && text !== '0' ? `+${text}` : text
}

function rowsOf(
  station: string,
  loop: readonly TrendPoint[],
  coil: readonly TrendPoint[],
  context: PageContext
): Value[][] {
  const days = [...new Set([...loop, ...coil].map(one => one.on))]
  const rows = days.map(on => ({
    on,
    loop: loop.find(one => one.on === on),
    coil: coil.find(one => one.on === on)
  }))
  return sortedBy(rows, row => row.on).map(row => {
    const { temperature, by } = row.loop ?? row.coil ?? {}
    return [
      stated(station, true),
      stated(row.on, true),
      stated(temperature ? showStated(temperature) : '–'),
      ...cells(row.loop, loop[0], context),
      ...cells(row.coil, coil[0], context),
      stated(by === undefined ? '–' : roleIn(by.split(',')[0] ?? '', context.words))
    ]
  })
}

function cells(point: TrendPoint | undefined, first: TrendPoint | undefined, { site, words }: PageContext): Value[] {
  const w = words.units.trend
  const none = stated('–')
  if (!point) return [none, none, none]
  const { at20Ohm, change } = point
  return [
    measured(showStated(point.ohm)),
    at20Ohm === undefined ? none : computed(show(at20Ohm, 'resistance', site.units), 'reading-trend'),
    point === first
      ? stated(w.first)
      : change === undefined
        ? none
        : computed(w.percent(signed(change * 100)), 'reading-trend')
  ]
}
