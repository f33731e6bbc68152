import type { Block, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { depthText } from '../depth-text.ts'
import { computed, stated } from '../values.ts'
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
  const hasRain = climate.months.some(one => isPresent(one.rainM))
  const isEstimate = climate.months.some(one => one.off !== undefined)
  const row = (label: string, cell: (month: ClimateMonth) => Value): Value[] => [
    stated(label),
    ...climate.months.map(cell)
  ]
  const ways = climate.months.map(month => howMade(month, climate, context))
  const [way] = new Set(ways).size === 1 ? ways : []
  return [
    {
      kind: 'table',
      wide: true,
      caption: w.caption,
      columns: [{ label: w.month }, ...words.time.months.map(label => ({ label, align: 'right' as const }))],
      rows: [
        row(`${w.et}, ${unit}`, month => depth(month.etM, month.way === 'by-hand', context)),
        ...(way === undefined ? [row(w.how, month => stated(howMade(month, climate, context)))] : []),
        ...(climate.months.some(one => one.days !== undefined)
          ? [row(w.daysOnRecord, ({ days }) => stated(days === undefined ? '–' : String(days)))]
          : []),
        ...(isEstimate
          ? [row(w.off, ({ off }) => stated(off === undefined ? w.unknownOff : show(off, 'percent', site.units)))]
          : []),
        ...(hasRain
          ? [
              row(`${w.rain}, ${unit}`, month => depth(month.rainM, site.climate?.rain !== undefined, context)),
              row(`${w.counted}, ${unit}`, month => counted(month, context))
            ]
          : [])
      ],
      notes: [...(way === undefined ? [] : [`${w.how}: ${way}.`]), ...reasons(climate), ...notesOf(context)]
    }
  ]
}

/** The unit stands with the name of the row; why a figure is not there is said once, below. */
function depth(m: Maybe<number>, isStated: boolean, { site }: PageContext): Value {
  if (isAbsent(m)) return stated('–')
  const text = depthText(m, site.units)
  return isStated ? stated(text) : computed(text)
}

function reasons({ months }: ClimatePlan): string[] {
  const absent = months.flatMap(({ etM, rainM, effectiveRainM }) => [
    etM,
    ...(isPresent(rainM) ? [effectiveRainM] : [])
  ])
  return [...new Set(absent.filter(isAbsent).map(one => one.reason))]
}

function counted({ effectiveRainM, rainM }: ClimateMonth, context: PageContext): Value {
  const { plan, words } = context
  const byZone = plan.climate.rainMethod === 'tr-21' && !plan.climate.underGlass && isPresent(rainM)
  return byZone ? stated(words.climate.byZone) : depth(effectiveRainM, false, context)
}

function howMade({ way }: ClimateMonth, { zone }: ClimatePlan, { words }: PageContext): string {
  const w = words.climate
  if (way === undefined) return '–'
  return way === 'zone-table' && zone !== undefined ? w.zone(zone) : w.ways[way]
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
