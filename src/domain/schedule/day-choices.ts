import { sortedBy } from '../../base/collections.ts'
import { weekdayOf } from '../../units/date.ts'
import type { EpochDay, IsoDate } from '../../units/date.ts'
import { runsOn } from './days.ts'
import { writeDayRule } from './text.ts'
import type { DayRule } from './program.ts'
import { daysPerWeek, evenWeekdays } from './spacing.ts'

/** The kinds of day rule that a controller can be set to. */
export type DayKind = 'weekdays' | 'every N days' | 'odd' | 'even'

export const DAY_KINDS: readonly DayKind[] = ['weekdays', 'every N days', 'odd', 'even']

const WEEKDAYS = [1, 2, 3, 4, 5, 6, 7] as const
const INTERVALS = [2, 3, 4, 5, 6, 7, 10, 14] as const
/** Of sets that lie as evenly, a few are choice enough. */
const SETS_EACH = 4

export interface DayChoicesOf {
  readonly kinds: readonly DayKind[]
  /** Days on which the program would be in force. */
  readonly days: readonly EpochDay[]
  readonly isAllowed: (day: EpochDay) => boolean
  /** First day of a count of days. */
  readonly from: IsoDate
}

/** Rules that a controller can be set to and that never run on a day that is not allowed, fewest waterings a week first. */
export function dayChoices({ kinds, days, isAllowed, from }: DayChoicesOf): readonly DayRule[] {
  const barred = days.filter(day => !isAllowed(day))
  const known = new Map<string, DayRule>()
  for (const rule of rulesOf(kinds, barred, from))
    if (!barred.some(day => runsOn(rule, day)) && days.some(day => runsOn(rule, day)))
      known.set(writeDayRule(rule), rule)
  return sortedBy(known.values(), daysPerWeek)
}

/** The first day that is not allowed on which a rule runs; undefined where there is none. */
export function firstBarred(rule: DayRule, { days, isAllowed }: Pick<DayChoicesOf, 'days' | 'isAllowed'>) {
  return days.find(day => runsOn(rule, day) && !isAllowed(day))
}

export function canBeSet(rule: DayRule, kinds: readonly DayKind[]): boolean {
  switch (rule.kind) {
    case 'every-day':
      return kinds.includes('weekdays') || kinds.includes('every N days')
    case 'weekdays':
      return kinds.includes('weekdays')
    case 'every-n-days':
      return kinds.includes('every N days')
    case 'odd-dates':
      return kinds.includes('odd')
    case 'even-dates':
      return kinds.includes('even')
  }
}

function rulesOf(kinds: readonly DayKind[], barred: readonly EpochDay[], from: IsoDate): DayRule[] {
  const closed = new Set(barred.map(weekdayOf))
  const open = WEEKDAYS.filter(day => !closed.has(day))
  const weekly = open.flatMap((_, index) =>
    index === 6
      ? []
      : evenWeekdays(index + 1, open)
          .slice(0, SETS_EACH)
          .map<DayRule>(days => ({ kind: 'weekdays', days }))
  )
  const counted = INTERVALS.map<DayRule>(every => ({ kind: 'every-n-days', every, from }))
  const all: DayRule[] = [
    ...weekly,
    ...counted,
    { kind: 'odd-dates', withTurnover: false },
    { kind: 'even-dates' },
    { kind: 'every-day' }
  ]
  return all.filter(rule => canBeSet(rule, kinds))
}
