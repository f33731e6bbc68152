import type { Block, TableBlock, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { depthText } from '../depth-text.ts'
import { rangeOf } from '../range.ts'
import { computed, figure, notComputed, notSupplied, stated } from '../values.ts'
import { isAbsent, isPresent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { groupBy, sum } from '../../base/collections.ts'
import type { PhaseSpan } from '../../domain/water/phase-need.ts'
import type { Station } from '../../model/site.ts'
import type { WaterPlan } from '../../plan/plan.ts'
import type { DeliveryPlan, FactorPlan, NeedMonth, NeedPlan } from '../../plan/water-plan.ts'
import { roundedText, show, unitFor } from '../../units/show.ts'

interface Zone {
  readonly station: Station
  readonly water: WaterPlan
}

/** What each zone wants and why: factor, phases, losses, interval; then its need by the month. */
export function needBlocks(zones: readonly Zone[], context: PageContext): Block[] {
  const known = zones.filter(({ water }) => water.need.months.some(month => isPresent(month.needM)))
  return known.length === 0 ? [] : [factsTable(zones, context), monthsTable(known, context)]
}

function factsTable(zones: readonly Zone[], context: PageContext): TableBlock {
  const { words, site } = context
  const w = words.climate
  const withPhases = zones.some(({ water }) => water.need.phases.length > 0)
  return {
    kind: 'table',
    wide: true,
    caption: w.needCaption,
    columns: [
      { label: w.station },
      { label: w.waters },
      { label: w.factor },
      ...(withPhases ? [{ label: w.phase }] : []),
      { label: w.losses },
      { label: w.interval },
      { label: w.yearNeed, align: 'right' }
    ],
    rows: zones.map(({ station, water: { need } }) => [
      stated(station.id, true),
      stated([station.zone === station.id ? '' : station.zone, station.waters].filter(Boolean).join(' · ') || '–'),
      factorValue(need.factor, context),
      ...(withPhases ? [stated(phasesText(need.phases, context))] : []),
      lossesValue(need.delivery, context),
      intervalValue(need.months, context),
      figure(need.yearM, 'depth', site.units, words, 'phase-need')
    ]),
    notes: w.needNotes
  }
}

const factorText = (value: number): string => roundedText(value, 2)

function factorValue(factor: Maybe<FactorPlan>, { words }: PageContext): Value {
  const w = words.climate
  if (isAbsent(factor)) return notComputed(words, factor.reason)
  const { value, parts } = factor
  if (!parts) return stated(w.plantFactor(factorText(value)))
  const [species, density, microclimate] = [parts.species, parts.density, parts.microclimate].map(factorText)
  return computed(w.parts(factorText(value), species ?? '', density ?? '', microclimate ?? ''), 'landscape-coefficient')
}

function phasesText(phases: readonly PhaseSpan[], { words, site }: PageContext): string {
  const w = words.climate
  const lines = phases.map(({ name, from, to, factor, percent }) => {
    const share = percent === undefined ? '' : w.phasePercent(show(percent, 'percent', site.units))
    return w.phaseLine(
      w.phases[name],
      w.span(from, to),
      factor === undefined ? share : w.phaseFactor(factorText(factor))
    )
  })
  return lines.length === 0 ? w.phases.established : lines.join('; ')
}

function lossesValue(plan: Maybe<DeliveryPlan>, { words, site }: PageContext): Value {
  const w = words.climate
  if (isAbsent(plan)) return notComputed(words, plan.reason)
  const { delivery, multiplier, by } = plan
  if (delivery.by === 'nothing') return stated(w.noLosses)
  const share = show(delivery.share, 'percent', site.units)
  const times = multiplier.toFixed(2)
  if (by === 'efficiency') return stated(w.efficiency(share, times))
  return by === 'catch-cans' ? computed(w.cans(share, times), 'uniformity') : stated(w.dulq(share, times))
}

/** Of the month that uses most in a day, which is the shortest of the year. */
function intervalValue(months: readonly NeedMonth[], { words }: PageContext): Value {
  const used = months.map(dailyUseM)
  const index = used.indexOf(Math.max(...used))
  const days = (used[index] ?? 0) > 0 ? months[index]?.intervalDays : undefined
  if (days === undefined) return notSupplied(words)
  if (isAbsent(days)) return notComputed(words, days.reason)
  return computed(words.climate.wholeDays(days, words.boxPage.months[index] ?? ''), 'soil-reservoir')
}

function dailyUseM({ useM, parts }: NeedMonth): number {
  const days = sum(parts.map(one => one.days))
  return isAbsent(useM) || days === 0 ? 0 : useM / days
}

/** Zones whose rows would read alike share one. */
function monthsTable(zones: readonly Zone[], { words, site }: PageContext): TableBlock {
  const w = words.climate
  const rowsOf = ({ months }: NeedPlan) => ({
    need: months.map(({ needM }) => (isAbsent(needM) ? '–' : depthText(needM, site.units))),
    percent: months.map(({ percent }) => (isAbsent(percent) ? '–' : roundedText(percent * 100, 0)))
  })
  const groups = [...groupBy(zones, ({ water }) => JSON.stringify(rowsOf(water.need))).values()]
  return {
    kind: 'table',
    wide: true,
    caption: w.monthsCaption(unitFor('depth', site.units)),
    columns: [
      { label: w.station },
      { label: words.advice.rowWhat },
      ...words.time.months.map(label => ({ label, align: 'right' as const }))
    ],
    rows: groups.flatMap(group => {
      const [zone] = group
      if (!zone) return []
      const { need, percent } = rowsOf(zone.water.need)
      const ids = rangeOf(group.map(one => one.station.id))
      return [
        [stated(ids, true), stated(w.need), ...need.map(text => computed(text, 'phase-need'))],
        [stated(''), stated(w.percent), ...percent.map(text => computed(text, 'monthly-percent'))]
      ]
    }),
    notes: [w.monthsNote]
  }
}
