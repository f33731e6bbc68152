import type { Block, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { depthText } from '../depth-text.ts'
import { computed, notComputed, stated } from '../values.ts'
import { isAbsent, isPresent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { sum } from '../../base/collections.ts'
import type { ClimateMonth, ClimatePlan, EtWay } from '../../plan/climate-plan.ts'
import { show, unitFor } from '../../units/show.ts'

/** Reference ET and rain of the twelve months, how each came about and how far it may be off; nothing where nothing is known. */
export function climateBlocks(context: PageContext): Block[] {
  const { plan, site, words } = context
  const { climate } = plan
  if (climate.months.every(one => isAbsent(one.etM) && isAbsent(one.rainM))) return []
  const w = words.climate
  const unit = unitFor('depth', site.units)
  const right = 'right' as const
  const hasRain = climate.months.some(one => isPresent(one.rainM))
  const isEstimate = climate.months.some(one => one.off !== undefined)
  return [
    {
      kind: 'table',
      caption: w.caption,
      columns: [
        { label: w.month },
        { label: w.et, unit, align: right },
        { label: w.how },
        ...(isEstimate ? [{ label: w.off, align: right }] : []),
        ...(hasRain
          ? [
              { label: w.rain, unit, align: right },
              { label: w.counted, unit, align: right }
            ]
          : [])
      ],
      rows: climate.months.map((month, index) => [
        stated(words.boxPage.months[index] ?? ''),
        depth(month.etM, month.way === 'by-hand', context),
        stated(howMade(month, climate, context)),
        ...(isEstimate
          ? [stated(month.off === undefined ? w.unknownOff : show(month.off, 'percent', site.units))]
          : []),
        ...(hasRain ? [depth(month.rainM, site.climate?.rain !== undefined, context), counted(month, context)] : [])
      ]),
      notes: notesOf(context)
    }
  ]
}

/** The unit stands in the head of the column. */
function depth(m: Maybe<number>, isStated: boolean, { site, words }: PageContext): Value {
  if (isAbsent(m)) return notComputed(words, m.reason)
  const text = depthText(m, site.units)
  return isStated ? stated(text) : computed(text)
}

function counted({ effectiveRainM, rainM }: ClimateMonth, context: PageContext): Value {
  const { plan, words } = context
  const byZone = plan.climate.rainMethod === 'tr-21' && !plan.climate.underGlass && isPresent(rainM)
  return byZone ? stated(words.climate.byZone) : depth(effectiveRainM, false, context)
}

function howMade({ way, days }: ClimateMonth, { zone }: ClimatePlan, { words }: PageContext): string {
  const w = words.climate
  if (way === undefined) return '–'
  if (way === 'zone-table' && zone !== undefined) return w.zone(zone)
  return days === undefined ? w.ways[way] : w.days(w.ways[way], days)
}

function notesOf({ plan: { climate }, site, words }: PageContext): string[] {
  const w = words.climate
  const { months, record, lacks, rainMethod, underGlass } = climate
  const used = [...new Set(months.flatMap(one => one.way ?? []))]
  const [first, ...others] = climate.ways.filter(way => used.includes(way))
  const cards = cardsOf(climate, used)
  return [
    ...(site.climate?.name === undefined ? [] : [w.from(site.climate.name)]),
    ...(record ? [w.record(record.days, record.first, record.last)] : []),
    ...yearNote(climate, { site, words }),
    ...(first && others.length > 0 ? [w.others(w.ways[first], others.map(way => w.ways[way]).join(', '))] : []),
    ...(lacks.length > 0 ? [w.lacks(lacks.map(one => w.lackNames[one]).join(', '))] : []),
    ...(used.includes('zone-table') ? [w.zoneSource] : []),
    ...(months.some(one => one.off !== undefined) ? [w.estimate] : []),
    underGlass ? w.underGlass : isAbsent(rainMethod) ? rainMethod.reason : w.rainMethods[rainMethod],
    ...(cards.length > 0 ? [w.madeBy(cards.join(', '))] : [])
  ]
}

function yearNote({ months }: ClimatePlan, { site, words }: Pick<PageContext, 'site' | 'words'>): string[] {
  const total = (values: readonly Maybe<number>[]) =>
    values.every(isPresent) ? show(sum(values), 'depth', site.units) : undefined
  const et = total(months.map(one => one.etM))
  const rain = total(months.map(one => one.effectiveRainM))
  if (et === undefined) return []
  const hasRain = months.some(one => isPresent(one.rainM))
  return [rain === undefined || !hasRain ? words.climate.yearEt(et) : words.climate.year(et, rain)]
}

const CARDS: Readonly<Record<EtWay, readonly string[]>> = {
  'by-hand': [],
  'daily-weather': ['eto-penman-monteith', 'month-from-days'],
  'daily-temperatures': ['eto-hargreaves', 'month-from-days'],
  weather: ['eto-penman-monteith'],
  'zone-table': ['eto-zone'],
  temperatures: ['eto-hargreaves']
}

/** Names of the calculations behind the table. */
function cardsOf({ months, rainMethod, underGlass }: ClimatePlan, used: readonly EtWay[]): string[] {
  const counts = !underGlass && rainMethod !== 'none' && months.some(one => isPresent(one.rainM))
  return [...new Set([...used.flatMap(way => CARDS[way]), ...(counts ? ['effective-rain'] : [])])]
}
