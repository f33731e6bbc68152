import type { DayPattern, YearRuns } from '../schedule/year-runs.ts'
import { fromEpochDay, monthOf } from '../../units/date.ts'

/**
 * Pulses of each month of a simulated year, January first: two for each opening, and two more at each start of a program for each valve or
 * relay that follows the program (`perStart`: master valve, pump relay). A run that opens after midnight counts with the day it started on.
 */
export function pulsesByMonth(days: YearRuns, perStart: number): readonly number[] {
  const months = new Array<number>(12).fill(0)
  const known = new Map<DayPattern, number>()
  for (const { day, pattern } of days) {
    const pulses = known.get(pattern) ?? patternPulses(pattern, perStart)
    known.set(pattern, pulses)
    const month = monthOf(fromEpochDay(day)) - 1
    months[month] = (months[month] ?? 0) + pulses
  }
  return months
}

function patternPulses(pattern: DayPattern, perStart: number): number {
  const starts = new Set(pattern.map(({ program, programStartS }) => `${program} ${programStartS}`))
  return 2 * (pattern.length + perStart * starts.size)
}
