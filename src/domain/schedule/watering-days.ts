import { absent } from '../../base/absent.ts'
import { sum } from '../../base/collections.ts'
import { MONTHS } from '../../units/date.ts'
import type { Month } from '../../units/date.ts'
import { roundedText } from '../../units/show.ts'
import { numberOf, optionalText, textOf } from '../inputs.ts'
import type { Calculation, Worked } from '../calculation.ts'
import { runsOn } from './days.ts'
import { daysInMonthByRule } from './days-in-month.ts'
import { parseDayRule, writeDayRule } from './text.ts'
import { daysOfYear } from './calendar-days.ts'
import type { CalendarDay } from './calendar-days.ts'
import type { DayRule } from './program.ts'

export interface WateringDays {
  /** By the rule: days in month × days a week / 7 where it goes by the week. */
  readonly days: number
  /** Dates of the calendar that the rule names. */
  readonly dates: number
}

/** Watering days of a month, 1 to 12, with the arithmetic. Days for which `isActive` is false do not count. */
export function wateringDays(
  rule: DayRule,
  year: number,
  month: number,
  isActive: (day: CalendarDay) => boolean = () => true
): Worked<WateringDays> {
  const inMonth = daysOfYear(year).filter(day => day.month === month)
  const active = inMonth.filter(isActive)
  const dates = active.filter(({ day }) => runsOn(rule, day)).length
  const days = daysInMonthByRule(rule, year, month, isActive)
  const name = `${MONTHS[month - 1]} ${year}`
  const share = `${active.length} of the ${inMonth.length} days of ${name} are in season and within the program's dates.`
  const lead = active.length === inMonth.length ? `${name} has ${inMonth.length} days.` : share
  return { value: { days, dates }, steps: [lead, arithmetic(rule, days)] }
}

function arithmetic(rule: DayRule, days: number): string {
  const count = `${roundedText(days, 2)} watering days`
  switch (rule.kind) {
    case 'every-day':
      return `Every day: ${count}.`
    case 'weekdays':
      return `${writeDayRule(rule)}: days × ${rule.days.length} / 7 = ${count}.`
    case 'every-n-days':
      return `Every ${rule.every} days: days from ${rule.from} on / ${rule.every} = ${count}.`
    case 'odd-dates':
      return rule.withTurnover
        ? `Odd dates, the 31st and 29 February among them: ${count}.`
        : `Odd dates without the 31st and 29 February: ${count}.`
    case 'even-dates':
      return `Even dates: ${count}.`
  }
}

export const wateringDaysCard: Calculation = {
  name: 'watering-days',
  title: 'Watering days',
  does: 'How many days of a month, or of a year, a program waters by its day rule.',
  inputs: {
    rule: {
      kind: { is: 'text' },
      does: 'Day rule: every day, Mon Wed Fri, odd dates, even dates, every 2 days from 2026-04-02'
    },
    year: { kind: { is: 'count' }, does: 'Calendar year' },
    month: { kind: { is: 'choice', of: MONTHS }, does: 'Month', optional: 'the whole year' }
  },
  outputs: {
    days: { does: 'Watering days; by the week, days in month × days a week / 7', unit: 'days' },
    dates: { does: 'Dates in the calendar that the rule names', unit: 'days' }
  },
  sources: ['project-rule', 'cottage-grove-8-1-9', 'common-practice'],
  limits:
    'Rules that go by the week are averaged, so that a month with five Wednesdays does not jump. Leaving out 29 February with odd dates is common practice, no source.',
  run: inputs => {
    const rule = parseDayRule(textOf(inputs, 'rule'))
    if (!rule)
      return absent(
        'The day rule is not understood: write every day, Mon Wed Fri, odd dates or every 2 days from a date.'
      )
    const year = numberOf(inputs, 'year')
    const month = optionalText(inputs, 'month')
    const months = month === undefined ? MONTHS.map((_, index) => index + 1) : [MONTHS.indexOf(month as Month) + 1]
    const worked = months.map(number => wateringDays(rule, year, number))
    const days = sum(worked.map(({ value }) => value.days))
    const dates = sum(worked.map(({ value }) => value.dates))
    return { value: { days, dates }, steps: worked.flatMap(({ steps }) => steps) }
  },
  example: { inputs: { rule: 'Mon Wed Fri', year: '2027', month: 'Jul' }, outputs: { days: 13.285714, dates: 13 } }
}
