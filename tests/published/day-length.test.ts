import { Body, Equator, MakeTime, Observer, SearchRiseSet } from 'astronomy-engine'
import { describe, expect, it } from 'vitest'
import { sum } from '../../src/base/collections.ts'
import { dayOfYear } from '../../src/domain/climate/day-of-year.ts'
import { solarDay } from '../../src/domain/climate/solar-geometry.ts'
import { date, epochDay, fromEpochDay } from '../../src/units/date.ts'
import type { IsoDate } from '../../src/units/date.ts'

/**
 * Outside numbers: sunrise and sunset of astronomy-engine 2.1.19, an independent library. It counts from the upper edge of the sun on a level
 * horizon, the air bending its light; FAO paper 56 counts from the middle of the sun without air.
 *
 * Tolerance, in two parts. The edge shows 0.833° before the middle (34′ of refraction, 16′ of half the sun's width): 6.7 minutes of day at the
 * equator, more where the sun's path slants, by 1 / √(cos² latitude − sin² declination). That is taken off, not tolerated. What is left is eq. 24,
 * whose declination is up to 1.07° off in the middle of October: each degree is 8 minutes of day times tan(latitude), so 9.4 × tan(latitude) is
 * allowed, and half a minute for the sun's moving on within the day.
 */
const EDGE_DEG = 0.833
const DECLINATION_DEG = 1.1
const allowedMin = (latitude: number): number => 0.5 + 9.4 * Math.tan((Math.abs(latitude) * Math.PI) / 180)

const LATITUDES = [-60, -51.5, -35.42, -20, 0, 13.73, 33.07, 37.8, 45.72, 54.97, 60]
const FIRST = epochDay(date('2026-01-01'))
/** Every fifth day of a year. */
const DAYS = Array.from({ length: 73 }, (_, index) => fromEpochDay(FIRST + index * 5))

/** From sunrise to the sunset that follows, at the longitude of Greenwich. */
function libraryHours(latitude: number, on: IsoDate): number {
  const observer = new Observer(latitude, 0, 0)
  const rise = SearchRiseSet(Body.Sun, observer, +1, MakeTime(new Date(`${on}T00:00:00Z`)), 1)
  const set = rise && SearchRiseSet(Body.Sun, observer, -1, rise, 1)
  if (!rise || !set) throw new Error(`the sun does not rise or set at ${latitude} on ${on}`)
  return (set.ut - rise.ut) * 24
}

/** Day length that refraction and the width of the sun add, in minutes. */
function edgeMin(latitude: number, declinationRad: number): number {
  const slant = Math.sqrt(Math.cos((latitude * Math.PI) / 180) ** 2 - Math.sin(declinationRad) ** 2)
  return (2 * EDGE_DEG * 4) / slant
}

const longerMin = (latitude: number, on: IsoDate): number =>
  (libraryHours(latitude, on) - solarDay(latitude, dayOfYear(on)).daylightH) * 60

describe(`day length against an astronomy library (${LATITUDES.length * DAYS.length} days)`, () => {
  it.each(LATITUDES)(
    'at %s degrees no day differs by more than the edge of the sun and the formula allow',
    latitude => {
      for (const on of DAYS) {
        const { declinationRad } = solarDay(latitude, dayOfYear(on))
        const left = Math.abs(longerMin(latitude, on) - edgeMin(latitude, declinationRad))
        expect(left, on).toBeLessThanOrEqual(allowedMin(latitude))
      }
    }
  )

  it.each(LATITUDES.filter(one => Math.abs(one) <= 40))(
    'at %s degrees the days of the library are 5 to 12 minutes longer in the mean of the year',
    latitude => {
      const mean = sum(DAYS.map(on => longerMin(latitude, on))) / DAYS.length
      expect(mean).toBeGreaterThan(5)
      expect(mean).toBeLessThan(12)
    }
  )

  it('the declination of the paper stays within 1.1 degrees of the library', () => {
    const observer = new Observer(0, 0, 0)
    for (const on of DAYS) {
      const { dec } = Equator(Body.Sun, MakeTime(new Date(`${on}T12:00:00Z`)), observer, true, true)
      const own = (solarDay(0, dayOfYear(on)).declinationRad * 180) / Math.PI
      expect(Math.abs(own - dec), on).toBeLessThanOrEqual(DECLINATION_DEG)
    }
  })

  it('where the sun does not set, or does not rise, the library finds no such moment either', () => {
    const found = (on: string, direction: 1 | -1) =>
      SearchRiseSet(Body.Sun, new Observer(80, 0, 0), direction, MakeTime(new Date(`${on}T00:00:00Z`)), 1)
    expect(solarDay(80, dayOfYear(date('2026-06-21'))).daylightH).toBe(24)
    expect(found('2026-06-21', -1)).toBeNull()
    expect(solarDay(80, dayOfYear(date('2026-12-21'))).daylightH).toBe(0)
    expect(found('2026-12-21', 1)).toBeNull()
  })
})
