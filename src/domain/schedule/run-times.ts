import type { Run } from './program.ts'

export const DAY_S = 86_400

/** Seconds from 1970-01-01 00:00 on the controller's clock to the opening of a run. */
export function openingS(run: Run): number {
  return run.day * DAY_S + run.startS
}

/** Seconds from 1970-01-01 00:00 on the controller's clock to the closing of a run. */
export function closingS(run: Run): number {
  return openingS(run) + run.durationS
}
