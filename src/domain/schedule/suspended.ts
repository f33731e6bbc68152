import type { IsoDate } from '../../units/date.ts'
import type { CalendarDay } from './calendar-days.ts'

/** Days on which a controller is set not to start, both inclusive. */
export interface SuspendedDays {
  readonly from: IsoDate
  readonly to: IsoDate
}

/** True on a day of one of the suspensions. A run that started the evening before goes on past midnight. */
export function isSuspended(
  { iso }: Pick<CalendarDay, 'iso'>,
  suspensions: readonly SuspendedDays[] | undefined
): boolean {
  return suspensions !== undefined && suspensions.some(({ from, to }) => iso >= from && iso <= to)
}
