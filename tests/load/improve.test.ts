import { describe, expect, it } from 'vitest'
import { dateWrong, monthDayWrong } from '../../src/load/improve/date.ts'
import { nearestKey } from '../../src/load/improve/key.ts'
import { nearest } from '../../src/load/improve/nearest.ts'
import { otherNumber } from '../../src/load/improve/number-form.ts'
import { clockWrong, windowWrong } from '../../src/load/improve/time.ts'
import { likelyUnits, nearestUnit } from '../../src/load/improve/unit.ts'
import { parseQuantity } from '../../src/units/quantity.ts'

describe('the nearest word', () => {
  const known = ['season', 'supplies', 'stations', 'shut-off', 'name', 'size', 'where']

  it('is one with other capitals, hyphens or spaces, or with two letters that changed places', () => {
    expect(['Season', 'shut_off', 'Shut Off', 'shutoff', 'nmae', 'sieze'].map(word => nearest(word, known))).toEqual([
      'season',
      'shut-off',
      'shut-off',
      'shut-off',
      'name',
      'size'
    ])
  })

  it('is a slip away in a short word, two in a longer one, three in a long one, and no more', () => {
    expect(nearest('nam', known)).toBe('name')
    expect(nearest('nm', known)).toBeUndefined()
    expect(nearest('sesn', ['season'])).toBeUndefined()
    expect(nearest('seasnn', known)).toBe('season')
    expect(nearest('sttions', known)).toBe('stations')
    expect(nearest('controller', known)).toBeUndefined()
  })

  it('is nothing where nothing is known or nothing is written', () => {
    expect([nearest('a', []), nearest('', known), nearest('- _', known)]).toEqual([undefined, undefined, undefined])
  })

  it('for a key may be another word of the trade, where the record has that key', () => {
    expect(nearestKey('License', ['role', 'licence'])).toBe('licence')
    expect(nearestKey('tel', ['role', 'phone'])).toBe('phone')
    expect(nearestKey('color', ['size', 'colour'])).toBe('colour')
    expect(nearestKey('tel', ['role'])).toBeUndefined()
  })
})

describe('a unit', () => {
  it('that is spelled otherwise is found', () => {
    const pairs = [
      ['lpm', 'flow', 'L/min'],
      ['GPM', 'flow', 'gpm'],
      ['l/hr', 'flow', 'L/h'],
      ['feet', 'length', 'ft'],
      ['Sq Ft', 'area', 'sq ft'],
      ['sqft', 'area', 'ft²'],
      ['PSI', 'pressure', 'psi'],
      ['Kpa', 'pressure', 'kPa'],
      ['mins', 'duration', 'min'],
      ['ohmz', 'resistance', 'ohm']
    ] as const
    for (const [written, dimension, meant] of pairs) expect(nearestUnit(written, dimension), written).toBe(meant)
    expect(nearestUnit('buckets', 'flow')).toBeUndefined()
  })

  it('that is proposed can be read', () => {
    for (const [dimension, example] of [
      ['length', '36 m'],
      ['length', '200 mm'],
      ['flow', '2.3 L/h'],
      ['area', '210 m²']
    ] as const)
      for (const unit of likelyUnits(dimension, example))
        expect(parseQuantity(`1 ${unit}`, dimension).ok, unit).toBe(true)
  })

  it('that is proposed is of the size of the key: a root depth is never in meters, a run never in inches', () => {
    expect(likelyUnits('length', '200 mm')).toEqual(['mm', 'in', 'cm'])
    expect(likelyUnits('length', '36 m')).toEqual(['m', 'ft'])
    expect(likelyUnits('flow', '2.3 L/h')[0]).toBe('L/h')
  })
})

describe('another way of writing a number', () => {
  it('is put right where it can mean one thing only', () => {
    expect(otherNumber('1/2 in')?.value).toBe('0.5 in')
    expect(otherNumber('1-1/2 in')?.value).toBe('1.5 in')
    expect(otherNumber('7 3/4 in')?.value).toBe('7.75 in')
    expect(otherNumber('5\' 6"')?.value).toBe('5.5 ft')
    expect(otherNumber('1,234,567 gal')?.value).toBe('1234567 gal')
    for (const feet of ["6'6", '6ft6', '6′ 6″', '6’ 6”', '6 ft 6 in', '6 feet 6 inches'])
      expect(otherNumber(feet)?.value, feet).toBe('6.5 ft')
    expect([otherNumber('6½ ft')?.value, otherNumber('½ in')?.value]).toEqual(['6.5 ft', '0.5 in'])
    for (const parted of ['1 284.5 m³', '1\u00a0284.5 m³', "1'284.5 m³", '1.284,5 m³'])
      expect(otherNumber(parted)?.value, parted).toBe('1284.5 m³')
  })

  it('is offered both ways where it can mean two', () => {
    expect(otherNumber('1,200 ft')).toMatchObject({ details: { thousands: '1200 ft', decimal: '1.200 ft' } })
    expect(otherNumber('1,200 ft')).not.toHaveProperty('value')
  })

  it('is not seen in a number as it should be, or in a decimal comma', () => {
    for (const text of ['36 m', '36,5 m', '1,2 m', '1200 ft', '4:1', '1/0 AWG', '1.284 m³', '12 34 m'])
      expect(otherNumber(text), text).toBeUndefined()
  })
})

describe('a date', () => {
  it('that does not exist is told why', () => {
    expect(dateWrong('2025-02-30').details).toMatchObject({ reason: 'day', month: 'February 2025', days: 28 })
    expect(dateWrong('2024-02-30').details).toMatchObject({ reason: 'day', month: 'February 2024', days: 29 })
    expect(dateWrong('2100-02-29').details).toMatchObject({ days: 28 })
    expect(dateWrong('2025-04-31').details).toMatchObject({ month: 'April 2025', days: 30 })
    expect(dateWrong('2025-00-10').details).toMatchObject({ reason: 'month', month: 0 })
    expect(monthDayWrong('02-30').details).toMatchObject({ month: 'February', days: 29, everyYear: true })
  })

  it('in another form is put right where it can mean one day only', () => {
    const pairs = [
      ['2026-5-4', '2026-05-04'],
      ['2026/05/04', '2026-05-04'],
      ['2026.5.4', '2026-05-04'],
      ['31/12/2026', '2026-12-31'],
      ['12/31/2026', '2026-12-31'],
      ['4.4.2026', '2026-04-04'],
      ['4 May 2026', '2026-05-04'],
      ['May 4th, 2026', '2026-05-04'],
      ['14.4.25', '2025-04-14'],
      ['20260504', '2026-05-04'],
      ['2026–05–04', '2026-05-04'],
      ['2026-05-04T09:30', '2026-05-04']
    ]
    for (const [written, meant] of pairs) expect(dateWrong(written ?? '').value, written).toBe(meant)
  })

  it('is offered both ways where day and month can change places', () => {
    const fault = dateWrong('04/05/2026')
    expect(fault.details).toMatchObject({ reason: 'two-ways', candidates: ['2026-04-05', '2026-05-04'] })
    expect(fault.value).toBeUndefined()
    expect(dateWrong('5/4/26').details['candidates']).toEqual(['2026-05-04', '2026-04-05'])
    expect(dateWrong('20-10-25').details['candidates']).toEqual(['2025-10-20', '2020-10-25'])
  })

  it('that means nothing has no proposal', () => {
    for (const text of ['31-4-26', '31.4.26', '', 'soon', '32/13/2026', 'May 2026', '2026'])
      expect(dateWrong(text).value, text).toBeUndefined()
  })
})

describe('a time', () => {
  it('in another form is put right', () => {
    const pairs = [
      ['22.30', '22:30'],
      ['2230', '22:30'],
      ['22h30', '22:30'],
      ['730', '07:30'],
      ['10 pm', '10:00 pm'],
      ['10pm', '10:00 pm'],
      ['4h', '04:00'],
      ['22;30', '22:30'],
      ['Noon', '12:00'],
      ['midnight', '00:00'],
      ['24:00', '00:00']
    ]
    for (const [written, meant] of pairs) expect(clockWrong(written ?? '').value, written).toBe(meant)
  })

  it('that cannot be has no proposal', () => {
    for (const text of ['25:00', '22:60', '13:00 pm', 'dusk', '2575', ''])
      expect(clockWrong(text).value, text).toBeUndefined()
  })

  it('of a window is put right at either end', () => {
    expect(windowWrong('22-06').value).toBe('22:00-06:00')
    expect(windowWrong('10 pm to 6 am').value).toBe('10:00 pm-6:00 am')
    expect(windowWrong('22:00 – 24:00').value).toBeUndefined()
    expect(windowWrong('22:00 to 06:00').value).toBe('22:00-06:00')
    expect(windowWrong('22:00').value).toBeUndefined()
    expect(windowWrong('night').value).toBeUndefined()
  })
})
