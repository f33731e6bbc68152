import { FIRST_YEAR, LAST_YEAR, MONTH_NAMES, MONTHS, daysInMonth, parseDate } from '../../units/date.ts'
import { wrong } from '../schema/field.ts'
import type { Wrong } from '../schema/field.ts'

/** A year of two digits, of this century. */
const SHORT_YEAR = /^(\d{1,2})[./ -](\d{1,2})[./ -](\d{2})$/u
const YEAR_LAST = /^(\d{1,2})[./ -](\d{1,2})[./ -](\d{4})$/u

const DASHES = /[\u2010-\u2015\u2212]/gu

/** What is wrong with a date: a day that does not exist, or another way of writing it. A time of day after it is left aside. */
export function dateWrong(written: string): Wrong {
  return wrongDay(written.replace(DASHES, '-').replace(/^(\d{4}-\d{2}-\d{2})[T ]\d{2}:\d{2}.*$/u, '$1'))
}

function wrongDay(text: string): Wrong {
  const written = /^(\d{4})-(\d{1,2})-(\d{1,2})$/u.exec(text)
  if (written) return noSuchDay(Number(written[1]), Number(written[2]), Number(written[3]))
  const candidates = rewritten(text)
  const none = candidates.length === 0 ? noSuchDayLast(text) : undefined
  if (none) return none
  const [only] = candidates
  const details = { reason: candidates.length > 1 ? 'two-ways' : 'form', candidates }
  return wrong('file/date', details, candidates.length === 1 ? only : undefined)
}

/** The same for a day of every year, "04-01". */
export function monthDayWrong(text: string): Wrong {
  const written = /^(\d{1,2})-(\d{1,2})$/u.exec(text)
  if (!written) return wrong('file/date', { reason: 'month-day-form', candidates: [] })
  const fault = noSuchDay(2024, Number(written[1]), Number(written[2]))
  const month = String(fault.details['month'] ?? '').replace(' 2024', '')
  const details = { ...fault.details, ...(month === '' ? {} : { month }), everyYear: true }
  return wrong(fault.code, details, fault.value?.slice(5))
}

/** 31.04.2026 and 4/31/2026 name a day that April does not have, whichever stands first. */
function noSuchDayLast(text: string): Wrong | undefined {
  const [, first, second, year] = (YEAR_LAST.exec(text) ?? []).map(Number)
  if (first === undefined || second === undefined || year === undefined) return undefined
  const [month, day] = second <= 12 ? [second, first] : [first, second]
  return month >= 1 && month <= 12 && day >= 1 ? noSuchDay(year, month, day) : undefined
}

function noSuchDay(year: number, month: number, day: number): Wrong {
  if (year < FIRST_YEAR || year > LAST_YEAR)
    return wrong('file/date', { reason: 'year', first: FIRST_YEAR, last: LAST_YEAR, candidates: [] })
  if (month < 1 || month > 12) return wrong('file/date', { reason: 'month', month, candidates: [] })
  const padded = isoDate(year, month, day)
  if (parseDate(padded)) return wrong('file/date', { reason: 'form', candidates: [padded] }, padded)
  const days = daysInMonth(year, month)
  const name = `${MONTH_NAMES[month - 1]} ${year}`
  return wrong('file/date', { reason: 'day', month: name, days, candidates: [] }, isoDate(year, month, days))
}

/** Dates that the text may mean, each of which exists: 05/04/2026 is two, 2026/05/04 is one, "4 May 2026" is one. */
function rewritten(text: string): string[] {
  const yearFirst = /^(\d{4})[./ ](\d{1,2})[./ ](\d{1,2})$/u.exec(text)
  if (yearFirst) return existing([[yearFirst[1], yearFirst[2], yearFirst[3]]])
  const packed = /^(\d{4})(\d{2})(\d{2})$/u.exec(text)
  if (packed) return existing([[packed[1], packed[2], packed[3]]])
  const short = SHORT_YEAR.exec(text)
  if (short) {
    const [, first = '', second = '', third = ''] = short
    const yearLast = existing([
      [`20${third}`, first, second],
      [`20${third}`, second, first]
    ])
    if (!text.includes('-')) return yearLast
    // With dashes the year may stand first, too: one order alone would be a guess.
    const all = [...new Set([...yearLast, ...existing([[`20${first}`, second, third]])])]
    return all.length > 1 ? all : []
  }
  const yearLast = YEAR_LAST.exec(text)
  if (yearLast) {
    const [, first, second, year] = yearLast
    return existing([
      [year, first, second],
      [year, second, first]
    ])
  }
  return existing([namedMonth(text)])
}

function namedMonth(text: string): (string | undefined)[] {
  const year = /\b(\d{4})\b/u.exec(text)?.[1]
  const day = /\b(\d{1,2})(?:st|nd|rd|th)?\b/u.exec(text)?.[1]
  const name = /[A-Za-z]{3,}/u.exec(text)?.[0]?.slice(0, 3).toLowerCase()
  const month = MONTHS.findIndex(one => one.toLowerCase() === name)
  return [year, month < 0 ? undefined : String(month + 1), day]
}

function existing(candidates: readonly (readonly (string | undefined)[])[]): string[] {
  const dates = candidates.map(parts => isoDate(...(parts.map(Number) as [number, number, number])))
  return [...new Set(dates.filter(one => parseDate(one) !== undefined))]
}

function isoDate(year: number, month: number, day: number): string {
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`
}
