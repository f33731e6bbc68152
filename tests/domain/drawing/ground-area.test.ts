import { describe, expect, it } from 'vitest'
import type { LatLon } from '../../../src/domain/distance.ts'
import { groundAreaM2 } from '../../../src/domain/drawing/ground-area.ts'

/** WGS 84, as the core has it. */
const A = 6_378_137
const F = 1 / 298.257223563
const E = Math.sqrt(F * (2 - F))

/**
 * Area between two parallels and two meridians of the ellipsoid, closed form: J. P. Snyder, Map Projections: A Working Manual, USGS Professional
 * Paper 1395, 1987, equation 3-12 (q, from which the area follows by integrating the zone).
 */
function quadrangleM2({ latitude }: LatLon, dLatitude: number, dLongitude: number): number {
  const q = (degrees: number): number => {
    const s = Math.sin((degrees * Math.PI) / 180)
    return (1 - E * E) * (s / (1 - E * E * s * s) - Math.log((1 - E * s) / (1 + E * s)) / (2 * E))
  }
  const turn = (dLongitude * Math.PI) / 180
  return Math.abs((A * A * turn * (q(latitude + dLatitude) - q(latitude))) / 2)
}

const corners = ({ latitude, longitude }: LatLon, dLatitude: number, dLongitude: number): LatLon[] => [
  { latitude, longitude },
  { latitude, longitude: longitude + dLongitude },
  { latitude: latitude + dLatitude, longitude: longitude + dLongitude },
  { latitude: latitude + dLatitude, longitude }
]

describe('the area of ground', () => {
  it.each([0, 33.4, -36.85, 45, 54.97, 64])('agrees with the closed form on the ellipsoid at %s degrees', latitude => {
    for (const size of [0.0002, 0.001, 0.005]) {
      const at = { latitude, longitude: -1.61 }
      const exact = quadrangleM2(at, size, size)
      expect(Math.abs(groundAreaM2([corners(at, size, size)]) / exact - 1)).toBeLessThan(1e-4)
    }
  })

  it('is the same whichever way round the ring runs, closed or not, and across the date line', () => {
    const ring = corners({ latitude: -36.85, longitude: 179.9995 }, 0.001, 0.001)
    const across = ring.map(one => ({ ...one, longitude: one.longitude > 180 ? one.longitude - 360 : one.longitude }))
    const plain = groundAreaM2([ring])
    for (const other of [[...ring].reverse(), [...ring, ...ring.slice(0, 1)], across])
      expect(groundAreaM2([other]) / plain).toBeCloseTo(1, 4)
  })

  it('leaves out what a hole takes away', () => {
    const at = { latitude: 54.97, longitude: -1.61 }
    const whole = groundAreaM2([corners(at, 0.001, 0.001)])
    const hole = corners({ latitude: 54.9702, longitude: -1.6098 }, 0.0005, 0.0005)
    expect(groundAreaM2([corners(at, 0.001, 0.001), hole]) / whole).toBeCloseTo(0.75, 3)
  })

  it('is nothing for a line and for no ring', () => {
    const [a, b] = corners({ latitude: 1, longitude: 1 }, 0.1, 0.1)
    expect(groundAreaM2([a && b ? [a, b, a] : []])).toBe(0)
    expect(groundAreaM2([])).toBe(0)
  })
})
