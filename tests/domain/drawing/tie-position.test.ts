import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAbsent } from '../../../src/base/absent.ts'
import { apartM, reachM } from '../../../src/domain/drawing/spot.ts'
import { TIE_GAP_M, tieSpot, tieSpots } from '../../../src/domain/drawing/tie-position.ts'

const at = (eastM: number, northM: number) => ({ eastM, northM })

describe('a place from two ties', () => {
  it('is that worked by hand: 13 m and 15 m from points 14 m apart lie 5 m along and 12 m off', () => {
    // 13² - 15² + 14² = 169 - 225 + 196 = 140; 140 / 28 = 5; √(169 - 25) = 12.
    expect(tieSpot(14, 13, 15)).toEqual({ alongM: 5, offM: 12 })
  })

  it('comes out on both sides of the line, the left one first', () => {
    const spots = tieSpots({ from: at(10, 20), lengthM: 13 }, { from: at(10, 34), lengthM: 15 })
    if (isAbsent(spots)) throw new Error(spots.reason)
    // From the first point north to the second: left is west.
    expect(spots[0].eastM).toBeCloseTo(-2, 9)
    expect(spots[0].northM).toBeCloseTo(25, 9)
    expect(spots[1].eastM).toBeCloseTo(22, 9)
    expect(spots[1].northM).toBeCloseTo(25, 9)
  })

  it('lies on the line where the ties just reach each other', () => {
    expect(tieSpot(10, 4, 6)).toEqual({ alongM: 4, offM: 0 })
  })

  it('takes ties that miss each other by the width of a hand, and no more', () => {
    expect(tieSpot(10, 4, 6 - TIE_GAP_M)).toMatchObject({ offM: 0 })
    expect(tieSpot(10, 4, 6 - TIE_GAP_M - 0.01)).toMatchObject({ absent: true })
    expect(tieSpot(10, 3, 13 + TIE_GAP_M + 0.01)).toMatchObject({ absent: true })
  })

  it('is not to be had from one point alone', () => {
    expect(tieSpot(0, 3, 3)).toMatchObject({ absent: true, reason: 'the two points lie together' })
  })

  it('is the point itself, whatever point is measured exactly from whatever two', () => {
    const coordinate = fc.double({ min: -500, max: 500, noNaN: true })
    const spot = fc.record({ eastM: coordinate, northM: coordinate })
    fc.assert(
      fc.property(spot, spot, spot, (first, second, place) => {
        fc.pre(apartM(first, second) > 1)
        const spots = tieSpots(
          { from: first, lengthM: apartM(first, place) },
          { from: second, lengthM: apartM(second, place) }
        )
        if (isAbsent(spots)) throw new Error(spots.reason)
        // Near the line itself half the digits of the distances are lost under the root.
        expect(Math.min(...spots.map(one => apartM(one, place)))).toBeLessThan(1e-3)
      })
    )
  })
})

describe('the reach of a shape', () => {
  const corner = [at(0, 0), at(4, 0), at(4, 2), at(2, 2), at(2, 4), at(0, 4)]

  it('is nothing within it, in both arms of an L', () => {
    expect([at(3, 1), at(1, 3)].map(spot => reachM(corner, spot))).toEqual([0, 0])
  })

  it('is the straight way to the nearest side or corner: in the notch of an L, past an end', () => {
    expect(reachM(corner, at(3, 3))).toBeCloseTo(1, 9)
    expect(reachM(corner, at(7, -4))).toBeCloseTo(5, 9)
  })
})
