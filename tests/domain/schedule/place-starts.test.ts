import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isClear, isInHours, meets, minutesLeft, placeStart } from '../../../src/domain/schedule/place-starts.ts'
import type { PlacedStart } from '../../../src/domain/schedule/place-starts.ts'
import { parseDayRule } from '../../../src/domain/schedule/text.ts'

const days = (text: string) => {
  const parsed = parseDayRule(text)
  if (!parsed) throw new Error(text)
  return parsed
}

const start = (fromMinute: number, toMinute: number, facts: Partial<PlacedStart> = {}): PlacedStart => ({
  controller: 'K1',
  days: days('every day'),
  fromMinute,
  toMinute,
  flowM3s: 0,
  ahead: [0, 0],
  ...facts
})

const hours = (from: number, to: number): boolean[] =>
  Array.from({ length: 1440 }, (_, minute) =>
    to > from ? minute >= from && minute < to : minute >= from || minute < to
  )

describe('minutes left', () => {
  it('count to the end of the hours, also across midnight', () => {
    const left = minutesLeft(hours(1320, 360))
    expect([left[1319], left[1320], left[0], left[359], left[360]]).toEqual([0, 480, 360, 1, 0])
  })

  it('stop at midnight where days are limited', () => {
    const left = minutesLeft(hours(1320, 360), [1440])
    expect([left[1320], left[1439], left[0]]).toEqual([120, 1, 360])
  })

  it('a day without rules has room for a day from any minute', () => {
    const left = minutesLeft(hours(0, 1440))
    expect([left[0], left[700], left[1439]]).toEqual([1440, 1440, 1440])
  })

  it('exactly as long as the hours fits, a minute more does not', () => {
    const left = minutesLeft(hours(1320, 360))
    expect(isInHours(start(1320, 1800), left)).toBe(true)
    expect(isInHours(start(1320, 1801), left)).toBe(false)
    expect(isInHours(start(1319, 1330), left)).toBe(false)
  })
})

describe('two passes', () => {
  it('that meet at one second do not run together', () => {
    expect(meets(start(60, 120), start(120, 180))).toBe(false)
    expect(meets(start(60, 121), start(120, 180))).toBe(true)
  })

  it('meet past midnight and past the end of the week', () => {
    expect(meets(start(1400, 1500), start(30, 40))).toBe(true)
    const sunday = start(1400, 1500, { days: days('Sun') })
    expect(meets(sunday, start(30, 40, { days: days('Mon') }))).toBe(true)
    expect(meets(sunday, start(30, 40, { days: days('Sun') }))).toBe(false)
  })

  it('on other weekdays do not meet', () => {
    expect(meets(start(60, 120, { days: days('Mon Wed') }), start(60, 120, { days: days('Tue Thu') }))).toBe(false)
  })

  it('of other controllers may run together as far as the supply gives it', () => {
    const other = start(60, 120, { controller: 'K2', flowM3s: 2 })
    const own = start(90, 150, { flowM3s: 3 })
    expect(isClear(own, [other], {})).toBe(true)
    expect(isClear(own, [other], { limitM3s: 5 })).toBe(true)
    expect(isClear(own, [other], { limitM3s: 4.9 })).toBe(false)
    expect(isClear(own, [other], { zonesAtOnce: 1 })).toBe(false)
    expect(isClear(own, [other], { zonesAtOnce: 2 })).toBe(true)
    expect(isClear(own, [start(60, 120)], {})).toBe(false)
  })

  it('of a clock that is behind in summer are held apart from others in summer and in winter', () => {
    const behind = start(60, 120, { controller: 'K2', flowM3s: 2, ahead: [0, 60] })
    const limit = { limitM3s: 4 }
    expect(isClear(start(150, 170, { flowM3s: 3 }), [behind], limit)).toBe(false)
    expect(isClear(start(180, 190, { flowM3s: 3 }), [behind], limit)).toBe(true)
    expect(isClear(start(40, 70, { flowM3s: 3 }), [behind], limit)).toBe(false)
    // Two that are behind alike are behind together.
    expect(isClear(start(120, 140, { flowM3s: 3, ahead: [0, 60] }), [behind], limit)).toBe(true)
  })
})

describe('a start', () => {
  const left = minutesLeft(hours(1320, 360))
  const place = (lengthMinutes: number, placed: readonly PlacedStart[] = [], wished: readonly number[] = []) =>
    placeStart({
      controller: 'K1',
      days: days('every day'),
      lengthMinutes,
      flowM3s: 0,
      ahead: [0, 0],
      left,
      wished,
      placed,
      supply: {}
    })

  it('is the one wished for where that fits, else where the hours open, else after another pass', () => {
    expect(place(60, [], [1390])?.fromMinute).toBe(1390)
    expect(place(60, [], [600])?.fromMinute).toBe(1320)
    expect(place(60, [start(1320, 1402)], [1330])?.fromMinute).toBe(1405)
  })

  it('fills the hours to the last minute, and is none beyond', () => {
    expect(place(398, [start(1320, 1402)])?.fromMinute).toBe(1402)
    expect(place(399, [start(1320, 1402)])).toBeUndefined()
  })

  it('never leaves the hours and never meets another of its controller', () => {
    const lengths = fc.array(fc.integer({ min: 1, max: 200 }), { minLength: 1, maxLength: 6 })
    fc.assert(
      fc.property(lengths, fc.integer({ min: 0, max: 1439 }), fc.integer({ min: 0, max: 1439 }), (all, from, to) => {
        const own = minutesLeft(hours(from, to))
        const placed: PlacedStart[] = []
        for (const lengthMinutes of all) {
          const one = placeStart({
            controller: 'K1',
            days: days('every day'),
            lengthMinutes,
            flowM3s: 0,
            ahead: [0, 0],
            left: own,
            wished: [from],
            placed,
            supply: {}
          })
          if (!one) continue
          expect(isInHours(one, own)).toBe(true)
          expect(placed.some(other => meets(one, other))).toBe(false)
          placed.push(one)
        }
      })
    )
  })
})
