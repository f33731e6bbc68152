import { epochDay } from '../../units/date.ts'
import { runsOn } from './days.ts'
import { daysOfYear } from './calendar-days.ts'
import type { CalendarDay } from './calendar-days.ts'
import type { DayRule } from './program.ts'

/**
 * Watering days of a month, 1 to 12. Rules that go by the week give days in month × days a week / 7, so that a month with five
 * Wednesdays does not jump; odd and even dates give their exact count. `isActive` leaves out days out of season or outside a
 * program's dates: a month that is partly active counts its share. Mon Wed Fri in a month of 31 days: 13.29.
 */
export function daysInMonthByRule(
  rule: DayRule,
  year: number,
  month: number,
  isActive: (day: CalendarDay) => boolean = () => true
): number {
  return daysByRule(
    rule,
    daysOfYear(year).filter(day => day.month === month && isActive(day))
  )
}

/** Watering days among the days of a month that count, by the same rules. */
export function daysByRule(rule: DayRule, active: readonly CalendarDay[]): number {
  switch (rule.kind) {
    case 'every-day':
      return active.length
    case 'weekdays':
      return (active.length * rule.days.length) / 7
    case 'every-n-days':
      return active.filter(({ day }) => day >= epochDay(rule.from)).length / rule.every
    case 'odd-dates':
    case 'even-dates':
      return active.filter(({ day }) => runsOn(rule, day)).length
  }
}
