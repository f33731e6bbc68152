import { daysInMonth } from '../units/date.ts'

/** Days of the months of a common year, January first: what a simulated year is spread over. */
export const COMMON_MONTH_DAYS: readonly number[] = Array.from({ length: 12 }, (_, index) =>
  daysInMonth(2025, index + 1)
)
