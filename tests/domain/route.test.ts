import { describe, expect, it } from 'vitest'
import { distanceM } from '../../src/domain/distance.ts'
import { areasOf, lengthM, shortOrder } from '../../src/domain/route.ts'

const point = (latitude: number, longitude: number) => ({ latitude, longitude })
/** The same numbers each time, spread over a town. */
function town(count: number, seed: number) {
  let state = seed
  const next = () => (state = (state * 16_807) % 2_147_483_647) / 2_147_483_647
  return Array.from({ length: count }, () => point(54 + next() / 10, -1 - next() / 10))
}

describe('distance over the ground', () => {
  it('is nothing to the same place, a quarter of the way round to the pole, half to the antipode', () => {
    const quarter = (Math.PI / 2) * 6_371_008.8
    expect(distanceM(point(10, 20), point(10, 20))).toBe(0)
    expect(distanceM(point(0, 33), point(90, 0))).toBeCloseTo(quarter, 3)
    expect(distanceM(point(0, 0), point(0, 180))).toBeCloseTo(2 * quarter, 3)
  })

  it('goes the short way over the date line', () => {
    expect(distanceM(point(0, 179.9), point(0, -179.9))).toBeCloseTo((0.2 * Math.PI * 6_371_008.8) / 180, 3)
  })

  it('is within half a percent of a degree of the meridian on the ellipsoid, 110 574 m at the equator and 111 694 m at the pole', () => {
    // National Geospatial-Intelligence Agency, WGS 84: length of a degree of latitude.
    for (const published of [110_574, 111_694])
      expect(Math.abs(distanceM(point(0, 0), point(1, 0)) / published - 1)).toBeLessThan(0.006)
  })
})

describe('a short way', () => {
  it('visits each point once', () => {
    for (const count of [0, 1, 2, 3, 20, 90]) {
      const order = shortOrder(town(count, 7))
      expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, index) => index))
    }
  })

  it('goes along a line from one end to the other', () => {
    const line = [3, 0, 4, 1, 2].map(step => point(54, step / 100))
    const order = shortOrder(line).map(index => line[index]?.longitude)
    expect([order, [...order].reverse()]).toContainEqual([0, 0.01, 0.02, 0.03, 0.04])
  })

  it('of seven points is at most 5 % longer than the shortest of all 5,040', () => {
    for (let seed = 1; seed <= 20; seed += 1) {
      const points = town(7, seed)
      const best = Math.min(...permutations([...points.keys()]).map(order => lengthM(points, order)))
      expect(lengthM(points, shortOrder(points)) / best).toBeLessThan(1.05)
    }
  })

  it('of 300 points is made in well under two seconds', { timeout: 2000 }, () => {
    expect(shortOrder(town(300, 3))).toHaveLength(300)
  })
})

describe('areas', () => {
  it('hold what is near by way of others, and nothing farther', () => {
    const chain = [point(54, 0), point(54.3, 0), point(54.6, 0), point(56, 0)]
    expect(areasOf(chain, 40_000)).toEqual([[0, 1, 2], [3]])
    expect(areasOf(chain, 30_000)).toEqual([[0], [1], [2], [3]])
    expect(areasOf([], 1)).toEqual([])
  })
})

function permutations(items: readonly number[]): number[][] {
  if (items.length < 2) return [[...items]]
  return items.flatMap(first => permutations(items.filter(one => one !== first)).map(rest => [first, ...rest]))
}
