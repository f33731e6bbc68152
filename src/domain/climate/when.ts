import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { MONTHS } from '../../units/date.ts'
import type { IsoDate, Month } from '../../units/date.ts'
import type { CalculationInputs, InputSpec } from '../calculation.ts'
import { numberOf, optionalNumber, optionalText } from '../inputs.ts'
import { commonMonthDays, dayOfYear, midMonthDay, monthNumber } from './day-of-year.ts'

/** A place on the globe and a day, as the sun's position asks for them. */
export interface When {
  readonly latitudeDeg: number
  readonly dayOfYear: number
  /** Days of the month, where a month was asked for. */
  readonly monthDays?: number
  /** "15 Jul, day 196". */
  readonly words: string
}

/** Inputs that the cards of climate share. */
export const WHEN_INPUTS = {
  latitude: { kind: { is: 'number' }, does: 'latitude in degrees; south of the equator below zero' },
  month: { kind: { is: 'choice', of: MONTHS }, does: 'a month, taken on its 15th', optional: 'date or day-of-year' },
  date: { kind: { is: 'date' }, does: 'a day', optional: 'month or day-of-year' },
  'day-of-year': { kind: { is: 'count' }, does: 'a day by its number, 1 to 366', optional: 'month or date' }
} as const satisfies Readonly<Record<string, InputSpec>>

/** Latitude and day of a card's inputs. Absent unless exactly one of month, date and day-of-year is given, and both are on the globe. */
export function whenOf(inputs: CalculationInputs): Maybe<When> {
  const latitudeDeg = numberOf(inputs, 'latitude')
  if (Math.abs(latitudeDeg) > 90) return absent('latitude must be from −90 to 90 degrees')
  const month = optionalText(inputs, 'month') as Month | undefined
  const day = optionalText(inputs, 'date') as IsoDate | undefined
  const number = optionalNumber(inputs, 'day-of-year')
  if ([month, day, number].filter(given => given !== undefined).length !== 1)
    return absent('give one of month, date and day-of-year')
  if (month !== undefined) return monthWhen(latitudeDeg, monthNumber(month))
  if (day !== undefined) return { latitudeDeg, dayOfYear: dayOfYear(day), words: `${day}, day ${dayOfYear(day)}` }
  if (number === undefined || number < 1 || number > 366) return absent('day-of-year must be from 1 to 366')
  return { latitudeDeg, dayOfYear: number, words: `day ${number}` }
}

/** A month, 1 to 12, taken on its 15th. */
export function monthWhen(latitudeDeg: number, month: number): When {
  const middle = midMonthDay(month)
  const words = `15 ${MONTHS[month - 1]}, day ${middle}`
  return { latitudeDeg, dayOfYear: middle, monthDays: commonMonthDays(month), words }
}
