import type { DayRule } from '../domain/schedule/program.ts'
import { writeDayRule } from '../domain/schedule/text.ts'

/** "Mon Wed Fri", "every 2 days from 2026-04-02": the same words that a site file uses. */
export function daysText(rule: DayRule): string {
  return writeDayRule(rule)
}
