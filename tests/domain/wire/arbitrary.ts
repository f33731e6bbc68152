import fc from 'fast-check'
import { COATINGS, CONDUCTORS } from '../../../src/domain/wire/make.ts'
import type { WireMake } from '../../../src/domain/wire/make.ts'
import type { WireSize } from '../../../src/units/wire-size.ts'

const amount = fc.integer({ min: 1, max: 100_000 }).map(thousandths => thousandths / 1000)

/** Any size that can be computed with. */
export const anySize: fc.Arbitrary<WireSize> = fc.oneof(
  fc.integer({ min: -3, max: 40 }).map(gauge => ({ kind: 'awg', gauge }) as const),
  fc.constantFrom(0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10).map(mm2 => ({ kind: 'area', mm2 }) as const),
  amount.map(mm2 => ({ kind: 'area', mm2 }) as const),
  amount.map(mm => ({ kind: 'diameter', mm }) as const),
  fc.tuple(fc.integer({ min: -3, max: 40 }), amount).map(([gauge, mm2]) => ({ kind: 'pair', gauge, mm2 }) as const)
)

export const anyMake: fc.Arbitrary<WireMake> = fc.record({
  conductor: fc.constantFrom(...CONDUCTORS),
  coating: fc.constantFrom(...COATINGS)
})

export const anyLengthM = fc.double({ min: 0.5, max: 2000, noNaN: true })
export const anyOhm = fc.double({ min: 0.5, max: 50, noNaN: true })
