import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { batteryKind, sameBattery } from '../../../src/domain/power/battery-kind.ts'
import { curvedLifeDays, lifeDays, pulseLifeDays } from '../../../src/domain/power/life.ts'
import { pulsesOnWateringDay, pulsesPerDay, shareOfDays } from '../../../src/domain/power/pulses-per-day.ts'
import { selfDischargeAt } from '../../../src/domain/power/self-discharge.ts'
import { BATTERIES } from '../../../src/reference/batteries.ts'
import { SOURCES } from '../../../src/reference/sources.ts'
import { date } from '../../../src/units/date.ts'
import { calc, calcNumber, calcOrAbsent } from '../../support/calc.ts'

const positive = fc.double({ min: 0.001, max: 10_000, noNaN: true })
const fraction = fc.double({ min: 0, max: 0.75, noNaN: true })

describe('life of a set', () => {
  it('counted linearly is never longer than by the curve up to 75 % lost in a year, so the safer one sets the date', () => {
    fc.assert(
      fc.property(
        positive,
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        positive,
        fraction,
        (capacityMah, usable, drawnMahPerDay, yearlyLoss) => {
          const drain = { capacityMah, usable, drawnMahPerDay, yearlyLoss }
          expect(lifeDays(drain)).toBeLessThanOrEqual(curvedLifeDays(drain) * (1 + 1e-9))
        }
      )
    )
  })

  it('never grows with more drain, more loss or less capacity', () => {
    fc.assert(
      fc.property(positive, positive, fraction, positive, (capacityMah, drawnMahPerDay, yearlyLoss, more) => {
        const drain = { capacityMah, usable: 1, drawnMahPerDay, yearlyLoss }
        const days = lifeDays(drain)
        expect(lifeDays({ ...drain, drawnMahPerDay: drawnMahPerDay + more })).toBeLessThanOrEqual(days)
        expect(lifeDays({ ...drain, yearlyLoss: yearlyLoss + more })).toBeLessThanOrEqual(days)
        expect(lifeDays({ ...drain, capacityMah: capacityMah + more })).toBeGreaterThanOrEqual(days)
      })
    )
  })

  it('by pulses counts whole days, and an exact division is not lost to rounding', () => {
    expect(pulseLifeDays(8000, 48)).toBe(166)
    expect(pulseLifeDays(8000, 50)).toBe(160)
    expect(pulseLifeDays(3, 0.1 * 3)).toBe(10)
    expect(pulseLifeDays(47, 48)).toBe(0)
  })

  it('takes the shorter where both a capacity and a number of pulses are given', () => {
    const capacity = { capacity: '565 mAh', standing: '20 µA' }
    const pulses = { 'rated-pulses': '8000', 'pulses-per-day': '48' }
    expect(calcNumber('battery-life', { ...capacity, ...pulses }, 'days')).toBe(166)
    expect(calcNumber('battery-life', { ...capacity, standing: '1 mA', ...pulses }, 'days')).toBe(23)
  })

  it('halves below 0 °C and not at it, and moves the loss with the temperature', () => {
    const set = { capacity: '1000 mAh', standing: '100 µA' }
    const at = (temperature: string) => calcNumber('battery-life', { ...set, temperature }, 'days')
    expect(at('0 °C')).toBe(416)
    expect(at('-1 °C')).toBe(208)
    expect(at('32 °F')).toBe(416)
    const losing = { ...set, 'self-discharge': '10 %' }
    expect(calcNumber('battery-life', { ...losing, temperature: '35 °C' }, 'days')).toBe(339)
    expect(calcNumber('battery-life', losing, 'days')).toBe(374)
    expect(calcNumber('battery-life', { ...losing, temperature: '5 °C' }, 'days')).toBe(374)
  })

  it.each([
    ['nothing given', {}, /give a capacity/u],
    ['nothing drawn or lost', { capacity: '565 mAh' }, /nothing is drawn/u],
    [
      'more than all of it usable',
      { capacity: '565 mAh', usable: '120 %', standing: '1 mA' },
      /usable cannot be more/u
    ],
    ['all lost in a year', { capacity: '565 mAh', 'self-discharge': '100 %' }, /less than 100 %/u],
    ['pulses stated and none sent', { 'rated-pulses': '8000' }, /needs pulses-per-day/u],
    ['pulses stated and zero sent', { 'rated-pulses': '8000', 'pulses-per-day': '0' }, /must be more than zero/u]
  ])('says why there is no figure: %s', (_, inputs, said) => {
    expect(calcOrAbsent('battery-life', inputs)).toMatch(said)
  })
})

describe('charge of a pulse', () => {
  it('is told from current and time without an energy, or from a capacitor with one', () => {
    expect(calc('pulse-charge', { current: '500 mA', time: '60 ms' })).toEqual({ charge: expect.closeTo(0.008333, 6) })
    expect(calcOrAbsent('pulse-charge', { current: '500 mA' })).toMatch(/give current and time/u)
  })

  it('cannot come from a booster that gives more than it takes', () => {
    const capacitor = { capacitor: '4700 µF', 'capacitor-volts': '12 V', 'battery-volts': '9 V' }
    expect(calcOrAbsent('pulse-charge', { ...capacitor, efficiency: '101 %' })).toBe(
      'efficiency cannot be more than 100 %'
    )
  })
})

describe('pulses a day', () => {
  it('are one to open and one to close for each cycle at each start', () => {
    const program = { days: { kind: 'every-day' }, starts: 4, cycles: 6, masterValve: false } as const
    expect(pulsesOnWateringDay(program)).toBe(48)
    expect(pulsesOnWateringDay({ ...program, masterValve: true })).toBe(56)
    expect(pulsesOnWateringDay({ ...program, cycles: 0, masterValve: true })).toBe(0)
    expect(pulsesPerDay([program, { ...program, days: { kind: 'weekdays', days: [1, 3, 5] } }])).toBeCloseTo(
      48 + (48 * 3) / 7,
      9
    )
    expect(pulsesPerDay([])).toBe(0)
  })

  it('are spread over the days between by the rule of the program', () => {
    expect(shareOfDays({ kind: 'every-n-days', every: 3, from: date('2026-04-02') })).toBeCloseTo(1 / 3, 12)
    expect(shareOfDays({ kind: 'weekdays', days: [1, 1, 4] })).toBeCloseTo(2 / 7, 12)
  })

  it('count odd and even dates of a common year as the calendar has them', () => {
    const days = Array.from({ length: 365 }, (_, index) => new Date(Date.UTC(2026, 0, 1 + index)).getUTCDate())
    expect(shareOfDays({ kind: 'odd-dates', withTurnover: true }) * 365).toBeCloseTo(
      days.filter(day => day % 2 === 1).length,
      9
    )
    expect(shareOfDays({ kind: 'odd-dates', withTurnover: false }) * 365).toBeCloseTo(
      days.filter(day => day % 2 === 1 && day !== 31).length,
      9
    )
    expect(shareOfDays({ kind: 'even-dates' }) * 365).toBeCloseTo(days.filter(day => day % 2 === 0).length, 9)
  })
})

describe('kinds of battery', () => {
  it('are known by name, by designation and however they are spaced', () => {
    const names = ['9 V alkaline', '9V Alkaline', '6LR61', ' 6lr61 ', '6LF22'].map(name => batteryKind(name)?.name)
    expect(new Set(names)).toEqual(new Set(['9 V alkaline']))
    expect(batteryKind('LR6')?.name).toBe('AA alkaline')
    expect(batteryKind('potato')).toBeUndefined()
  })

  it('are the same under two names, and words not known here are compared as words', () => {
    expect(sameBattery('9 V alkaline', '6LR61')).toBe(true)
    expect(sameBattery('9 V alkaline', '9 V lithium')).toBe(false)
    expect(sameBattery('CR123A', 'cr-123a')).toBe(true)
    expect(sameBattery('CR123A', '6LR61')).toBe(false)
  })

  it('have no name twice, a condition beside each capacity and a source that the register holds', () => {
    const names = BATTERIES.flatMap(kind => [kind.name, ...kind.aliases]).map(name => name.toLowerCase())
    expect(new Set(names).size).toBe(names.length)
    expect(BATTERIES.filter(kind => kind.condition === '' || !Object.hasOwn(SOURCES, kind.source))).toEqual([])
  })

  it('lose the same at 25 °C as stated there', () => {
    expect(selfDischargeAt(0.03, 25)).toBe(0.03)
  })
})
