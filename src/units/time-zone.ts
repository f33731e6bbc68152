import { Temporal } from 'temporal-polyfill'
import { fromEpochDay } from './date.ts'
import type { EpochDay } from './date.ts'

const knownZones = new Map<string, Map<EpochDay, number>>()
const knownYears = new Map<string, number>()

/**
 * Minutes by which the legal clock of a place is ahead of its standard time at noon of a day: 60 in summer where daylight saving is kept,
 * 0 otherwise. Standard time is the least offset of the year, which holds in both hemispheres. `timeZone` is an IANA name.
 */
export function daylightMinutes(day: EpochDay, timeZone: string): number {
  const days = knownZones.get(timeZone) ?? new Map<EpochDay, number>()
  knownZones.set(timeZone, days)
  const known = days.get(day)
  if (known !== undefined) return known
  const date = Temporal.PlainDate.from(fromEpochDay(day))
  const minutes = offsetMinutes(date, timeZone) - leastOffset(date.year, timeZone)
  days.set(day, minutes)
  return minutes
}

function leastOffset(year: number, timeZone: string): number {
  const key = `${timeZone} ${year}`
  const known = knownYears.get(key)
  if (known !== undefined) return known
  const months = Array.from({ length: 12 }, (_, index) => Temporal.PlainDate.from({ year, month: index + 1, day: 15 }))
  const least = Math.min(...months.map(date => offsetMinutes(date, timeZone)))
  knownYears.set(key, least)
  return least
}

function offsetMinutes(date: Temporal.PlainDate, timeZone: string): number {
  return date.toZonedDateTime({ timeZone, plainTime: '12:00' }).offsetNanoseconds / 60e9
}
