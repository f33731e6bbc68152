const NAMES = [
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

/** Of a month, 1 to 12, as a sentence names it. */
export const monthName = (month: number): string => NAMES[month - 1] ?? String(month)
