import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAbsent, isPresent } from '../../../src/base/absent.ts'
import { ohmPerKft } from '../../../src/domain/wire/nec.ts'
import { resistancePerM } from '../../../src/domain/wire/resistance.ts'
import type { WireMake } from '../../../src/domain/wire/make.ts'
import type { WireSize } from '../../../src/units/wire-size.ts'
import { anyMake, anySize } from './arbitrary.ts'

const SOLID: WireMake = { conductor: 'solid', coating: 'plain' }
const STRANDED: WireMake = { conductor: 'stranded', coating: 'plain' }
const TINNED: WireMake = { conductor: 'stranded', coating: 'tinned' }

function wire(size: WireSize, make: WireMake, temperatureC = 20) {
  const found = resistancePerM(size, make, temperatureC)
  if (!isPresent(found)) throw new Error(found.reason)
  return found
}

describe('resistance of one wire', () => {
  it('takes an IEC size from the table, and says so', () => {
    const found = wire({ kind: 'area', mm2: 0.75 }, SOLID)
    expect(found.ohmPerM * 1000).toBeCloseTo(24.5, 9)
    expect(found.basis).toBe('IEC 60228, class 1 and 2, plain copper, at 20 °C')
    expect(found.source).toBe('iec-60228')
  })

  it('takes stranded mm² from classes 1 and 2, flexible from class 5, tinned from the coated column', () => {
    const size: WireSize = { kind: 'area', mm2: 1.5 }
    expect(wire(size, STRANDED).ohmPerM * 1000).toBeCloseTo(12.1, 9)
    expect(wire(size, TINNED).ohmPerM * 1000).toBeCloseTo(12.2, 9)
    expect(wire(size, { conductor: 'flexible', coating: 'plain' }).ohmPerM * 1000).toBeCloseTo(13.3, 9)
    expect(wire(size, { conductor: 'flexible', coating: 'tinned' }).ohmPerM * 1000).toBeCloseTo(13.7, 9)
  })

  it('takes an area that is in no table, and a diameter, as solid copper', () => {
    expect(wire({ kind: 'area', mm2: 0.8 }, SOLID).ohmPerM).toBeCloseTo(1 / 58 / 0.8, 12)
    expect(wire({ kind: 'diameter', mm: 0.8 }, SOLID).ohmPerM).toBeCloseTo(1 / 58 / (Math.PI * 0.16), 12)
    expect(wire({ kind: 'area', mm2: 0.8 }, SOLID).source).toBe('nbs-100')
  })

  it('takes stranded and tinned gauges from NEC table 8, brought from 75 to 20 °C by its own factor', () => {
    const factor = 1 + 0.00323 * (20 - 75)
    expect(ohmPerKft(wire({ kind: 'awg', gauge: 14 }, STRANDED).ohmPerM)).toBeCloseTo(3.14 * factor, 9)
    expect(ohmPerKft(wire({ kind: 'awg', gauge: 14 }, TINNED).ohmPerM)).toBeCloseTo(3.26 * factor, 9)
    expect(ohmPerKft(wire({ kind: 'awg', gauge: 12 }, { conductor: 'solid', coating: 'tinned' }).ohmPerM)).toBeCloseTo(
      2.01 * factor,
      9
    )
    expect(wire({ kind: 'awg', gauge: 14 }, STRANDED).basis).toContain('from 75 °C by 0.00323 per °C')
  })

  it('adds 2 % to a stranded gauge that the table does not print, and calls it a rule of the project', () => {
    const [solid, stranded] = [wire({ kind: 'awg', gauge: 20 }, SOLID), wire({ kind: 'awg', gauge: 20 }, STRANDED)]
    expect(stranded.ohmPerM / solid.ohmPerM).toBeCloseTo(1.02, 9)
    expect(stranded.basis).toContain('rule of this project')
    expect(stranded.source).toBe('project-rule')
  })

  it('has no figure for a tinned gauge that the table does not print, and says what to do', () => {
    const found = resistancePerM({ kind: 'awg', gauge: 20 }, TINNED, 20)
    expect(isAbsent(found) && found.reason).toMatch(/tinned stranded 20.AWG; measure the run/u)
  })

  it('counts a pair by its gauge', () => {
    expect(wire({ kind: 'pair', gauge: 12, mm2: 2.05 }, SOLID)).toEqual(wire({ kind: 'awg', gauge: 12 }, SOLID))
  })

  it('gives no figure for a bare mm, only the reason', () => {
    const found = resistancePerM({ kind: 'ambiguous', mm: 0.8 }, SOLID, 20)
    expect(isAbsent(found) && found.reason).toBe(
      '“0.8 mm” may be a diameter or an area; write “0.8 mm²” or “0.8 mm diameter”'
    )
  })

  it('stops at −60 and 200 °C, the ends included', () => {
    const size: WireSize = { kind: 'awg', gauge: 14 }
    expect([-60, 200].map(t => isPresent(resistancePerM(size, SOLID, t)))).toEqual([true, true])
    expect([-60.1, 200.1].map(t => isPresent(resistancePerM(size, SOLID, t)))).toEqual([false, false])
  })

  it('never falls when the wire gets warmer', () => {
    const degrees = fc.double({ min: -60, max: 200, noNaN: true })
    fc.assert(
      fc.property(anySize, anyMake, degrees, degrees, (size, make, one, other) => {
        const [cold, warm] = [Math.min(one, other), Math.max(one, other)]
        const [low, high] = [resistancePerM(size, make, cold), resistancePerM(size, make, warm)]
        expect(isAbsent(low)).toBe(isAbsent(high))
        if (isAbsent(low) || isAbsent(high)) return
        expect(high.ohmPerM).toBeGreaterThanOrEqual(low.ohmPerM)
        expect(low.ohmPerM).toBeGreaterThan(0)
      })
    )
  })

  it('never rises when the wire gets thicker, in either ladder and any make', () => {
    const gauge = fc.integer({ min: -3, max: 40 })
    fc.assert(
      fc.property(gauge, gauge, fc.constantFrom('solid', 'stranded'), (one, other, conductor) => {
        const make: WireMake = { conductor, coating: 'plain' }
        const [thick, thin] = [Math.min(one, other), Math.max(one, other)]
        expect(wire({ kind: 'awg', gauge: thick }, make).ohmPerM).toBeLessThanOrEqual(
          wire({ kind: 'awg', gauge: thin }, make).ohmPerM
        )
      })
    )
  })
})
