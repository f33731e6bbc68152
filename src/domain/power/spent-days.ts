import { daysInMonth, monthOf, yearOf } from '../../units/date.ts'
import type { IsoDate } from '../../units/date.ts'

/** No set is counted on for longer, whatever is left in it. */
export const LONGEST_DAYS = 7305

/**
 * Whole days from `fitted` until `usableMah` is gone, at so much a day in each month, January first: 396 mAh at 0.9 mAh all year is 440.
 * At most 20 years, which stands for "longer than anything else that sets a date". A set fitted later is never gone earlier.
 */
export function daysUntilSpent(usableMah: number, mahPerDay: readonly number[], fitted: IsoDate): number {
  let [year, month] = [yearOf(fitted), monthOf(fitted)]
  let left = usableMah
  let days = 0
  // The day on which it is fitted is drawn on like any other.
  let rest = daysInMonth(year, month) - Number(fitted.slice(8, 10)) + 1
  while (days < LONGEST_DAYS) {
    const perDay = mahPerDay[month - 1] ?? 0
    const whole = perDay > 0 ? Math.floor(left / perDay + 1e-9) : Infinity
    if (whole < rest) return Math.min(LONGEST_DAYS, days + whole)
    left -= perDay * rest
    days += rest
    month = month === 12 ? 1 : month + 1
    year += month === 1 ? 1 : 0
    rest = daysInMonth(year, month)
  }
  return LONGEST_DAYS
}
