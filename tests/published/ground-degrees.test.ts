import { describe, expect, it } from 'vitest'
import { degreeLengths, localPosition } from '../../src/domain/drawing/local-position.ts'

/*
 * 47 CFR 1.958 (c) and (d), Distance computation: kilometers per degree at a mean latitude ML,
 * KPDlat = 111.13209 - 0.56605 cos 2ML + 0.00120 cos 4ML, KPDlon = 111.41513 cos ML - 0.09455 cos 3ML + 0.00012 cos 5ML.
 * The rule is made for another ellipsoid (that of Clarke, 1866), whose axes differ from WGS 84 by up to 4 parts in 100,000; hence 1 in 10,000.
 */
const cos = (degrees: number): number => Math.cos((degrees * Math.PI) / 180)
const kpdLat = (ml: number): number => 111.13209 - 0.56605 * cos(2 * ml) + 0.0012 * cos(4 * ml)
const kpdLon = (ml: number): number => 111.41513 * cos(ml) - 0.09455 * cos(3 * ml) + 0.00012 * cos(5 * ml)
const WITHIN = 1e-4

describe('length of a degree', () => {
  it.each([-54.97, -33.9, 0, 10, 25.3, 37.8, 45, 54.97, 66.5, 75])(
    'is that of the federal rule at %f°, within one in ten thousand',
    latitude => {
      const { latitudeM, longitudeM } = degreeLengths(latitude)
      expect(Math.abs(latitudeM / 1000 / kpdLat(latitude) - 1)).toBeLessThan(WITHIN)
      expect(Math.abs(longitudeM / 1000 / kpdLon(latitude) - 1)).toBeLessThan(WITHIN)
    }
  )

  it('puts two places as far apart as the rule does', () => {
    const [a, b] = [
      { latitude: 54.97, longitude: -1.61 },
      { latitude: 54.972, longitude: -1.606 }
    ]
    const { eastM, northM } = localPosition(b, a)
    expect(Math.abs(eastM / (kpdLon(54.971) * 1000 * 0.004) - 1)).toBeLessThan(WITHIN)
    expect(Math.abs(northM / (kpdLat(54.971) * 1000 * 0.002) - 1)).toBeLessThan(WITHIN)
  })
})

/* WGS 84 itself: a quarter of the meridian is 10,001,965.729 m (NGA.STND.0036, from memory); the degrees from 0 to 90 must add up to it. */
it('adds up to the quarter of the meridian', () => {
  const steps = 9000
  let sum = 0
  for (let index = 0; index < steps; index += 1)
    sum += degreeLengths(((index + 0.5) * 90) / steps).latitudeM * (90 / steps)
  expect(Math.abs(sum - 10_001_965.729)).toBeLessThan(0.01)
})
