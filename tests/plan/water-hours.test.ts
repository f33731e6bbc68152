import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAbsent } from '../../src/base/absent.ts'
import { hoursAllowed } from '../../src/domain/schedule/rules.ts'
import { soilWater, soilWaterMost } from '../../src/domain/water/soil-lookup.ts'
import { windowLength } from '../../src/units/clock.ts'
import { SOIL_TEXTURES } from '../../src/reference/soil.ts'
import type { WateringRule } from '../../src/model/site.ts'
import { allowedHours as allowedIn } from '../../src/plan/water-hours.ts'

const AT = { file: 'sites/bare/site.md', path: [] }
const rule = (facts: Partial<WateringRule>): WateringRule => ({ at: AT, windows: [], ...facts })
const allowedHours = (rules: readonly WateringRule[]) => allowedIn(hoursAllowed(rules, {})(0))
const window = (from: number, to: number) => ({ from: from * 60, to: to * 60 })

describe('the hours allowed in a day', () => {
  it('of a window across midnight are its length, and the night begins where it begins', () => {
    expect(allowedHours([rule({ windows: [window(22, 6)] })])).toEqual({ allowedS: 8 * 3600, nightFrom: 22 * 60 })
  })

  it('of a window within a day are its length', () => {
    expect(allowedHours([rule({ windows: [window(3.5, 7.5)] })])).toEqual({ allowedS: 4 * 3600, nightFrom: 210 })
  })

  it('of two windows are both, and the night begins after the longer gap', () => {
    const rules = [rule({ windows: [window(4, 6), window(20, 22)] })]
    expect(allowedHours(rules)).toEqual({ allowedS: 4 * 3600, nightFrom: 20 * 60 })
  })

  it('of windows that overlap count once', () => {
    expect(allowedHours([rule({ windows: [window(1, 4), window(3, 5)] })])).toMatchObject({ allowedS: 4 * 3600 })
  })

  it('of two rules are those that both allow', () => {
    const rules = [rule({ windows: [window(22, 6)] }), rule({ barred: [window(0, 5)] })]
    expect(allowedHours(rules)).toEqual({ allowedS: 3 * 3600, nightFrom: 22 * 60 })
  })

  it('are not limited without a rule, by a rule of days alone, or by a window of the whole day', () => {
    const reason = { absent: true, reason: 'no rule limits the hours' }
    expect(allowedHours([])).toEqual(reason)
    expect(allowedHours([rule({ days: { kind: 'even-dates' } })])).toEqual(reason)
    expect(allowedHours([rule({ windows: [window(6, 6)] })])).toEqual(reason)
  })

  it('are absent where rules leave none', () => {
    const rules = [rule({ windows: [window(1, 3)] }), rule({ windows: [window(3, 5)] })]
    expect(allowedHours(rules)).toEqual({ absent: true, reason: 'the rules leave no hour' })
  })

  it('of one window that is not the whole day are always its length, from its beginning', () => {
    const minute = fc.integer({ min: 0, max: 1439 })
    fc.assert(
      fc.property(minute, minute, (from, to) => {
        fc.pre(from !== to)
        const hours = allowedHours([rule({ windows: [{ from, to }] })])
        expect(hours).toEqual({ allowedS: windowLength({ from, to }) * 60, nightFrom: from })
      })
    )
  })
})

describe('the most that a texture may hold', () => {
  it('is never less than the least, for any texture of the table', () => {
    for (const texture of SOIL_TEXTURES) {
      const [least, most] = [soilWater(texture), soilWaterMost(texture)]
      if (isAbsent(least) || isAbsent(most)) throw new Error(texture)
      expect(most).toBeGreaterThan(least)
    }
  })

  it('is absent for a texture that no table has', () => {
    expect(soilWaterMost('bark mix')).toMatchObject({ absent: true })
  })

  it('of sandy loam is 1.75 in in a foot', () => {
    expect(soilWaterMost('Sandy loam')).toBeCloseTo(1.75 / 12, 12)
  })
})
