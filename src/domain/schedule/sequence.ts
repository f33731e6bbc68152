import { adjustedCycleS } from './adjust.ts'
import type { StationEntry } from './controller.ts'

/** One opening of a valve; `startS` counts from the program's start time, `cycle` from 1. */
export interface TimedCycle {
  readonly station: number
  readonly cycle: number
  readonly startS: number
  readonly durationS: number
}

export interface SequenceSettings {
  /** Fraction. */
  readonly percent: number
  readonly stepS: number
  /** Between any two openings one after another. */
  readonly delayS: number
}

interface Waiting {
  readonly station: number
  readonly cycleS: number
  readonly soakS: number
  left: number
  cycle: number
  readyS: number
}

/**
 * One start of one program, one valve open at a time. Whenever the controller is free it opens the first station, in the order
 * written, that has a cycle left and has rested its soak; where none has, it waits for the one that is ready soonest. So a
 * station's soak is filled by the stations after it. A station whose cycle comes to nothing does not run.
 */
export function sequenceProgram(stations: readonly StationEntry[], settings: SequenceSettings): TimedCycle[] {
  const waiting = stations.map(entry => asWaiting(entry, settings)).filter(({ cycleS }) => cycleS > 0)
  const timed: TimedCycle[] = []
  let freeS = 0
  for (let next = nextReady(waiting, freeS); next; next = nextReady(waiting, freeS)) {
    const startS = Math.max(freeS, next.readyS)
    next.left -= 1
    next.cycle += 1
    next.readyS = startS + next.cycleS + next.soakS
    freeS = startS + next.cycleS + settings.delayS
    timed.push({ station: next.station, cycle: next.cycle, startS, durationS: next.cycleS })
  }
  return timed
}

/** When the last valve of a sequence shuts, from the program's start; 0 where nothing runs. */
export function sequenceEndS(sequence: readonly TimedCycle[]): number {
  const last = sequence.at(-1)
  return last ? last.startS + last.durationS : 0
}

function asWaiting({ number, runTime }: StationEntry, { percent, stepS }: SequenceSettings): Waiting {
  const cycleS = adjustedCycleS(runTime.cycleS, percent, stepS)
  return { station: number, cycleS, soakS: runTime.soakS, left: runTime.cycles, cycle: 0, readyS: 0 }
}

function nextReady(waiting: readonly Waiting[], freeS: number): Waiting | undefined {
  let soonest: Waiting | undefined
  for (const station of waiting) {
    if (station.left === 0) continue
    if (station.readyS <= freeS) return station
    if (!soonest || station.readyS < soonest.readyS) soonest = station
  }
  return soonest
}
