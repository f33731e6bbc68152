import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isPresent } from '../../../src/base/absent.ts'
import { judge } from '../../../src/domain/wire/limit.ts'
import type { OutputLimit } from '../../../src/domain/wire/limit.ts'
import { loopOhm, withSplices } from '../../../src/domain/wire/wire-loop.ts'
import { calc } from '../../support/calc.ts'
import { anyLengthM, anyMake, anyOhm, anySize } from './arbitrary.ts'

const SOLID = { conductor: 'solid', coating: 'plain' } as const

function judged(limit: OutputLimit, run: Parameters<typeof judge>[1]) {
  const found = judge(limit, run, SOLID)
  if (!isPresent(found)) throw new Error(found.reason)
  return found
}

describe('splices that were measured', () => {
  it('add to the loop what they read', () => {
    expect(calc('wire-loop', { size: '1.5 mm²', length: '100 m', splices: '0.2 ohm' })['loop']).toBeCloseTo(2.62, 9)
  })

  it('leave the loop alone where nothing was measured', () => {
    const loop = { value: 2.42, steps: ['x'] }
    expect(withSplices(loop, 0)).toBe(loop)
  })

  it('do not grow with the run: at the longest length it is exactly at its limit', () => {
    fc.assert(
      fc.property(anyLengthM, fc.double({ min: 0, max: 1, noNaN: true }), anyOhm, (lengthM, spliceOhm, ohm) => {
        const wireOhm = lengthM * 0.0242
        const limit = { form: 'loop', ohm: ohm + 1, coils: 1 } as const
        const { longestM } = judged(limit, { lengthM, loopOhm: wireOhm + spliceOhm, spliceOhm })
        expect(longestM * 0.0242 + spliceOhm).toBeCloseTo(ohm + 1, 6)
      })
    )
  })

  it('that alone are over the limit leave no length at all', () => {
    expect(judged({ form: 'loop', ohm: 1, coils: 1 }, { lengthM: 10, loopOhm: 2.5, spliceOhm: 2 }).longestM).toBe(0)
  })
})

describe('a longer run', () => {
  it('never passes where a shorter one of the same wire fails', () => {
    const anyLimit: fc.Arbitrary<OutputLimit> = fc.oneof(
      anyOhm.map(ohm => ({ form: 'loop', ohm, coils: 1 }) as const),
      anyLengthM.map(lengthM => ({ form: 'length', lengthM, unit: 'm', coils: 1 }) as const),
      anyOhm.map(coilOhm => ({ form: 'voltage', pulseVolt: 9, lowestVolt: 5.5, coilOhm }) as const)
    )
    fc.assert(
      fc.property(anySize, anyMake, anyLengthM, anyLengthM, anyLimit, (size, make, one, other, limit) => {
        const [short, long] = [Math.min(one, other), Math.max(one, other)]
        const passes = (lengthM: number): boolean | undefined => {
          const loop = loopOhm([{ size, lengthM, unit: 'm', make }], 20)
          if (!isPresent(loop)) return undefined
          const found = judge(limit, { lengthM, loopOhm: loop.value }, make)
          return isPresent(found) ? found.passes : undefined
        }
        if (passes(short) === false) expect(passes(long)).toBe(false)
      })
    )
  })
})
