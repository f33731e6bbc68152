import { date } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'

/** The day on this machine's calendar: the one place that asks a clock for it. Everything else is told the day. */
export function today(): IsoDate {
  const now = new Date()
  const [year, month, day] = [now.getFullYear(), now.getMonth() + 1, now.getDate()]
  return date([String(year).padStart(4, '0'), String(month).padStart(2, '0'), String(day).padStart(2, '0')].join('-'))
}

/** Milliseconds since it was started, for telling how long something took. */
export function stopwatch(): () => number {
  const start = performance.now()
  return () => performance.now() - start
}
