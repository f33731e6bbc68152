import type { z } from 'zod'
import { Temporal } from 'temporal-polyfill'
import { field, taken, wrong } from './field.ts'

/** A time zone by its name in the IANA list: "Europe/London". An offset such as +01:00 knows no daylight saving and is refused. */
export function timeZone(does: string, example: string): z.ZodType<string> {
  return field({ does, example }, { type: 'string' }, value => {
    const name = String(value).trim()
    return isZone(name)
      ? taken(name)
      : wrong('file/not-understood', { expected: 'a time zone by continent and city', example })
  })
}

function isZone(name: string): boolean {
  if (!/^[A-Za-z]+\/[A-Za-z0-9_+/-]+$|^UTC$/u.test(name)) return false
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(name)
    return true
  } catch {
    return false
  }
}
