import type { DayRule, RunTime } from '../domain/schedule/program.ts'
import { writeRunTime } from '../domain/schedule/text.ts'
import type { Words } from '../words/words.ts'

/** "Mon Wed Fri", "every 2 days from 2026-04-02": in English the same words that a site file uses. */
export function daysText(rule: DayRule, { time }: Words): string {
  switch (rule.kind) {
    case 'every-day':
      return time.everyDay
    case 'weekdays':
      return rule.days.map(day => time.weekdays[day - 1]).join(' ')
    case 'odd-dates':
      return rule.withTurnover ? time.oddDatesWithTurnover : time.oddDates
    case 'even-dates':
      return time.evenDates
    case 'every-n-days':
      return time.everyDays(rule.every, rule.from)
  }
}

/** "2 x 6 min soak 30 min". */
export function runTimeText(runTime: RunTime, { time }: Words): string {
  const cycles = writeRunTime({ ...runTime, soakS: 0 })
  if (runTime.soakS === 0) return cycles
  return time.soak(cycles, writeRunTime({ cycles: 1, cycleS: runTime.soakS, soakS: 0 }))
}
