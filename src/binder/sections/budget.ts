import type { Block, Section, TableBlock, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { computed, notComputed, notSupplied, stated, statedQuantity } from '../values.ts'
import { isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { atMost } from '../../domain/within.ts'
import type { BudgetZone, MeterPeriod } from '../../plan/budget-plan.ts'
import { yearOf } from '../../units/date.ts'
import { fromSi } from '../../units/quantity.ts'
import { roundedText, show, showNumber, unitFor } from '../../units/show.ts'

/** Allowance, estimate, programs and meter, of the year and month by month. */
export function budgetSection(context: PageContext): Section {
  const { site, plan, words } = context
  const w = words.budget
  const supplied = site.budget !== undefined || plan.budget.periods.length > 0
  const hasWater = plan.budget.months.some(({ programmedM3 }) => programmedM3 > 0)
  const blocks: Block[] = [
    // Before the words and the facts, since it stands beside them.
    ...(hasWater ? [monthsFigure(context)] : []),
    { kind: 'paragraph', text: w.lead },
    yearFacts(context),
    ...(hasWater ? [monthsTable(context)] : []),
    ...(site.budget?.form === 'ordinance 2015' ? [zonesTable(context)] : []),
    ...(plan.budget.periods.length > 0 ? [meterTable(context)] : [])
  ]
  return {
    id: 'budget',
    title: w.title,
    newPage: supplied || hasWater,
    notSupplied: !supplied,
    blocks: supplied || hasWater ? blocks : [{ kind: 'not-supplied', text: `${w.none}: ${words.binder.notSupplied}` }]
  }
}

function yearFacts({ site, plan, words }: PageContext): Block {
  const w = words.budget
  const { budget } = site
  const { etoM, areaM2, specialAreaM2, adjustment, allowanceM3, estimatedM3, programmedM3 } = plan.budget
  const isOrdinance = budget?.form === 'ordinance 2015'
  const rows: { readonly label: string; readonly value: Value }[] = [
    { label: w.form, value: budget ? stated(w.forms[budget.form]) : notSupplied(words) },
    ...(budget?.authority === undefined ? [] : [{ label: w.authority, value: stated(budget.authority) }]),
    ...(isOrdinance
      ? [
          { label: w.et, value: maybe(etoM, m => show(m, 'depth', site.units), words, 'water-budget') },
          { label: w.area, value: maybe(areaM2, m2 => show(m2, 'area', site.units), words, 'water-budget') },
          { label: w.specialArea, value: computed(show(specialAreaM2, 'area', site.units), 'water-budget') },
          {
            label: w.adjustment,
            value: adjustment === undefined ? notSupplied(words) : stated(roundedText(adjustment, 2))
          }
        ]
      : []),
    {
      label: w.allowance,
      value: !budget
        ? notSupplied(words)
        : budget.form === 'annual volume'
          ? statedQuantity(budget.annual, words)
          : maybe(allowanceM3, volumeText(site.units), words, 'water-budget')
    },
    {
      label: w.estimated,
      value: judged(
        estimatedM3,
        allowanceM3,
        maybe(estimatedM3, volumeText(site.units), words, isOrdinance ? 'water-budget' : 'phase-need'),
        w
      )
    },
    {
      label: w.programmed,
      value: judged(programmedM3, allowanceM3, computed(volumeText(site.units)(programmedM3), 'monthly-minutes'), w)
    },
    ...(plan.budget.periods.length > 0 ? [] : [{ label: w.meter, value: notSupplied(words) }])
  ]
  return { kind: 'facts', caption: w.facts, rows }
}

const volumeText =
  (units: PageContext['site']['units']) =>
  (m3: number): string =>
    show(m3, 'volume', units)

function maybe(amount: Maybe<number>, text: (si: number) => string, words: PageContext['words'], note?: string): Value {
  return isAbsent(amount) ? notComputed(words, amount.reason) : computed(text(amount), note)
}

function judged(used: Maybe<number>, allowance: Maybe<number>, value: Value, w: PageContext['words']['budget']): Value {
  if (isAbsent(used) || isAbsent(allowance)) return value
  const within = atMost(used, allowance)
  return { ...value, text: `${value.text} ${within ? w.within : w.over}`, state: within ? 'good' : 'bad' }
}

function monthsTable({ site, plan, words }: PageContext): TableBlock {
  const w = words.budget
  const right = 'right' as const
  const unit = unitFor('volume', site.units)
  const number = (m3: Maybe<number>, calculation: string): Value =>
    isAbsent(m3) ? stated('–') : computed(showNumber(m3, 'volume', site.units), calculation)
  const { months, allowanceM3, estimatedM3, programmedM3, flowNotStated } = plan.budget
  const row = (name: string, allowed: Maybe<number>, estimated: Maybe<number>, programmed: number): Value[] => [
    stated(name),
    number(allowed, 'water-budget'),
    number(estimated, site.budget?.form === 'ordinance 2015' ? 'water-budget' : 'phase-need'),
    number(programmed, 'monthly-minutes')
  ]
  const notes = w.monthsNotes
  return {
    kind: 'table',
    caption: w.months(yearOf(plan.on)),
    columns: [
      { label: w.month },
      { label: w.allowance, unit, align: right },
      { label: w.estimated, unit, align: right },
      { label: w.programmed, unit, align: right }
    ],
    rows: [
      ...months.map((month, index) =>
        row(words.boxPage.months[index] ?? '', month.allowanceM3, month.estimatedM3, month.programmedM3)
      ),
      row(w.yearRow, allowanceM3, estimatedM3, programmedM3)
    ],
    notes: [
      ...(isAbsent(allowanceM3) ? [] : [notes.shares]),
      site.budget?.form === 'ordinance 2015' ? notes.ordinance : notes.need,
      ...(flowNotStated.length > 0 ? [notes.flows(flowNotStated.join(', '))] : [])
    ]
  }
}

function monthsFigure({ site, plan, words }: PageContext): Block {
  const w = words.budget
  const unit = unitFor('volume', site.units)
  const amount = (m3: number): number => fromSi(m3, unit, 'volume')
  const { months } = plan.budget
  const most = Math.max(...months.flatMap(one => [one.programmedM3, isAbsent(one.estimatedM3) ? 0 : one.estimatedM3]))
  return {
    kind: 'figure',
    figure: {
      figure: 'need-given',
      title: w.figureTitle,
      unit,
      needLabel: w.estimated,
      givenLabel: w.programmed,
      months: months.map(({ estimatedM3, programmedM3 }, index) => ({
        label: words.time.months[index] ?? '',
        given: amount(programmedM3),
        ...(isAbsent(estimatedM3) ? {} : { need: amount(estimatedM3) })
      })),
      top: { value: amount(most), label: show(most, 'volume', site.units) }
    },
    caption: w.figureCaption
  }
}

function zonesTable({ site, plan, words }: PageContext): TableBlock {
  const w = words.budget
  const right = 'right' as const
  const zoneOf = (id: string) => site.stations.find(one => one.id === id)
  return {
    kind: 'table',
    caption: w.zones,
    columns: [
      { label: w.station },
      { label: w.waters },
      ...[w.factor, w.efficiency, w.zoneArea, w.use].map(label => ({ label, align: right }))
    ],
    rows: plan.budget.zones.map(zone => {
      const station = zoneOf(zone.station)
      return [
        stated(zone.station, true),
        stated(
          [station?.zone === zone.station ? '' : station?.zone, station?.waters].filter(Boolean).join(' · ') || '–'
        ),
        ...zoneFigures(zone, { site, words }),
        maybe(zone.areaM2, m2 => show(m2, 'area', site.units), words, 'water-budget'),
        maybe(zone.useM3, volumeText(site.units), words, 'water-budget')
      ]
    }),
    notes: [w.efficiencyNote]
  }
}

function zoneFigures(zone: BudgetZone, { words }: Pick<PageContext, 'site' | 'words'>): Value[] {
  if (zone.isSpecial) return [stated(words.budget.special), stated('–')]
  const efficiency = `${roundedText(zone.efficiency * 100, 0)}\u00a0%`
  return [
    isAbsent(zone.factor) ? notSupplied(words) : stated(roundedText(zone.factor, 2)),
    zone.efficiencyBy === 'record' ? stated(efficiency) : { text: efficiency, standing: 'default' }
  ]
}

function meterTable({ site, plan, words }: PageContext): TableBlock {
  const w = words.budget
  const right = 'right' as const
  return {
    kind: 'table',
    caption: w.meter,
    columns: [
      { label: w.supply },
      { label: w.from },
      { label: w.to },
      ...[w.metered, w.programmed, w.ofProgram, w.allowed].map(label => ({ label, align: right }))
    ],
    rows: plan.budget.periods.map(period => [
      stated(period.supply, true),
      stated(period.from, true),
      stated(period.to, true),
      meteredValue(period, site.units, words),
      computed(show(period.programmedM3, 'volume', site.units), 'monthly-minutes'),
      ofProgram(period),
      isAbsent(period.allowanceM3)
        ? stated('–')
        : computed(show(period.allowanceM3, 'volume', site.units), 'water-budget')
    ]),
    notes: w.meterNotes
  }
}

function meteredValue(
  { meteredM3 }: MeterPeriod,
  units: PageContext['site']['units'],
  words: PageContext['words']
): Value {
  return isAbsent(meteredM3)
    ? notComputed(words, words.budget.backward)
    : { text: show(meteredM3, 'volume', units), standing: 'measured' }
}

function ofProgram({ meteredM3, programmedM3 }: MeterPeriod): Value {
  if (isAbsent(meteredM3) || !(programmedM3 > 0)) return stated('–')
  return computed(`${roundedText((meteredM3 / programmedM3) * 100, 0)}\u00a0%`, 'monthly-minutes')
}
