import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseWireSize, showWireSize } from '../../src/units/wire-size.ts'
import type { WireSize } from '../../src/units/wire-size.ts'

describe('reading a wire size', () => {
  it.each([
    ['12 AWG', { kind: 'awg', gauge: 12 }],
    ['12AWG', { kind: 'awg', gauge: 12 }],
    ['AWG 12', { kind: 'awg', gauge: 12 }],
    ['14 ga', { kind: 'awg', gauge: 14 }],
    ['14 gauge', { kind: 'awg', gauge: 14 }],
    ['1/0 AWG', { kind: 'awg', gauge: 0 }],
    ['0 AWG', { kind: 'awg', gauge: 0 }],
    ['00 AWG', { kind: 'awg', gauge: -1 }],
    ['4/0 AWG', { kind: 'awg', gauge: -3 }],
    ['0000 AWG', { kind: 'awg', gauge: -3 }],
    ['40 AWG', { kind: 'awg', gauge: 40 }],
    ['2.5 mm²', { kind: 'area', mm2: 2.5 }],
    ['2.5 mm2', { kind: 'area', mm2: 2.5 }],
    ['2.5\u00a0mm²', { kind: 'area', mm2: 2.5 }],
    ['0.8 mm diameter', { kind: 'diameter', mm: 0.8 }],
    ['0.8 mm dia', { kind: 'diameter', mm: 0.8 }],
    ['0.8 mm', { kind: 'ambiguous', mm: 0.8 }],
    ['12 AWG, 2.05 mm²', { kind: 'pair', gauge: 12, mm2: 2.05 }],
    ['12 AWG (3.31 mm²)', { kind: 'pair', gauge: 12, mm2: 3.31 }]
  ] as const)('“%s”', (text, size) => {
    expect(parseWireSize(text)).toEqual(size)
  })

  it.each([
    '',
    '12',
    'AWG',
    '41 AWG',
    '5/0 AWG',
    '0 mm²',
    '0 mm',
    '-1 mm²',
    '2,5 mm²',
    '2.5 m²',
    'thick',
    '12 AWG, 2.05 mm'
  ])('“%s” is no size', text => {
    expect(parseWireSize(text)).toBeUndefined()
  })
})

describe('writing a wire size', () => {
  const amount = fc.integer({ min: 1, max: 100_000 }).map(thousandths => thousandths / 1000)
  const gauge = fc.integer({ min: -3, max: 40 })
  const anySize: fc.Arbitrary<WireSize> = fc.oneof(
    gauge.map(value => ({ kind: 'awg', gauge: value }) as const),
    amount.map(mm2 => ({ kind: 'area', mm2 }) as const),
    amount.map(mm => ({ kind: 'diameter', mm }) as const),
    amount.map(mm => ({ kind: 'ambiguous', mm }) as const),
    fc.tuple(gauge, amount).map(([value, mm2]) => ({ kind: 'pair', gauge: value, mm2 }) as const)
  )

  it('gives back what was read, for every kind of size', () => {
    fc.assert(
      fc.property(anySize, size => {
        expect(parseWireSize(showWireSize(size))).toEqual(size)
      })
    )
  })

  it('writes 1/0 to 4/0 as the trade does', () => {
    expect([0, -1, -2, -3, 1].map(value => showWireSize({ kind: 'awg', gauge: value }))).toEqual([
      '1/0\u00a0AWG',
      '2/0\u00a0AWG',
      '3/0\u00a0AWG',
      '4/0\u00a0AWG',
      '1\u00a0AWG'
    ])
  })
})
