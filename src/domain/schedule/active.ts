import { inSeason } from '../../units/date.ts'
import type { ScheduledProgram, WateringSeason } from './controller.ts'
import type { CalendarDay } from './calendar-days.ts'

/** Without a season every day is in season. */
export function isInSeason({ monthDay }: CalendarDay, season: WateringSeason | undefined): boolean {
  return season === undefined || inSeason(monthDay, season)
}

/** True within a program's own first and last day, both inclusive. */
export function isInDates({ iso }: CalendarDay, { from, to }: Pick<ScheduledProgram, 'from' | 'to'>): boolean {
  return (from === undefined || iso >= from) && (to === undefined || iso <= to)
}
