import { epochDay, weekdayOf } from '../../units/date.ts'
import type { EpochDay } from '../../units/date.ts'
import type { DayRule } from './program.ts'

/**
 * True on the days that a rule names. Odd dates leave out the 31st and 29 February unless the rule says otherwise, since each is
 * followed by another odd date; "every N days" does not run before its first day.
 */
export function runsOn(rule: DayRule, day: EpochDay): boolean {
  switch (rule.kind) {
    case 'every-day':
      return true
    case 'weekdays':
      return rule.days.includes(weekdayOf(day))
    case 'odd-dates':
      return dateOf(day) % 2 === 1 && (rule.withTurnover || !beforeAnOddDate(day))
    case 'even-dates':
      return dateOf(day) % 2 === 0
    case 'every-n-days': {
      const since = day - epochDay(rule.from)
      return since >= 0 && since % rule.every === 0
    }
  }
}

/** The days a rule names from one day to another, both inclusive, in order. */
export function datesOf(rule: DayRule, fromDay: EpochDay, toDay: EpochDay): EpochDay[] {
  const days: EpochDay[] = []
  for (let day = fromDay; day <= toDay; day += 1) if (runsOn(rule, day)) days.push(day)
  return days
}

/** Day of the month, 1 to 31. */
function dateOf(day: EpochDay): number {
  return new Date(day * 86_400_000).getUTCDate()
}

/** The 31st and 29 February: the day after is the 1st. */
function beforeAnOddDate(day: EpochDay): boolean {
  return dateOf(day + 1) === 1
}
