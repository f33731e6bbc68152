import { MONTH_NAMES } from '../../units/date.ts'

/** Of a month, 1 to 12, as a sentence names it. */
export const monthName = (month: number): string => MONTH_NAMES[month - 1] ?? String(month)
