import { describe, expect, it } from 'vitest'
import { dueDate } from '../../src/domain/dates/due-date.ts'
import { isPresent } from '../../src/base/absent.ts'
import { sum } from '../../src/base/collections.ts'
import { BATTERIES, NINE_VOLT_ALKALINE_AT_100_MA } from '../../src/reference/batteries.ts'
import { curvedLifeDays, lifeDays, YEAR_DAYS } from '../../src/domain/power/life.ts'
import { selfDischargeAt } from '../../src/domain/power/self-discharge.ts'
import { addInterval, date, parseInterval } from '../../src/units/date.ts'
import { calc, calcNumber } from '../support/calc.ts'
import { expectClose } from '../support/close.ts'

const drain = (capacityMah: number, mahPerHour: number) => ({
  capacityMah,
  usable: 1,
  drawnMahPerDay: 24 * mahPerHour,
  yearlyLoss: 0
})

describe('battery life, published cases (B1, B3, B9, P11; 6 values)', () => {
  it('B1, P11: 300 mAh at 3 µA lasts 100,000 h, 11.41 years (an electronics forum’s worked answer), within 0.1 %', () => {
    expectClose(lifeDays(drain(300, 0.003)) * 24, 100_000, 0.1)
    expectClose(calcNumber('battery-life', { capacity: '300 mAh', standing: '3 µA' }, 'years'), 11.41, 0.1)
  })

  it('B3: 500 mAh at 10 mA lasts 50 h, and 35 h with the allowance of 0.7 (battery seller’s example; rule of thumb), exactly', () => {
    expect(lifeDays(drain(500, 10)) * 24).toBeCloseTo(50, 9)
    expect(lifeDays({ ...drain(500, 10), usable: 0.7 }) * 24).toBeCloseTo(35, 9)
  })

  it('B9: a field node of 2.9 mW on four AA cells of 13.2 Wh lasts 4552 h, 190 days (power from Sensors 2011, 11, 329), within 0.5 %', () => {
    const life = drain(2200, 2.9 / 6)
    expectClose(lifeDays(life) * 24, 4552, 0.5)
    expectClose(lifeDays(life), 190, 0.5)
    expect(calcNumber('battery-life', { capacity: '2200 mAh', standing: '0.48333 mA' }, 'days')).toBe(189)
  })
})

describe('battery life, cases worked on paper (B4, B6, B7, P12; 9 values)', () => {
  it('B4: B1 with 5 % a year lasts 8.99 years by the curve and 7.27 counted linearly, within 0.5 %', () => {
    const life = { ...drain(300, 0.003), yearlyLoss: 0.05 }
    expectClose(curvedLifeDays(life) / YEAR_DAYS, 8.99, 0.5)
    expectClose(lifeDays(life) / YEAR_DAYS, 7.27, 0.5)
  })

  it('B6, P12: the 9 V case draws 0.01492 mAh a pulse and 0.8381 mAh a day, and lasts 447 days, within 0.5 %', () => {
    const pulse = calcNumber(
      'pulse-charge',
      { capacitor: '4700 µF', 'capacitor-volts': '12 V', efficiency: '70 %', 'battery-volts': '9 V' },
      'charge'
    )
    expectClose(pulse, 0.01492, 0.5)
    const day = 24 * 0.02 + 24 * pulse
    expectClose(day, 0.8381, 0.5)
    expectClose((565 * 0.03) / YEAR_DAYS, 0.0464, 0.5)
    expectClose(lifeDays({ capacityMah: 565, usable: 0.7, drawnMahPerDay: day, yearlyLoss: 0.03 }), 447, 0.5)
  })

  it('B7: the AA case lasts 1581 days and is capped by 12 months', () => {
    const pulse = calcNumber('pulse-charge', { current: '500 mA', time: '60 ms' }, 'charge')
    expectClose(pulse, 0.00833, 0.5)
    const inputs = {
      capacity: '2200 mAh',
      usable: '70 %',
      standing: '30 µA',
      'pulses-per-day': '16',
      'pulse-charge': '0.0083333 mAh',
      'self-discharge': '2 %'
    }
    const days = calcNumber('battery-life', inputs, 'days')
    expectClose(days, 1581, 0.5)
    const due = calc('due-date', { fitted: '2026-05-01', 'life-days': String(days) })
    expect(due).toEqual({ due: '2027-05-01', because: 'interval' })
  })
})

describe('battery data (B10, B11; 3 values)', () => {
  it('B10: five retail 9 V alkalines gave 400 mAh on average at 100 mA (published discharge tests, 2024), exactly', () => {
    expect(sum(NINE_VOLT_ALKALINE_AT_100_MA) / NINE_VOLT_ALKALINE_AT_100_MA.length).toBe(400)
    const typical = BATTERIES.find(kind => kind.name === '9 V alkaline')?.capacityMah ?? 0
    expect(Math.max(...NINE_VOLT_ALKALINE_AT_100_MA)).toBeLessThan(typical)
  })

  it('B11: 2 % a year at 25 °C is 4 % at 35 °C and 0.5 % at 5 °C (doubling for 10 °C), exactly', () => {
    expect(selfDischargeAt(0.02, 35)).toBeCloseTo(0.04, 12)
    expect(selfDischargeAt(0.02, 5)).toBeCloseTo(0.005, 12)
  })
})

describe('what faulty calculators print is not met (4 values known to be wrong)', () => {
  it('2000 mAh with 10 % in reserve, 50 mA at 10 % duty and 3 % a month lasts 354.1 h, not 323', () => {
    const life = { capacityMah: 2000, usable: 0.9, drawnMahPerDay: 24 * 5, yearlyLoss: (0.03 * YEAR_DAYS) / 30 }
    expectClose(lifeDays(life) * 24, 354.1, 0.1)
  })

  it('2400 mAh at 80 mA for 0.1 % and 10 µA asleep lasts 26,670 h, 36 months, not eight', () => {
    expectClose(lifeDays(drain(2400, 80 * 0.001 + 0.01 * 0.999)) * 24, 26_670, 0.1)
  })

  it('25 A over 50 ft of 10 AWG loses 2.50 V, not 1.5; 50 A over 150 ft of 6 AWG on three phases 6.4 V, not 42.6', () => {
    const drop = calcNumber('voltage-drop', { length: '50 ft', current: '25 A', size: '10 AWG' }, 'drop')
    expectClose(drop, 2.5, 0.5)
    expectClose(
      (calcNumber('voltage-drop', { length: '150 ft', current: '50 A', resistance: '0.491 ohm/kft' }, 'drop') *
        Math.sqrt(3)) /
        2,
      6.4,
      0.5
    )
  })
})

describe('calendar arithmetic for due dates (P13, decisions of this project; 8 values)', () => {
  it.each([
    ['2024-02-29', '12 months', '2025-02-28'],
    ['2025-08-31', '6 months', '2026-02-28'],
    ['2023-08-31', '6 months', '2024-02-29'],
    ['2025-12-31', '2 months', '2026-02-28'],
    ['2025-01-31', '1 month', '2025-02-28'],
    ['2024-02-29', '4 years', '2028-02-29']
  ])('P13: %s and %s is %s: a month is clamped to its end', (from, interval, due) => {
    expect(addInterval(date(from), parseInterval(interval)!)).toBe(due)
    expect(calc('due-date', { fitted: from, interval })['due']).toBe(due)
  })

  it('the nursery: 8,000 pulses at 48 a day from 2026-02-02 are due 2026-07-18, not 2027-02-02', () => {
    const days = calcNumber('battery-life', { 'rated-pulses': '8000', 'pulses-per-day': '48' }, 'days')
    expect(days).toBe(166)
    const due = dueDate({ last: date('2026-02-02'), lifeDays: days })
    expect(isPresent(due) && due.value).toMatchObject({ dueOn: '2026-07-18', because: 'computed life' })
  })
})
