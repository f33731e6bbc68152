import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { absent, isAbsent, isPresent } from '../../../src/base/absent.ts'
import { expectedReading, expectedReadingCard } from '../../../src/domain/wire/expected-reading.ts'
import type { ReadingFacts } from '../../../src/domain/wire/expected-reading.ts'

function reading(facts: ReadingFacts) {
  const found = expectedReading(facts)
  if (!isPresent(found)) throw new Error(found.reason)
  return found.value
}

/** 1 + 0.00393 (T − 20), NBS Handbook 100 (1966), at 0 and 35 °C. */
const COLD = 0.9214
const WARM = 1.05895

describe('the expected reading without a closeout reading', () => {
  it('at the controller is coil and wires, with the coil 20 % either way and copper from 0 to 35 °C', () => {
    const found = reading({ coilOhm: 6, wireOhm: 0.726 })
    expect(found.expectedOhm).toBeCloseTo(6.726, 9)
    expect(found.leastOhm).toBeCloseTo((4.8 + 0.726) * COLD, 9)
    expect(found.mostOhm).toBeCloseTo((7.2 + 0.726) * WARM, 9)
    expect(found.heldAgainst).toBe('coil and wire')
  })

  it('at the valve is the coil alone', () => {
    const found = reading({ coilOhm: 4.2, wireOhm: 0 })
    expect(found.expectedOhm).toBe(4.2)
    expect(found.leastOhm).toBeCloseTo(4.2 * 0.8 * COLD, 9)
    expect(found.mostOhm).toBeCloseTo(4.2 * 1.2 * WARM, 9)
  })

  it('gives the reason where the coil or the wire is not known, and where both are not', () => {
    const noCoil = absent('the coil resistance is not stated')
    const noWire = absent('no wire is recorded')
    expect(expectedReading({ coilOhm: noCoil, wireOhm: 1 })).toEqual(noCoil)
    expect(expectedReading({ coilOhm: 6, wireOhm: noWire })).toEqual(noWire)
    expect(expectedReading({ coilOhm: noCoil, wireOhm: noWire })).toEqual(noCoil)
  })

  it('takes no coil of 0 Ω and no wire below 0', () => {
    expect(isAbsent(expectedReading({ coilOhm: 0, wireOhm: 1 }))).toBe(true)
    expect(isAbsent(expectedReading({ coilOhm: 6, wireOhm: -0.1 }))).toBe(true)
    expect(isAbsent(expectedReading({ coilOhm: 6, wireOhm: 1, baselineOhm: 0 }))).toBe(true)
  })
})

describe('the expected reading with a closeout reading', () => {
  it('is that reading, 20 % either way', () => {
    const found = reading({ coilOhm: 4.2, wireOhm: 2.01, baselineOhm: 6.3 })
    expect(found).toMatchObject({ expectedOhm: 6.3, heldAgainst: 'closeout reading' })
    expect(found.leastOhm).toBeCloseTo(5.04, 9)
    expect(found.mostOhm).toBeCloseTo(7.56, 9)
    expect(found.baselineOff).toBeUndefined()
  })

  it('stands alone where coil or wire is not known', () => {
    const facts = { coilOhm: absent('not stated'), wireOhm: absent('not recorded'), baselineOhm: 6 }
    expect(reading(facts)).toMatchObject({ expectedOhm: 6, heldAgainst: 'closeout reading' })
  })

  it('is left out where coil and wire cannot give it: 33 Ω on a coil of 4.2 Ω is another coil', () => {
    const found = reading({ coilOhm: 4.2, wireOhm: 0, baselineOhm: 33 })
    expect(found).toMatchObject({ expectedOhm: 4.2, heldAgainst: 'coil and wire', baselineOff: true })
    expect(found.mostOhm).toBeLessThan(33)
  })

  it('counts at the very end of what coil and wire can give, and not beyond', () => {
    const { mostOhm, leastOhm } = reading({ coilOhm: 6, wireOhm: 1 })
    for (const baselineOhm of [mostOhm, leastOhm])
      expect(reading({ coilOhm: 6, wireOhm: 1, baselineOhm }).heldAgainst).toBe('closeout reading')
    for (const baselineOhm of [mostOhm * 1.001, leastOhm * 0.999])
      expect(reading({ coilOhm: 6, wireOhm: 1, baselineOhm }).baselineOff).toBe(true)
  })
})

describe('the band', () => {
  it('holds what is expected, whatever coil, wire and closeout reading', () => {
    const ohm = fc.double({ min: 0.1, max: 200, noNaN: true })
    fc.assert(
      fc.property(ohm, ohm, fc.option(ohm, { nil: undefined }), (coilOhm, wireOhm, baselineOhm) => {
        const found = reading({ coilOhm, wireOhm, ...(baselineOhm === undefined ? {} : { baselineOhm }) })
        expect(found.leastOhm).toBeLessThan(found.expectedOhm)
        expect(found.mostOhm).toBeGreaterThan(found.expectedOhm)
      })
    )
  })

  it('shows in its steps what it is around, and what was left out', () => {
    const off = expectedReading({ coilOhm: 4.2, wireOhm: 0, baselineOhm: 33 })
    if (isAbsent(off)) throw new Error(off.reason)
    expect(off.steps.at(-1)).toContain('left out')
    const run = expectedReadingCard.run({ coil: 4.2, baseline: 4.3 })
    if (isAbsent(run)) throw new Error(run.reason)
    expect(run.value['held-against']).toBe('closeout reading')
    expect(run.steps.join(' ')).toMatch(/3\.44\u00a0Ω to 5\.16\u00a0Ω/u)
  })
})
