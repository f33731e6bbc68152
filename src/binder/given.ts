import type { Block, FigureSpec, Value } from './blocks.ts'
import type { PageContext } from './context.ts'
import { rangeOf } from './range.ts'
import { computed, stated } from './values.ts'
import { isAbsent, isPresent } from '../base/absent.ts'
import { groupBy, sum } from '../base/collections.ts'
import type { GivenPlan } from '../plan/advice-plan.ts'
import { fromSi } from '../units/quantity.ts'
import { show, showNumber, unitFor } from '../units/show.ts'
import type { UnitSystem } from '../units/show.ts'

/** Stations of which the same figures hold, to the hundredth of a millimeter. */
interface Alike {
  readonly ids: readonly string[]
  readonly given: GivenPlan
}

/** The year's need against what is given, one figure for stations that are alike; stations that get nothing and need nothing are left out. */
export function givenFigures(context: PageContext): Extract<Block, { kind: 'figure' }>[] {
  const { site, words } = context
  const w = words.advice
  return alikeOf(context).map(({ ids, given: { needM, setM } }) => {
    const name = rangeOf(ids)
    const total = (depths: readonly number[]) => show(sum(depths), 'depth', site.units)
    return {
      kind: 'figure',
      figure: needGiven(name, needM, setM, site.units, words),
      caption: isAbsent(needM)
        ? w.figureCaptionUnknown(name, total(setM), needM.reason)
        : w.figureCaption(name, total(needM), total(setM))
    }
  })
}

function needGiven(
  name: string,
  needM: GivenPlan['needM'],
  setM: readonly number[],
  units: UnitSystem,
  { advice: w, time: { months } }: PageContext['words']
): FigureSpec {
  const unit = unitFor('depth', units)
  const inUnit = (m: number) => fromSi(m, unit, 'length')
  const need = isAbsent(needM) ? [] : needM
  const most = Math.max(...need, ...setM, 0)
  return {
    figure: 'need-given',
    title: w.figureTitle(name),
    unit,
    needLabel: w.needed,
    givenLabel: w.givenShort,
    months: months.map((label, index) => {
      const needed = need[index]
      const given = inUnit(setM[index] ?? 0)
      return needed === undefined ? { label, given } : { label, need: inUnit(needed), given }
    }),
    top: { value: inUnit(most), label: show(most, 'depth', units) }
  }
}

/** The same in figures, with what the advice would give where it differs. */
export function givenTable(context: PageContext): Extract<Block, { kind: 'table' }>[] {
  const { site, words } = context
  const w = words.advice
  const groups = alikeOf(context)
  if (groups.length === 0) return []
  const right = 'right' as const
  const depth = (m: number): string => (m === 0 ? '–' : showNumber(m, 'depth', site.units))
  const cells = (depths: readonly number[], calculation: string): Value[] =>
    [...depths, sum(depths)].map(m => computed(depth(m), calculation))
  return [
    {
      kind: 'table',
      wide: true,
      caption: w.table(unitFor('depth', site.units)),
      columns: [
        { label: w.station },
        { label: words.advice.rowWhat },
        ...words.time.months.map(label => ({ label, align: right })),
        { label: w.year, align: right }
      ],
      rows: groups.flatMap(({ ids, given: { needM, setM, advisedM } }) => [
        ...(isPresent(needM) ? [[stated(rangeOf(ids), true), stated(w.rowNeeded), ...cells(needM, 'run-time')]] : []),
        [stated(isPresent(needM) ? '' : rangeOf(ids), true), stated(w.rowSet), ...cells(setM, 'monthly-minutes')],
        ...(advisedM ? [[stated(''), stated(w.rowAdvised), ...cells(advisedM, 'program-advice')]] : [])
      ])
    }
  ]
}

function alikeOf({ plan }: PageContext): readonly Alike[] {
  const all = [...plan.given.values()].filter(
    ({ needM, setM }) => sum(setM) > 0 || (isPresent(needM) && sum(needM) > 0)
  )
  return [...groupBy(all, sameKey).values()].flatMap(alike => {
    const [first] = alike
    return first ? [{ ids: alike.map(one => one.station), given: first }] : []
  })
}

function sameKey({ needM, setM, advisedM }: GivenPlan): string {
  const rounded = (depths: readonly number[]) => depths.map(m => Math.round(m * 1e5))
  return JSON.stringify([isAbsent(needM) ? needM.reason : rounded(needM), rounded(setM), rounded(advisedM ?? [])])
}
