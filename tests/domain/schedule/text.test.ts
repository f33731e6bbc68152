import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseStations } from '../../../src/domain/schedule/stations-text.ts'
import { parseDayRule, parseRunTime, writeDayRule, writeRunTime } from '../../../src/domain/schedule/text.ts'
import { dayRules, runTimes } from './arbitrary.ts'

describe('a day rule', () => {
  it.each([
    ['every day', { kind: 'every-day' }],
    ['Every  Day ', { kind: 'every-day' }],
    ['odd dates', { kind: 'odd-dates', withTurnover: false }],
    ['odd dates with the 31st', { kind: 'odd-dates', withTurnover: true }],
    ['even dates', { kind: 'even-dates' }],
    ['every 2 days from 2026-04-02', { kind: 'every-n-days', every: 2, from: '2026-04-02' }],
    ['every 1 day from 2024-02-29', { kind: 'every-n-days', every: 1, from: '2024-02-29' }],
    ['Mon Wed Fri', { kind: 'weekdays', days: [1, 3, 5] }],
    ['mon, wed, fri', { kind: 'weekdays', days: [1, 3, 5] }],
    ['Tuesday and Friday', { kind: 'weekdays', days: [2, 5] }],
    ['Monday, Thursday, and Sunday', { kind: 'weekdays', days: [1, 4, 7] }],
    ['Tues Thurs', { kind: 'weekdays', days: [2, 4] }],
    ['Fri Mon Fri', { kind: 'weekdays', days: [1, 5] }],
    ['Wednesday', { kind: 'weekdays', days: [3] }]
  ])('reads %s', (text, rule) => {
    expect(parseDayRule(text)).toEqual(rule)
  })

  it.each([
    '',
    ' ',
    'sometimes',
    'Mon Funday',
    'M W F',
    'Mondays',
    'every 0 days from 2026-04-02',
    'every 2 days',
    'every 2 days from 2025-02-30',
    'every 2 days from 2025-02-29',
    'every 2 days from April',
    'every 2.5 days from 2026-04-02',
    'odd',
    'and',
    'Mon,'
  ])('does not guess at “%s”', text => {
    expect(parseDayRule(text)).toBeUndefined()
  })

  it('reads back what it writes', () => {
    fc.assert(
      fc.property(dayRules, rule => {
        expect(parseDayRule(writeDayRule(rule))).toEqual(rule)
      })
    )
  })
})

describe('a run time', () => {
  it.each([
    ['25 min', { cycles: 1, cycleS: 1500, soakS: 0 }],
    ['25min', { cycles: 1, cycleS: 1500, soakS: 0 }],
    ['90 s', { cycles: 1, cycleS: 90, soakS: 0 }],
    ['1 h', { cycles: 1, cycleS: 3600, soakS: 0 }],
    ['1.1 min', { cycles: 1, cycleS: 66, soakS: 0 }],
    ['0 min', { cycles: 1, cycleS: 0, soakS: 0 }],
    ['2 x 6 min', { cycles: 2, cycleS: 360, soakS: 0 }],
    ['2 × 6 min', { cycles: 2, cycleS: 360, soakS: 0 }],
    ['2x6 min', { cycles: 2, cycleS: 360, soakS: 0 }],
    ['3 X 90 s soak 1 h', { cycles: 3, cycleS: 90, soakS: 3600 }],
    ['2 x 6 min soak 30 min', { cycles: 2, cycleS: 360, soakS: 1800 }],
    ['2 x 6\u00a0min, soak 30 min', { cycles: 2, cycleS: 360, soakS: 1800 }],
    ['6 min soak 30 min', { cycles: 1, cycleS: 360, soakS: 0 }]
  ])('reads %s', (text, value) => {
    expect(parseRunTime(text)).toEqual({ ok: true, value })
  })

  it.each([
    ['25', { kind: 'unit-missing', number: '25' }],
    ['2 x 6', { kind: 'unit-missing', number: '6' }],
    ['2 x 6 soak 30 min', { kind: 'unit-missing', number: '6' }],
    ['2 x 6 min soak 30', { kind: 'unit-missing', number: '30' }],
    ['6,5 min', { kind: 'decimal-comma', corrected: '6.5 min' }],
    ['2 x 6,5 min soak 30 min', { kind: 'decimal-comma', corrected: '6.5 min' }],
    ['25 L', { kind: 'unit-of-another-kind', unit: 'L', dimension: 'volume' }],
    ['25 mins', { kind: 'unit-unknown', unit: 'mins' }],
    ['-5 min', { kind: 'not-a-quantity', text: '-5 min' }],
    ['0 x 6 min', { kind: 'not-a-quantity', text: '0 x 6 min' }],
    ['a while', { kind: 'not-a-quantity', text: 'a while' }],
    ['', { kind: 'not-a-quantity', text: '' }]
  ])('says what is at fault in “%s”', (text, problem) => {
    expect(parseRunTime(text)).toEqual({ ok: false, problem })
  })

  it('reads back what it writes', () => {
    fc.assert(
      fc.property(runTimes, runTime => {
        expect(parseRunTime(writeRunTime(runTime))).toEqual({ ok: true, value: runTime })
      })
    )
  })

  it('is written the way a person writes it', () => {
    expect(writeRunTime({ cycles: 2, cycleS: 360, soakS: 1800 })).toBe('2 x 6 min soak 30 min')
    expect(writeRunTime({ cycles: 1, cycleS: 90, soakS: 0 })).toBe('90 s')
    expect(writeDayRule({ kind: 'weekdays', days: [1, 3, 5] })).toBe('Mon Wed Fri')
  })
})

describe('a list of stations', () => {
  it('keeps the order written and the commas inside a run time', () => {
    expect(parseStations('3: 2 x 6 min, soak 30 min, 1: 25 min; 2:90 s')).toEqual([
      { number: 3, runTime: { cycles: 2, cycleS: 360, soakS: 1800 } },
      { number: 1, runTime: { cycles: 1, cycleS: 1500, soakS: 0 } },
      { number: 2, runTime: { cycles: 1, cycleS: 90, soakS: 0 } }
    ])
  })

  it.each([
    ['1: 25 min, 2: 6', 'Station 2: 6 needs its unit: write 6 min or 6 s.'],
    ['1: 6,5 min', 'Station 1: write 6.5 min, with a decimal point.'],
    ['25 min', '“25 min” is not a station with a run time: write 1: 25 min.']
  ])('says what to write instead of “%s”', (text, reason) => {
    expect(parseStations(text)).toEqual({ absent: true, reason })
  })
})
