import { epochDay, fromEpochDay, isLeapYear, monthOf } from '../../units/date.ts'
import type { EpochDay, IsoDate, MonthDay } from '../../units/date.ts'

/** A day in the forms that rules, seasons and monthly tables ask for. */
export interface CalendarDay {
  readonly day: EpochDay
  readonly iso: IsoDate
  readonly monthDay: MonthDay
  /** 1 to 12. */
  readonly month: number
}

const years = new Map<number, readonly CalendarDay[]>()

/** Every day of a year in order, 365 or 366. Made once a year. */
export function daysOfYear(year: number): readonly CalendarDay[] {
  const known = years.get(year)
  if (known) return known
  const first = epochDay(`${String(year).padStart(4, '0')}-01-01` as IsoDate)
  const days = daysFrom(first, isLeapYear(year) ? 366 : 365)
  years.set(year, days)
  return days
}

/** So many days in order, the first one given. */
export function daysFrom(first: EpochDay, count: number): readonly CalendarDay[] {
  return Array.from({ length: count }, (_, index) => calendarDay(first + index))
}

function calendarDay(day: EpochDay): CalendarDay {
  const iso = fromEpochDay(day)
  return { day, iso, monthDay: iso.slice(5) as MonthDay, month: monthOf(iso) }
}
