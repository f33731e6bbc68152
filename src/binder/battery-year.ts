import { sum } from '../base/collections.ts'
import { isAbsent } from '../base/absent.ts'
import type { PageContext } from './context.ts'
import { dueReason } from './due-reason.ts'
import type { Block } from './blocks.ts'
import type { BatteryGroup } from './battery-groups.ts'
import { visitName } from './battery-visit.ts'
import type { BatteryYearFigure, BatteryYearMark } from './figures/battery-year.ts'
import type { Season } from '../model/site.ts'
import { addDays, date, daysBetween, daysInMonth, inSeason, monthOf, yearOf } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { roundedText } from '../units/show.ts'

/** A set that lasts longer is drawn for its first three years. */
const MOST_MONTHS = 36

/** The year of one set as a figure; none where no due date is known, or nothing lies between the two days. */
export function batteryYear(group: BatteryGroup, context: PageContext): Block[] {
  const { fitted, dueOn, dateCode, doAt, pulsesByMonth = [] } = group.battery
  if (fitted === undefined || isAbsent(dueOn) || dueOn <= fitted) return []
  const { words, site } = context
  const w = words.power.year
  const months = monthsBetween(fitted, dueOn)
  const first = months[0] ?? monthOn(fitted)
  const last = months.at(-1) ?? first
  const end = addDays(last.from, last.days)
  const at = (day: IsoDate) => daysBetween(first.from, day) / daysBetween(first.from, end)
  const pulses = months.map(month => pulsesIn(month, pulsesByMonth, fitted, dueOn))
  // A visit of its own falls on the due date, and the next visit has no day.
  const visit =
    doAt && doAt.visit !== 'next' && doAt.visit !== 'own' ? { name: visitName(doAt, words), on: doAt.on } : undefined
  const marks: (BatteryYearMark & { readonly on: IsoDate })[] = [
    { kind: 'fitted', on: fitted, at: at(fitted), label: w.fitted(fitted) },
    { kind: 'today', on: context.plan.on, at: at(context.plan.on), label: w.today },
    ...(visit
      ? [{ kind: 'visit', on: visit.on, at: at(visit.on), label: w.visit(visit.name, visit.on) } as const]
      : []),
    ...(dateCode ? [{ kind: 'date-code', on: dateCode, at: at(dateCode), label: w.dateCode(dateCode) } as const] : []),
    { kind: 'due', on: dueOn, at: at(dueOn), label: w.due(dueOn) }
  ]
  const figure: BatteryYearFigure = {
    figure: 'battery-year',
    title: w.alt(group.ids, fitted, dueOn, roundedText(sum(pulses), 0), visit?.name),
    unit: w.unit,
    months: months.map((month, index) => ({
      label: words.time.months[monthOf(month.from) - 1] ?? '',
      ...(index === 0 || monthOf(month.from) === 1 ? { year: month.from.slice(0, 4) } : {}),
      pulses: pulses[index] ?? 0,
      text: roundedText(pulses[index] ?? 0, 0)
    })),
    seasons: seasonSpans(site.season, first.from, end, at),
    ...(site.season ? { seasonLabel: w.season } : {}),
    marks: marks
      .filter(mark => mark.on >= first.from && mark.on <= end)
      .map(({ kind, at: share, label }) => ({ kind, at: share, label }))
  }
  return [{ kind: 'figure', figure, caption: w.caption(group.ids, dueReason(group.battery, words), dateCode) }]
}

interface WholeMonth {
  readonly from: IsoDate
  readonly days: number
}

function monthOn(day: IsoDate): WholeMonth {
  return { from: date(`${day.slice(0, 8)}01`), days: daysInMonth(yearOf(day), monthOf(day)) }
}

function monthsBetween(fitted: IsoDate, dueOn: IsoDate): readonly WholeMonth[] {
  const months = [monthOn(fitted)]
  for (let next = following(months); next.from <= dueOn && months.length < MOST_MONTHS; next = following(months))
    months.push(next)
  return months
}

function following(months: readonly WholeMonth[]): WholeMonth {
  const last = months.at(-1)
  if (!last) throw new Error('no month to follow')
  return monthOn(addDays(last.from, last.days))
}

/** Of the simulated month, the part that lies between the two days. */
function pulsesIn({ from, days }: WholeMonth, byMonth: readonly number[], fitted: IsoDate, dueOn: IsoDate): number {
  const [start, end] = [from > fitted ? from : fitted, addDays(from, days) < dueOn ? addDays(from, days) : dueOn]
  return ((byMonth[monthOf(from) - 1] ?? 0) * Math.max(0, daysBetween(start, end))) / days
}

/** Stretches of days in season, as shares. */
function seasonSpans(
  season: Season | undefined,
  from: IsoDate,
  end: IsoDate,
  at: (day: IsoDate) => number
): BatteryYearFigure['seasons'] {
  if (!season) return []
  const spans: { from: number; to: number }[] = []
  let begun: IsoDate | undefined
  for (let day = from; day <= end; day = addDays(day, 1)) {
    const inside = day < end && inSeason(day.slice(5), season)
    if (inside) begun ??= day
    else if (begun !== undefined) {
      spans.push({ from: at(begun), to: at(day) })
      begun = undefined
    }
  }
  return spans
}
