import type { UnitSystem } from './show.ts'

/** Minutes after midnight, 0 to 1439, on a wall clock. */
export type ClockMinutes = number

/** A stretch of the clock; `to` at or before `from` means that it runs past midnight. */
export interface Window {
  readonly from: ClockMinutes
  readonly to: ClockMinutes
}

export const DAY_MINUTES = 1440

/** "22:00", "7:05", "10:00 pm", "12:10 am". Undefined otherwise. 24:00 is midnight at the end of a day and is written 00:00. */
export function parseClock(text: string): ClockMinutes | undefined {
  const match = /^(\d{1,2}):(\d{2})\s*(am|pm|a\.m\.|p\.m\.)?$/iu.exec(text.trim())
  if (!match) return undefined
  const [hour, minute] = [Number(match[1]), Number(match[2])]
  if (minute > 59) return undefined
  const half = match[3]?.toLowerCase().replaceAll('.', '')
  if (!half) return hour > 23 ? undefined : hour * 60 + minute
  if (hour < 1 || hour > 12) return undefined
  return ((hour % 12) + (half === 'pm' ? 12 : 0)) * 60 + minute
}

/** "23:00-05:00", "10:00 pm - 6:00 am". */
export function parseWindow(text: string): Window | undefined {
  const ends = text.split(/[-–]/u)
  if (ends.length !== 2) return undefined
  const [from, to] = [parseClock(ends[0] ?? ''), parseClock(ends[1] ?? '')]
  return from === undefined || to === undefined ? undefined : { from, to }
}

/** 24-hour with metric units, 12-hour with US units. Seconds past a whole minute are dropped. */
export function showClock(minutes: ClockMinutes, system: UnitSystem): string {
  const whole = Math.floor(((minutes % DAY_MINUTES) + DAY_MINUTES) % DAY_MINUTES)
  const [hour, minute] = [Math.floor(whole / 60), String(whole % 60).padStart(2, '0')]
  if (system === 'metric') return `${String(hour).padStart(2, '0')}:${minute}`
  return `${hour % 12 === 0 ? 12 : hour % 12}:${minute}\u00a0${hour < 12 ? 'am' : 'pm'}`
}

export function showWindow(window: Window, system: UnitSystem): string {
  return `${showClock(window.from, system)}–${showClock(window.to, system)}`
}

/** Length in minutes; a window that starts and ends at the same time lasts the whole day. */
export function windowLength({ from, to }: Window): number {
  return to > from ? to - from : to - from + DAY_MINUTES
}
