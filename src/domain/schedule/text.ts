import { parseDate } from '../../units/date.ts'
import { parseQuantity } from '../../units/quantity.ts'
import type { Parsed } from '../../units/quantity.ts'
import type { DayRule, RunTime } from './program.ts'

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const

/**
 * Reads "every day", "every 2 days from 2026-04-02", "odd dates", "odd dates with the 31st", "even dates", "Mon Wed Fri",
 * "Monday, Wednesday and Friday". Undefined for anything else, a day that does not exist included.
 */
export function parseDayRule(text: string): DayRule | undefined {
  const words = text
    .toLowerCase()
    .replace(/[\s\u00a0]+/gu, ' ')
    .trim()
  switch (words) {
    case 'every day':
      return { kind: 'every-day' }
    case 'odd dates':
      return { kind: 'odd-dates', withTurnover: false }
    case 'odd dates with the 31st':
      return { kind: 'odd-dates', withTurnover: true }
    case 'even dates':
      return { kind: 'even-dates' }
    default:
      return intervalRule(words) ?? weekdaysRule(words)
  }
}

/** Inverse of `parseDayRule`. */
export function writeDayRule(rule: DayRule): string {
  switch (rule.kind) {
    case 'every-day':
      return 'every day'
    case 'weekdays':
      return rule.days.map(day => WEEKDAYS[day - 1]?.slice(0, 3)).join(' ')
    case 'odd-dates':
      return rule.withTurnover ? 'odd dates with the 31st' : 'odd dates'
    case 'even-dates':
      return 'even dates'
    case 'every-n-days':
      return `every ${rule.every} ${rule.every === 1 ? 'day' : 'days'} from ${rule.from}`
  }
}

/**
 * Reads "25 min", "90 s", "1 h", "2 x 6 min", "2 x 6 min soak 30 min". The problem is that of the quantity at fault, a time without
 * a unit or with a decimal comma among them. One cycle has no soak, whatever is written.
 */
export function parseRunTime(text: string): Parsed<RunTime> {
  const written = text.replace(/[\s\u00a0\u2009\u202f]+/gu, ' ').trim()
  const match = /^(?:(\d{1,3}) ?[x×*] ?)?(.+?)(?:,? soak (.+))?$/iu.exec(written)
  const cycles = Number(match?.[1] ?? 1)
  if (!match || cycles === 0) return { ok: false, problem: { kind: 'not-a-quantity', text: written } }
  const cycle = parseSeconds(match[2] ?? '')
  if (!cycle.ok) return cycle
  const soak = match[3] === undefined ? undefined : parseSeconds(match[3])
  if (soak && !soak.ok) return soak
  return { ok: true, value: { cycles, cycleS: cycle.value, soakS: cycles > 1 && soak ? soak.value : 0 } }
}

/** Inverse of `parseRunTime`: minutes where they are whole, seconds otherwise. */
export function writeRunTime({ cycles, cycleS, soakS }: RunTime): string {
  const cycle = cycles === 1 ? writeSeconds(cycleS) : `${cycles} x ${writeSeconds(cycleS)}`
  return soakS === 0 ? cycle : `${cycle} soak ${writeSeconds(soakS)}`
}

/** To the millisecond, so that 1.1 min is 66 s. */
function parseSeconds(text: string): Parsed<number> {
  const parsed = parseQuantity(text, 'duration')
  if (!parsed.ok) return parsed
  if (parsed.value.si < 0) return { ok: false, problem: { kind: 'not-a-quantity', text } }
  return { ok: true, value: Math.round(parsed.value.si * 1000) / 1000 }
}

function writeSeconds(seconds: number): string {
  return seconds % 60 === 0 ? `${seconds / 60} min` : `${seconds} s`
}

function intervalRule(words: string): DayRule | undefined {
  const match = /^every (\d{1,3}) days? from (\S+)$/u.exec(words)
  const from = parseDate(match?.[2] ?? '')
  const every = Number(match?.[1])
  return from && every >= 1 ? { kind: 'every-n-days', every, from } : undefined
}

function weekdaysRule(words: string): DayRule | undefined {
  const days = words.split(/(?:,| and\b| )+/u).map(weekdayNumber)
  if (days.includes(undefined)) return undefined
  const sorted = WEEKDAYS.map((_, index) => index + 1).filter(day => days.includes(day))
  return { kind: 'weekdays', days: sorted }
}

/** "mon", "tues", "thurs", "wednesday": the first three letters or more of a day's name. */
function weekdayNumber(word: string): number | undefined {
  if (word.length < 3) return undefined
  const index = WEEKDAYS.findIndex(name => name.toLowerCase().startsWith(word))
  return index < 0 ? undefined : index + 1
}
