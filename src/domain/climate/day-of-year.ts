import { MONTHS, date, daysBetween, daysInMonth, yearOf } from '../../units/date.ts'
import type { IsoDate, Month } from '../../units/date.ts'

/** A printed schedule serves every year, so months are those of a year of 365 days. */
const COMMON_YEAR = 2025

/** 1 to 365, or 366 at the end of a leap year: FAO paper 56 counts the days as they come. */
export function dayOfYear(day: IsoDate): number {
  return daysBetween(date(`${String(yearOf(day)).padStart(4, '0')}-01-01`), day) + 1
}

/** The 15th of each month, as FAO paper 56 (1998) tabulates radiation in annex table 2.6. Month 1 to 12. */
export function midMonthDay(month: number): number {
  return dayOfYear(date(`${COMMON_YEAR}-${String(month).padStart(2, '0')}-15`))
}

/** Days in a month of a common year, 1 to 12. */
export const commonMonthDays = (month: number): number => daysInMonth(COMMON_YEAR, month)

/** 1 to 12. */
export const monthNumber = (month: Month): number => MONTHS.indexOf(month) + 1
