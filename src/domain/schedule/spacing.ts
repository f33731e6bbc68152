import type { DayRule } from './program.ts'

const WEEK = [1, 2, 3, 4, 5, 6, 7] as const

/** Watering days a week. Odd and even dates count as every second day. */
export function daysPerWeek(rule: DayRule): number {
  switch (rule.kind) {
    case 'every-day':
      return 7
    case 'weekdays':
      return rule.days.length
    case 'every-n-days':
      return 7 / rule.every
    case 'odd-dates':
    case 'even-dates':
      return 3.5
  }
}

/**
 * Days from one watering to the next where they lie furthest apart. Mon Wed Fri: 3. Dates count as 2: at the end of a month it is a day more,
 * once, which no interval of a controller could avoid.
 */
export function longestGapDays(rule: DayRule): number {
  switch (rule.kind) {
    case 'every-day':
      return 1
    case 'weekdays':
      return Math.max(...rule.days.map((day, index) => (rule.days[index + 1] ?? (rule.days[0] ?? day) + 7) - day))
    case 'every-n-days':
      return rule.every
    case 'odd-dates':
    case 'even-dates':
      return 2
  }
}

/** Weekdays on which a rule may run in some week; all of them where it does not go by the week. */
export function weekdaysOf(rule: DayRule): readonly number[] {
  return rule.kind === 'weekdays' ? rule.days : WEEK
}

/** Sets of `count` weekdays out of those given that lie as evenly over the week as can be, in order of the week. */
export function evenWeekdays(count: number, from: readonly number[]): readonly (readonly number[])[] {
  const sets = subsets(
    [...from].sort((a, b) => a - b),
    count
  )
  const gaps = sets.map(days => longestGapDays({ kind: 'weekdays', days }))
  const least = Math.min(...gaps)
  return sets.filter((_, index) => gaps[index] === least)
}

function subsets(from: readonly number[], count: number): number[][] {
  if (count === 0) return [[]]
  return from.flatMap((first, index) => subsets(from.slice(index + 1), count - 1).map(rest => [first, ...rest]))
}
