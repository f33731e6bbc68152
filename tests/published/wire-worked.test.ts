import { describe, expect, it } from 'vitest'
import { COPPER } from '../../src/reference/copper.ts'
import { quantity } from '../../src/units/quantity.ts'
import { calc, calcNumber } from '../support/calc.ts'
import { expectClose } from '../support/close.ts'

/** What follows from sizes, temperatures and limits, worked on paper or printed in a table beside other assumptions. */
const ohmPerKm = (size: string, more: Record<string, string> = {}): number =>
  calcNumber('resistance-at', { size, ...more }, 'per-km')
const loopOhm = (size: string, length: string, more: Record<string, string> = {}): number =>
  calcNumber('wire-loop', { size, length, ...more }, 'loop')
const feet = (m: number): number => m / quantity(1, 'ft', 'length').si

describe('copper by temperature (NBS Handbook 100, 1966: 0.00393 for each degree from 20 °C; 6 values)', () => {
  it.each([
    ['0 °C', 0.9214],
    ['10 °C', 0.9607],
    ['30 °C', 1.0393],
    ['40 °C', 1.0786],
    ['50 °C', 1.1179],
    ['75 °C', 1.2162]
  ])('at %s it has %d times the ohms of 20 °C, to four figures', (temperature, factor) => {
    expectClose(ohmPerKm('12 AWG', { temperature }) / ohmPerKm('12 AWG'), factor, 0.006)
  })
})

describe('volt drop of flexible cores at 90 °C (BS 7671:2018 table 4F2B, read in a copy; 3 values)', () => {
  // The table does not say its cores; tinned class 5 cores of IEC 60228 at 90 °C come within 3 %.
  it.each([
    ['4 mm²', 13.2],
    ['6 mm²', 8.5],
    ['10 mm²', 5.1]
  ])('%s drops %d mV for an ampere and a meter', (size, printed) => {
    const core = ohmPerKm(size, { temperature: '90 °C', conductor: 'flexible', coating: 'tinned' })
    expectClose(2 * core, printed, 3)
  })
})

describe('constants of a drop formula in ohms and circular mils (an exam course: K of 12.9 at 75 °C; 2 values)', () => {
  const k = (temperature: string) => calcNumber('resistance-at', { size: '12 AWG', temperature }, 'per-kft') * 6.53

  it('K of 12 AWG with 6,530 circular mils is 10.37 at 20 °C, to its last figure', () => {
    expectClose(k('20 °C'), 10.37, 0.05)
  })

  it('and at 75 °C 12.6 for solid copper, 2 % less than the 12.9 printed for cores of seven wires', () => {
    expectClose(k('75 °C') * (1.98 / 1.93), 12.9, 0.4)
  })
})

describe('sizes that are taken for each other (worked on paper; 4 values)', () => {
  it('12 AWG taken for 2.05 mm² is 8.41 Ω/km, 61 % too much', () => {
    const taken = 1000 / 58 / 2.05
    expectClose(taken, 8.41, 0.1)
    expectClose(taken / ohmPerKm('12 AWG') - 1, 0.61, 1)
  })

  it('2.5 mm² taken for a diameter is 3.51 Ω/km, 47 % of the figure of its class', () => {
    expectClose(ohmPerKm('2.5 mm diameter'), 3.51, 0.1)
    expectClose(ohmPerKm('2.5 mm diameter') / ohmPerKm('2.5 mm²'), 0.474, 0.1)
  })

  it('a run of 2.5 mm² has 42 % more ohms than one of 12 AWG', () => {
    expectClose(ohmPerKm('2.5 mm²') / ohmPerKm('12 AWG'), 1.42, 0.2)
  })
})

describe('one limit, told as a length at two gauges (trade limits: common practice, no source; 9 values)', () => {
  it('2200 ft of 12 AWG and 1380 ft of 14 AWG: the lengths are as 1.5942 to 1, the areas as 1.5901 to 1', () => {
    expect(2200 / 1380).toBeCloseTo(1.5942, 4)
    expectClose(ohmPerKm('14 AWG') / ohmPerKm('12 AWG'), 1.5901, 0.005)
  })

  it('at 75 °C they are 8.49 and 8.47 Ω, in cores of seven wires 8.71 and 8.67, and still agree within 0.5 %', () => {
    const hot = [loopOhm('12 AWG', '2200 ft'), loopOhm('14 AWG', '1380 ft')].map(
      ohm => ohm * (1 + COPPER.perC * (75 - COPPER.baseC))
    )
    expectClose(hot[0] ?? 0, 8.49, 0.2)
    expectClose(hot[1] ?? 0, 8.47, 0.2)
    const stranded = [2 * 2.2 * 1.98, 2 * 1.38 * 3.14]
    expectClose(stranded[0] ?? 0, 8.71, 0.05)
    expectClose(stranded[1] ?? 0, 8.67, 0.05)
    expectClose(hot[0] ?? 0, hot[1] ?? 1, 0.5)
    expectClose(stranded[0] ?? 0, stranded[1] ?? 1, 0.6)
  })

  it('7 Ω with the 75 °C column would be 1140 ft of 14 AWG', () => {
    expectClose((7 / (2 * 3.07)) * 1000, 1140, 0.05)
  })

  it('100 ft under a lid is 1.28 Ω in 18 AWG and 0.505 Ω in 14 AWG: a cap of length, not of ohms', () => {
    expectClose(loopOhm('18 AWG', '100 ft'), 1.28, 0.3)
    expectClose(loopOhm('14 AWG', '100 ft'), 0.505, 0.05)
    expectClose(feet(30.48), 100, 0.001)
  })
})

describe('pulses out of a capacitor (2 values)', () => {
  it('1 A for 50 ms within 1 V takes 50,000 µF (an electronics forum’s answer): the charge of the pulse over the volt', () => {
    const charge = calcNumber('pulse-charge', { current: '1 A', time: '50 ms' }, 'charge')
    const coulomb = charge * 3.6
    expectClose((coulomb / 1) * 1e6, 50_000, 0.001)
  })

  it('4700 µF at 12 V hold 0.3384 J', () => {
    const capacitor = { capacitor: '4700 µF', 'capacitor-volts': '12 V', efficiency: '70 %', 'battery-volts': '9 V' }
    expectClose(calcNumber('pulse-charge', capacitor, 'energy'), 0.3384, 0.01)
  })
})

describe('codes that hold a text for where there is no signal (ISO/IEC 18004, worked on paper; 4 values)', () => {
  it.each([
    ['M', '41.4 mm', 69, 46.2],
    ['Q', '48.6 mm', 81, 53.4]
  ])(
    '300 bytes at level %s, %s wide: %d modules of 0.6 mm, %d mm with the quiet zone',
    (level, width, modules, whole) => {
      const code = calc('qr-size', { length: '300', level, width })
      expect(code['modules']).toBe(modules)
      expectClose(code['full-width'] as number, whole, 0.1)
    }
  )
})
