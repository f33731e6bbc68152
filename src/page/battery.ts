import { dueState } from '../domain/dates/due-state.ts'
import { daysBetween } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { fill } from './words.ts'
import type { ScriptWords } from './words.ts'

export interface BatteryToday {
  readonly state: 'good' | 'soon' | 'bad' | 'unknown'
  readonly word: string
  /** "due in 12 days", "3 days over"; empty where there is no date. */
  readonly days: string
}

const LOOKS = {
  ok: { state: 'good', word: 'ok' },
  'due-soon': { state: 'soon', word: 'soon' },
  overdue: { state: 'bad', word: 'overdue' }
} as const

/** The state of a battery on the day the page is read, by the same rule as on the day it was made. */
export function batteryToday(due: IsoDate | undefined, today: IsoDate, words: ScriptWords): BatteryToday {
  if (due === undefined) return { state: 'unknown', word: fill(words['noDate']), days: '' }
  const { state, word } = LOOKS[dueState(due, today).state]
  return { state, word: fill(words[word]), days: daysText(daysBetween(today, due), words) }
}

function daysText(left: number, words: ScriptWords): string {
  if (left === 0) return fill(words['dueToday'])
  if (left < 0) return left === -1 ? fill(words['dayOver']) : fill(words['daysOver'], { n: -left })
  return left === 1 ? fill(words['dayLeft']) : fill(words['daysLeft'], { n: left })
}
