import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { addDays, date, parseMonthDay, yearOf } from '../../units/date.ts'
import type { IsoDate, MonthDay } from '../../units/date.ts'
import type { Calculation, OutputValue, Worked } from '../calculation.ts'
import { optionalText } from '../inputs.ts'

/** What is known of the first freeze of the cold half of the year. `none` where it never freezes. */
export interface FreezeFacts {
  /** By this day one year in ten has frozen. */
  readonly tenPercent?: MonthDay
  /** By this day every second year has. */
  readonly median?: MonthDay
  readonly none?: boolean
}

/** Days before the median first freeze (rule of this project). */
export const DAYS_BEFORE_MEDIAN = 14

/** Days are counted in a year of 365 days, 29 February as the 28th: the earlier, which is the safe side. */
const COMMON_YEAR = 2025

/**
 * The day of every year by which the lines must be empty: the 10 % first freeze where it is known, else 14 days before the median. "none" where
 * it does not freeze. Counts across the year's end, as south of the equator nothing else is different. Absent where nothing is known, or "none"
 * stands beside a day.
 */
export function winterizeBy({ tenPercent, median, none }: FreezeFacts): Maybe<Worked<MonthDay | 'none'>> {
  if (none) {
    if (tenPercent ?? median) return absent('a day of first freeze is given, and that it does not freeze')
    return { value: 'none', steps: ['it does not freeze here: none'] }
  }
  if (tenPercent !== undefined)
    return { value: tenPercent, steps: [`one year in ten has frozen by ${tenPercent}: ${tenPercent}`] }
  if (median === undefined) return absent('no day of first freeze is known')
  const value = addDays(inCommonYear(median), -DAYS_BEFORE_MEDIAN).slice(5) as MonthDay
  return { value, steps: [`every second year has frozen by ${median}; less ${DAYS_BEFORE_MEDIAN} days: ${value}`] }
}

/** The first such day on or after a date. */
export function nextMonthDay(day: MonthDay, on: IsoDate): IsoDate {
  const common = inCommonYear(day).slice(5)
  const inYear = (year: number) => date(`${String(year).padStart(4, '0')}-${common}`)
  const thisYear = inYear(yearOf(on))
  return thisYear >= on ? thisYear : inYear(yearOf(on) + 1)
}

function inCommonYear(day: MonthDay): IsoDate {
  return date(`${COMMON_YEAR}-${day === '02-29' ? '02-28' : day}`)
}

export const winterizeByCard: Calculation = {
  name: 'winterize-by',
  title: 'The day to winterize by',
  does: 'Gives the day of the year by which the lines must be empty, from the record of first freezes.',
  inputs: {
    'ten-percent': {
      kind: { is: 'text' },
      does: 'month-day by which one year in ten has had its first freeze: 10-14',
      optional: 'median'
    },
    median: { kind: { is: 'text' }, does: 'month-day by which every second year has', optional: 'freeze none' },
    freeze: { kind: { is: 'choice', of: ['none'] }, does: 'none, where it does not freeze', optional: 'it freezes' },
    from: { kind: { is: 'date' }, does: 'a day to count from', optional: 'no date is given, only the month-day' }
  },
  outputs: {
    by: { does: 'month-day, or "none"', unit: '' },
    date: { does: 'the next such day, where a day to count from is given', unit: '' }
  },
  sources: ['project-rule'],
  limits:
    'From the record of past years: where frost is forecast earlier, that day holds. 29 February counts as the 28th.',
  run: inputs => {
    const texts = { 'ten-percent': optionalText(inputs, 'ten-percent'), median: optionalText(inputs, 'median') }
    const unread = Object.entries(texts).find(([, text]) => text !== undefined && !parseMonthDay(text))
    if (unread) return absent(`${unread[0]} is a month and a day of the calendar, like 10-14`)
    const worked = winterizeBy({
      ...(texts['ten-percent'] === undefined ? {} : { tenPercent: texts['ten-percent'] as MonthDay }),
      ...(texts.median === undefined ? {} : { median: texts.median as MonthDay }),
      none: optionalText(inputs, 'freeze') === 'none'
    })
    if (isAbsent(worked)) return worked
    const from = optionalText(inputs, 'from') as IsoDate | undefined
    const value: Record<string, OutputValue> = { by: worked.value }
    if (from === undefined || worked.value === 'none') return { value, steps: worked.steps }
    const next = nextMonthDay(worked.value, from)
    return { value: { ...value, date: next }, steps: [...worked.steps, `first on or after ${from}: ${next}`] }
  },
  example: { inputs: { median: '10-28', from: '2026-05-01' }, outputs: { by: '10-14', date: '2026-10-14' } }
}
