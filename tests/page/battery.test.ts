import { describe, expect, it } from 'vitest'
import { batteryToday } from '../../src/page/battery.ts'
import { date } from '../../src/units/date.ts'
import { pageWords } from '../../src/words/en-US/pages.ts'

const due = date('2026-06-30')
const on = (day: string) => batteryToday(due, date(day), pageWords.script)

describe('a battery on the day the page is read', () => {
  it('is OVERDUE from the day after its date, with the days', () => {
    expect(on('2026-07-01')).toEqual({ state: 'bad', word: 'OVERDUE', days: '1 day over' })
    expect(on('2026-08-31')).toEqual({ state: 'bad', word: 'OVERDUE', days: '62 days over' })
  })

  it('is due, not overdue, on its date', () => {
    expect(on('2026-06-30')).toEqual({ state: 'soon', word: 'DUE SOON', days: 'due today' })
    expect(on('2026-06-29').days).toBe('due in 1 day')
  })

  it('is DUE SOON from 60 days ahead and OK before', () => {
    expect(on('2026-05-01')).toEqual({ state: 'soon', word: 'DUE SOON', days: 'due in 60 days' })
    expect(on('2026-04-30')).toEqual({ state: 'good', word: 'OK', days: 'due in 61 days' })
  })

  it('has NO DATE where none is known, and no days', () => {
    expect(batteryToday(undefined, due, pageWords.script)).toEqual({ state: 'unknown', word: 'NO DATE', days: '' })
  })
})
