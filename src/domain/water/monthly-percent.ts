import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'

export interface MonthlyPercents {
  /** Fractions of the month that wants most, in the order given. */
  readonly shares: readonly number[]
  /** Index of that month; the first where several want as much. */
  readonly peak: number
}

/**
 * Each month's amount as a share of the largest. Amounts are whole months' where the table is to be read as such, or a day's where a program
 * goes by the week: it already runs less often in a short month. Absent where no month wants any, or one is below nothing.
 */
export function monthlyPercents(amounts: readonly number[]): Maybe<MonthlyPercents> {
  if (amounts.some(amount => !(amount >= 0))) return absent('a month cannot want less than nothing')
  const most = Math.max(0, ...amounts)
  if (most === 0) return absent('no month wants any water')
  return { shares: amounts.map(amount => amount / most), peak: amounts.indexOf(most) }
}
