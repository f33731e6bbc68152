import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAbsent, isPresent } from '../../../src/base/absent.ts'
import { at20Ohm, readingChange } from '../../../src/domain/wire/reading-trend.ts'
import type { TakenReading } from '../../../src/domain/wire/reading-trend.ts'

function change(reading: TakenReading, baseline: TakenReading): number {
  const worked = readingChange(reading, baseline)
  if (!isPresent(worked)) throw new Error(worked.reason)
  return worked.value.change
}

describe('a reading taken to 20 °C', () => {
  it('at 20 °C stays what it was', () => {
    expect(at20Ohm({ ohm: 6.4, temperatureC: 20 })).toBe(6.4)
  })

  it('without a temperature is not taken anywhere', () => {
    expect(at20Ohm({ ohm: 6.4 })).toBeUndefined()
  })

  // IEC 60228 rounds its factors to three figures and rests on 0.004 per °C, where NBS Handbook 100 has 0.00393: 0.15 % at 5 °C.
  it.each([
    [5, 1.064],
    [10, 1.042],
    [30, 0.962],
    [50, 0.893],
    [75, 0.82]
  ])('from %d °C agrees with the factor of IEC 60228, %d, within 0.5 %%', (temperatureC, factor) => {
    const at20 = at20Ohm({ ohm: 1, temperatureC }) ?? 0
    expect(Math.abs(at20 / factor - 1)).toBeLessThan(0.005)
  })
})

describe('the change since the first reading', () => {
  it('is nothing where only the day was warmer', () => {
    const warm = 6.4 * (1 + 0.00393 * 15)
    expect(change({ ohm: warm, temperatureC: 35 }, { ohm: 6.4, temperatureC: 20 })).toBeCloseTo(0, 12)
  })

  it('is that of the figures as they stand where one temperature is missing', () => {
    expect(change({ ohm: 7.04, temperatureC: 35 }, { ohm: 6.4 })).toBeCloseTo(0.1, 12)
  })

  it('is absent for a reading of nothing, and for a temperature that no copper in the ground has', () => {
    expect(isAbsent(readingChange({ ohm: 0 }, { ohm: 6 }))).toBe(true)
    expect(isAbsent(readingChange({ ohm: 6, temperatureC: 201 }, { ohm: 6 }))).toBe(true)
    expect(isAbsent(readingChange({ ohm: 6, temperatureC: 200 }, { ohm: 6 }))).toBe(false)
  })

  it('has the sign of the difference, and none for a reading held against itself', () => {
    const ohm = fc.double({ min: 0.1, max: 200, noNaN: true })
    const temperatureC = fc.double({ min: -40, max: 60, noNaN: true })
    fc.assert(
      fc.property(ohm, ohm, temperatureC, (one, other, degrees) => {
        const found = change({ ohm: one, temperatureC: degrees }, { ohm: other, temperatureC: degrees })
        expect(Math.sign(Math.round(found * 1e9))).toBe(Math.sign(Math.round((one / other - 1) * 1e9)))
        expect(change({ ohm: one, temperatureC: degrees }, { ohm: one, temperatureC: degrees })).toBe(0)
      })
    )
  })
})
