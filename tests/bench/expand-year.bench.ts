import { daysOfYear } from '../../src/domain/schedule/calendar-days.ts'
import type { ScheduledController } from '../../src/domain/schedule/controller.ts'
import { expandYear } from '../../src/domain/schedule/expand-year.ts'
import type { Run } from '../../src/domain/schedule/program.ts'

/**
 * Run by `npx tsx tests/bench/expand-year.bench.ts`. A year of 20 stations, 4 programs and 6 starts is expanded, and set against a
 * bare loop that makes the same runs from numbers that are already there. Only the ratio says something; times depend on the machine.
 */
const STATIONS = 20
const PROGRAMS = ['A', 'B', 'C', 'D']
const STARTS = [0, 240, 480, 720, 960, 1200]
const CYCLE_S = 120
const ROUNDS = 31
const YEAR = 2028

const controller: ScheduledController = {
  programs: PROGRAMS.map((id, index) => ({
    id,
    days: { kind: 'every-day' },
    starts: STARTS.map(start => start + 50 * index),
    stations: Array.from({ length: STATIONS }, (_, number) => ({
      number: number + 1,
      runTime: { cycles: 1, cycleS: CYCLE_S, soakS: 0 }
    }))
  })),
  delayS: 0,
  stepS: 60
}

function bareLoop(): Run[] {
  const days = daysOfYear(YEAR)
  const runs = new Array<Run>(days.length * STARTS.length * PROGRAMS.length * STATIONS)
  let at = 0
  for (const { day } of days)
    for (const start of STARTS)
      for (let index = 0; index < PROGRAMS.length; index += 1) {
        const programStartS = (start + 50 * index) * 60
        const program = PROGRAMS[index] ?? ''
        for (let number = 0; number < STATIONS; number += 1) {
          const startS = programStartS + number * CYCLE_S
          runs[at++] = { day, program, programStartS, station: number + 1, cycle: 1, startS, durationS: CYCLE_S }
        }
      }
  return runs
}

const milliseconds = (work: () => Run[]) => {
  const began = performance.now()
  work()
  return performance.now() - began
}

const median = (times: readonly number[]) => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0

const expanded = expandYear(controller, YEAR)
if (JSON.stringify(expanded) !== JSON.stringify(bareLoop())) throw new Error('the two do not make the same runs')

const ours: number[] = []
const bare: number[] = []
for (let round = 0; round < ROUNDS; round += 1) {
  bare.push(milliseconds(bareLoop))
  ours.push(milliseconds(() => expandYear(controller, YEAR)))
}
const ratio = median(ours) / median(bare)
const line = `${expanded.length} runs: ${ratio.toFixed(2)} times a bare loop (medians ${median(ours).toFixed(1)} and ${median(bare).toFixed(1)} ms of ${ROUNDS} rounds)`
process.stdout.write(`${line}\n`)
