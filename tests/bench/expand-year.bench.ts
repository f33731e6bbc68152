import { dailyOpenS } from '../../src/domain/schedule/daily-open.ts'
import { daysOfYear } from '../../src/domain/schedule/calendar-days.ts'
import type { ScheduledController } from '../../src/domain/schedule/controller.ts'
import { expandYear, yearRuns } from '../../src/domain/schedule/expand-year.ts'
import { stationMonths } from '../../src/domain/schedule/months.ts'
import { overlaps } from '../../src/domain/schedule/overlaps.ts'
import type { Run } from '../../src/domain/schedule/program.ts'
import { PARTS, barredBy } from '../../src/domain/schedule/rules.ts'
import type { TimedRule } from '../../src/domain/schedule/rules.ts'
import { outside } from '../../src/domain/schedule/windows.ts'
import type { YearRuns } from '../../src/domain/schedule/year-runs.ts'
import { compare } from './compare.ts'

/**
 * Run by `npx tsx tests/bench/expand-year.bench.ts`. A year of 20 stations, 4 programs and 6 starts each is simulated and checked, and set
 * against a bare loop that makes the same runs, one object each, from numbers that are already there. Only ratios say something; times
 * depend on the machine.
 */
const STATIONS = 20
const PROGRAMS = ['A', 'B', 'C', 'D']
const STARTS = [0, 240, 480, 720, 960, 1200]
const CYCLE_S = 120
const YEAR = 2028

const controller: ScheduledController = {
  programs: PROGRAMS.map((id, index) => ({
    id,
    days: { kind: 'every-day' },
    starts: STARTS.map(start => start + 50 * index),
    stations: Array.from({ length: STATIONS }, (_, number) => ({
      number: number + 1,
      runTime: { cycles: 1, cycleS: CYCLE_S, soakS: 0 }
    })),
    monthlyPercent: [0.5, 0.5, 0.5, 1, 1, 1, 1, 1, 1, 0.5, 0.5, 0.5]
  })),
  delayS: 0,
  stepS: 60
}

const rule: TimedRule = {
  windows: [{ from: 1320, to: 360 }],
  days: { kind: 'odd-dates', withTurnover: false },
  when: 'daylight-saving'
}
const facts = { timeZone: 'America/Denver' }

function bareLoop(): Run[] {
  const days = daysOfYear(YEAR)
  const runs = new Array<Run>(days.length * STARTS.length * PROGRAMS.length * STATIONS)
  let at = 0
  for (const { day, month } of days)
    for (const start of STARTS)
      for (let index = 0; index < PROGRAMS.length; index += 1) {
        const programStartS = (start + 50 * index) * 60
        const program = PROGRAMS[index] ?? ''
        const durationS = month >= 4 && month <= 9 ? CYCLE_S : CYCLE_S / 2
        for (let number = 0; number < STATIONS; number += 1) {
          const startS = programStartS + number * durationS
          runs[at++] = { day, program, programStartS, station: number + 1, cycle: 1, startS, durationS }
        }
      }
  return runs
}

function sameRuns(): number {
  const runs = bareLoop()
  if (JSON.stringify(expandYear(controller, YEAR)) !== JSON.stringify(runs))
    throw new Error('the two do not make the same runs')
  return runs.length
}

/** What the plan and the checks of schedules do with a controller. */
function simulatedAndChecked(): number {
  const days: YearRuns = yearRuns(controller, YEAR)
  const found = PARTS.flatMap(part => outside(days, barredBy(rule, part, facts), () => true))
  return overlaps(days).length + found.length + dailyOpenS(days).size + stationMonths(controller, YEAR, {}).length
}

process.stdout.write(`${sameRuns()} runs in a year\n`)
compare('simulated: a year as patterns of days', () => yearRuns(controller, YEAR), bareLoop)
compare('simulated and checked: overlaps, hours, days, caps, months', simulatedAndChecked, bareLoop)
compare('every run with its date', () => expandYear(controller, YEAR), bareLoop)
