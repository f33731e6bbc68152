import { epochDay, weekdayOf } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { fill } from './words.ts'
import type { ScriptWords } from './words.ts'

/** The day on the wall where the phone is. Not the day in Greenwich: a night visit would be dated a day off. */
export function localDay(now: Date): IsoDate {
  const [year, month, day] = [now.getFullYear(), now.getMonth() + 1, now.getDate()]
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}` as IsoDate
}

/** "Fri 2026-05-01" */
export function namedDay(iso: IsoDate, words: ScriptWords): string {
  const name = fill(words['weekdays']).split(' ')[weekdayOf(epochDay(iso)) - 1] ?? ''
  return `${name} ${iso}`.trim()
}
