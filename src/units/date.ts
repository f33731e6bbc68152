import { Temporal } from 'temporal-polyfill'

/** A calendar day as text, "2026-05-01". It never becomes an instant, so no time zone can move it. */
export type IsoDate = string & { readonly __isoDate: true }
/** A day of every year, "04-01". */
export type MonthDay = string & { readonly __monthDay: true }
/** Whole days since 1970-01-01: what schedules count in. */
export type EpochDay = number

/** A calendar interval, "12 months", "30 days". Months are clamped at a month's end. */
export interface Interval {
  readonly months: number
  readonly days: number
  readonly text: string
}

export const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const
/** As a sentence names them. */
export const MONTH_NAMES = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December'
] as const
export type Month = (typeof MONTHS)[number]

/** Years of dates on a site (rule of this project): 0226 and 9999 are slips of the hand, and a due date of theirs would be nonsense. */
export const FIRST_YEAR = 1900
export const LAST_YEAR = 2199

/** Undefined unless the text is YYYY-MM-DD, the day exists (2025-02-30 does not) and its year is from FIRST_YEAR to LAST_YEAR. */
export function parseDate(text: string): IsoDate | undefined {
  if (!/^\d{4}-\d{2}-\d{2}$/u.test(text)) return undefined
  const year = Number(text.slice(0, 4))
  if (year < FIRST_YEAR || year > LAST_YEAR) return undefined
  try {
    return Temporal.PlainDate.from(text, { overflow: 'reject' }).toString() as IsoDate
  } catch {
    return undefined
  }
}

/** For dates the program itself writes; throws on an impossible one. */
export function date(text: string): IsoDate {
  const parsed = parseDate(text)
  if (!parsed) throw new Error(`${text} is not a date`)
  return parsed
}

export function parseMonthDay(text: string): MonthDay | undefined {
  return /^\d{2}-\d{2}$/u.test(text) && parseDate(`2024-${text}`) ? (text as MonthDay) : undefined
}

/** "12 months", "1 year", "6 weeks", "90 days". */
export function parseInterval(text: string): Interval | undefined {
  const match = /^(\d+)\s+(day|week|month|year)s?$/u.exec(text.trim())
  if (!match) return undefined
  const count = Number(match[1])
  const unit = match[2]
  if (unit === 'month' || unit === 'year')
    return { months: unit === 'year' ? 12 * count : count, days: 0, text: text.trim() }
  return { months: 0, days: unit === 'week' ? 7 * count : count, text: text.trim() }
}

/** A battery, a test or a warranty lasts no longer, and a calendar has to hold the day it ends (rule of this project). */
const LONGEST = { months: 1_200, days: 36_525 }

export function isBeyondACentury({ months, days }: Pick<Interval, 'months' | 'days'>): boolean {
  return months > LONGEST.months || days > LONGEST.days
}

/** Month arithmetic clamps to the month's end: 2024-02-29 + 12 months = 2025-02-28. */
export function addInterval(from: IsoDate, interval: Pick<Interval, 'months' | 'days'>): IsoDate {
  const { months, days } = interval
  return Temporal.PlainDate.from(from).add({ months, days }, { overflow: 'constrain' }).toString() as IsoDate
}

export function addDays(from: IsoDate, days: number): IsoDate {
  return fromEpochDay(epochDay(from) + days)
}

/** Whole days from one day to another; negative when `to` is earlier. */
export function daysBetween(from: IsoDate, to: IsoDate): number {
  return epochDay(to) - epochDay(from)
}

export function epochDay(day: IsoDate): EpochDay {
  return Date.UTC(yearOf(day), monthOf(day) - 1, dayOf(day)) / 86_400_000
}

const isoDates = new Map<EpochDay, IsoDate>()

/** Known days are kept: schedules ask for those of a few years again and again. */
export function fromEpochDay(day: EpochDay): IsoDate {
  const known = isoDates.get(day)
  if (known !== undefined) return known
  const iso = new Date(day * 86_400_000).toISOString().slice(0, 10) as IsoDate
  isoDates.set(day, iso)
  return iso
}

export const yearOf = (day: IsoDate): number => Number(day.slice(0, 4))
/** 1 to 12. */
export const monthOf = (day: IsoDate): number => Number(day.slice(5, 7))
export const dayOf = (day: IsoDate): number => Number(day.slice(8, 10))

/** 1 is Monday, 7 is Sunday (ISO 8601). */
export function weekdayOf(day: EpochDay): number {
  return ((((day + 3) % 7) + 7) % 7) + 1
}

export function isLeapYear(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
}

const MONTH_LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const

/** `month` from 1 to 12; throws on any other. */
export function daysInMonth(year: number, month: number): number {
  const length = MONTH_LENGTHS[month - 1]
  if (length === undefined) throw new RangeError(`${month} is not a month`)
  return month === 2 && isLeapYear(year) ? 29 : length
}

/** True from `from` to `to` inclusive, across the year's end where `from` is later than `to`. */
export function inSeason(day: MonthDay | string, season: { readonly from: MonthDay; readonly to: MonthDay }): boolean {
  const { from, to } = season
  return from <= to ? day >= from && day <= to : day >= from || day <= to
}
