import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseClock, parseWindow, showClock, showWindow, windowLength } from '../../src/units/clock.ts'

const plain = (text: string) => text.replaceAll('\u00a0', ' ')

describe('reading a time of day', () => {
  it.each([
    ['00:00', 0],
    ['7:05', 425],
    ['07:05', 425],
    ['23:59', 1439],
    ['10:00 pm', 1320],
    ['10:00pm', 1320],
    ['10:00 PM', 1320],
    ['10:00 p.m.', 1320],
    ['12:00 am', 0],
    ['12:10 am', 10],
    ['12:00 pm', 720],
    ['12:59 pm', 779],
    ['1:00 am', 60]
  ])('“%s” is minute %d', (text, minutes) => {
    expect(parseClock(text)).toBe(minutes)
  })

  it.each(['24:00', '23:60', '7', '7:5', '0:30 am', '13:00 pm', '22.30', '1350', '', '22:00:00', '-1:00'])(
    '“%s” is no time',
    text => {
      expect(parseClock(text)).toBeUndefined()
    }
  )

  it('gives back what was shown, in both systems, for every minute of the day', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1439 }), minutes => {
        expect(parseClock(plain(showClock(minutes, 'metric')))).toBe(minutes)
        expect(parseClock(plain(showClock(minutes, 'us')))).toBe(minutes)
      })
    )
  })

  it('shows midnight and noon as people read them', () => {
    expect([0, 720].map(minutes => showClock(minutes, 'metric'))).toEqual(['00:00', '12:00'])
    expect([0, 720].map(minutes => plain(showClock(minutes, 'us')))).toEqual(['12:00 am', '12:00 pm'])
  })

  it('wraps past midnight and before it, and drops seconds', () => {
    expect([1440, -1, 1441.9].map(minutes => showClock(minutes, 'metric'))).toEqual(['00:00', '23:59', '00:01'])
  })
})

describe('reading a window', () => {
  it.each([
    ['23:00-05:00', 1380, 300],
    ['22:00 – 06:00', 1320, 360],
    ['10:00 pm - 6:00 am', 1320, 360],
    ['03:00-06:00', 180, 360],
    ['00:00-00:00', 0, 0]
  ])('“%s”', (text, from, to) => {
    expect(parseWindow(text)).toEqual({ from, to })
  })

  it.each(['', '23:00', '23:00-', '23:00-25:00', '23:00-05:00-06:00', 'night'])('“%s” is no window', text => {
    expect(parseWindow(text)).toBeUndefined()
  })

  it('lasts across midnight, and the whole day where it ends as it starts', () => {
    expect(windowLength({ from: 1380, to: 300 })).toBe(360)
    expect(windowLength({ from: 180, to: 360 })).toBe(180)
    expect(windowLength({ from: 0, to: 0 })).toBe(1440)
    expect(windowLength({ from: 1439, to: 0 })).toBe(1)
  })

  it('is shown in the clock of the site', () => {
    expect(showWindow({ from: 1380, to: 300 }, 'metric')).toBe('23:00–05:00')
    expect(plain(showWindow({ from: 1320, to: 360 }, 'us'))).toBe('10:00 pm–6:00 am')
  })
})
