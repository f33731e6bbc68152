import type { DayRule } from '../schedule/program.ts'

/** What a program sends to the valves: starts a day, cycles for each start over all its stations, and whether a master valve or a pump follows it. */
export interface PulseProgram {
  readonly days: DayRule
  readonly starts: number
  /** Over all stations; a station with two cycles and a soak counts two. */
  readonly cycles: number
  readonly masterValve: boolean
  /** True where a relay for the pump follows it too. */
  readonly pumpRelay?: boolean
}

/** Odd dates of a common year, without the 31sts; with them; even dates. */
const ODD_DATES = 179
const ODD_DATES_WITH_TURNOVER = 186
const EVEN_DATES = 179
const COMMON_YEAR = 365

/** Part of all days on which a rule waters, over a common year: 3 weekdays are 3/7. */
export function shareOfDays(rule: DayRule): number {
  switch (rule.kind) {
    case 'every-day':
      return 1
    case 'weekdays':
      return new Set(rule.days).size / 7
    case 'every-n-days':
      return 1 / rule.every
    case 'odd-dates':
      return (rule.withTurnover ? ODD_DATES_WITH_TURNOVER : ODD_DATES) / COMMON_YEAR
    case 'even-dates':
      return EVEN_DATES / COMMON_YEAR
  }
}

/** Pulses on a day it waters: one to open and one to close for each cycle, and for master valve and pump relay at each start. */
export function pulsesOnWateringDay({ starts, cycles, masterValve, pumpRelay }: PulseProgram): number {
  return cycles === 0 ? 0 : 2 * starts * (cycles + (masterValve ? 1 : 0) + (pumpRelay ? 1 : 0))
}

/** Pulses a day as programmed, averaged over days with and without water. The season is not counted on: a set must last without it. */
export function pulsesPerDay(programs: readonly PulseProgram[]): number {
  return programs.reduce((sum, program) => sum + pulsesOnWateringDay(program) * shareOfDays(program.days), 0)
}
