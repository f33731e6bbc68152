import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { flowStretches, groupsWithin, peakOf } from '../../../src/domain/supply/peak-flow.ts'
import type { Opening } from '../../../src/domain/supply/peak-flow.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

const opening = (name: string, fromS: number, toS: number, flowM3s: number): Opening => ({ name, fromS, toS, flowM3s })
const stretches = (...openings: Opening[]) => [...flowStretches(openings)]
const told = (...openings: Opening[]) =>
  stretches(...openings).map(one => [one.fromS, one.toS, one.flowM3s, one.names.join('')])

describe('the flow of a supply over time', () => {
  it('changes where a valve opens or shuts', () => {
    expect(told(opening('a', 0, 50, 9), opening('b', 30, 75, 8), opening('c', 40, 80, 7))).toEqual([
      [0, 30, 9, 'a'],
      [30, 40, 17, 'ab'],
      [40, 50, 24, 'abc'],
      [50, 75, 15, 'bc'],
      [75, 80, 7, 'c']
    ])
  })

  it('does not add a valve that shuts to one that opens in the same second', () => {
    expect(told(opening('a', 0, 10, 5), opening('b', 10, 20, 5))).toEqual([
      [0, 10, 5, 'a'],
      [10, 20, 5, 'b']
    ])
  })

  it('has no stretch for a gap, nor for an opening that lasts no time', () => {
    expect(told(opening('a', 0, 10, 5), opening('b', 15, 15, 9), opening('c', 20, 30, 5))).toEqual([
      [0, 10, 5, 'a'],
      [20, 30, 5, 'c']
    ])
    expect(told()).toEqual([])
  })

  it('gives out as much water as all openings together, and never runs backward, whatever they are', () => {
    const one = fc.record({ name: fc.constant('x'), fromS: fc.nat(500), toS: fc.nat(500), flowM3s: fc.nat(9) })
    fc.assert(
      fc.property(fc.array(one, { maxLength: 12 }), openings => {
        const parts = stretches(...openings)
        const given = parts.reduce((total, part) => total + part.flowM3s * (part.toS - part.fromS), 0)
        const wanted = openings.reduce(
          (total, { fromS, toS, flowM3s }) => total + flowM3s * Math.max(0, toS - fromS),
          0
        )
        expect(given).toBe(wanted)
        for (const [index, part] of parts.entries()) {
          expect(part.toS).toBeGreaterThan(part.fromS)
          expect(part.fromS).toBeGreaterThanOrEqual(parts[index - 1]?.toS ?? 0)
        }
      })
    )
  })

  it('peaks where the sum is greatest, in any second that is looked at', () => {
    const one = fc.record({ name: fc.constant('x'), fromS: fc.nat(60), toS: fc.nat(60), flowM3s: fc.nat(9) })
    fc.assert(
      fc.property(fc.array(one, { maxLength: 8 }), openings => {
        const peak = peakOf(flowStretches(openings))?.flowM3s ?? 0
        const at = (second: number) =>
          openings.reduce((sum, each) => sum + (each.fromS <= second && second < each.toS ? each.flowM3s : 0), 0)
        expect(peak).toBe(Math.max(0, ...Array.from({ length: 61 }, (_, second) => at(second))))
      })
    )
  })
})

describe('groups one after another', () => {
  const flows = (...all: number[]) => all.map(flowM3s => ({ flowM3s }))
  const sizes = (...all: number[]) => groupsWithin(flows(...all), 12)?.map(group => group.map(one => one.flowM3s))

  it('hold as much as the limit allows, exactly at the limit too', () => {
    expect(sizes(7, 6, 5, 6)).toEqual([
      [7, 5],
      [6, 6]
    ])
    expect(sizes(12)).toEqual([[12]])
    expect(sizes()).toEqual([])
  })

  it('are two for nineteen of 0.733 under a limit of 12', () => {
    expect(sizes(...Array<number>(19).fill(0.733))?.map(group => group.length)).toEqual([16, 3])
  })

  it('are none where one alone draws more', () => {
    expect(sizes(3, 12.1)).toBeUndefined()
  })
})

describe('supply-peak', () => {
  it('says when the limit is met exactly, in any unit', () => {
    const runs = 'A 22:00 1 h 10 gpm; B 10:30 pm 90 s 10 gpm'
    expect(calc('supply-peak', { runs, limit: '20 gpm' })).toMatchObject({ from: '22:30', to: '22:31', enough: true })
    expect(calc('supply-peak', { runs, limit: '19.99 gpm' })).toMatchObject({ enough: false })
  })

  it('says what to write where a run is not understood', () => {
    expect(calcOrAbsent('supply-peak', { runs: 'C3 22:00 50 min' })).toBe(
      '“C3 22:00 50 min” is not a run: write C3 22:00 50 min 9.2 gpm.'
    )
  })
})
