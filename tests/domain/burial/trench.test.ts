import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAbsent } from '../../../src/base/absent.ts'
import { IRRIGATION_COLUMN, leastCover, leastCoverAt } from '../../../src/domain/burial/cover-depth.ts'
import { coverLocationOf } from '../../../src/domain/burial/cover-location.ts'
import { GROUNDS, exits, needsExit, needsProtection } from '../../../src/domain/burial/trench.ts'
import { COVER_COLUMNS, COVER_LOCATIONS } from '../../../src/reference/nec-300-5.ts'
import { quantity } from '../../../src/units/quantity.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

const feet = (value: number) => quantity(value, 'ft', 'length').si

describe('protection of a trench', () => {
  it('is required at exactly 5 ft and not a hair above, where the ground was seen to be sound', () => {
    const seen = 'examined, no sign of a cave-in'
    expect([4.99, 5, 5.01].map(depth => needsProtection(feet(depth), seen))).toEqual([false, true, true])
  })

  it('is required at any depth where nobody examined the ground, or where it shows signs', () => {
    expect(needsProtection(feet(0.5), 'not examined')).toBe(true)
    expect(needsProtection(feet(0.5), 'examined, signs of a cave-in')).toBe(true)
  })

  it('is not required in stable rock', () => {
    expect(needsProtection(feet(12), 'stable rock')).toBe(false)
  })

  it('never becomes less with depth', () => {
    const depth = fc.double({ min: 0, max: 10, noNaN: true })
    fc.assert(
      fc.property(depth, depth, fc.constantFrom(...GROUNDS), (one, other, ground) => {
        const [shallow, deep] = [Math.min(one, other), Math.max(one, other)]
        if (needsProtection(shallow, ground)) expect(needsProtection(deep, ground)).toBe(true)
        if (needsExit(shallow)) expect(needsExit(deep)).toBe(true)
        expect(exits(deep, 100)).toBeGreaterThanOrEqual(exits(shallow, 100))
      })
    )
  })
})

describe('ways out of a trench', () => {
  it.each([
    [3.99, 100, 0],
    [4, 0, 1],
    [4, 50, 1],
    [4, 50.1, 2],
    [4, 100, 2],
    [4, 101, 3]
  ])('at %d ft deep and %d ft long: %d', (depth, length, ways) => {
    expect(exits(feet(depth), feet(length))).toBe(ways)
  })
})

describe('the trench card', () => {
  it('asks for a registered engineer only below 20 ft', () => {
    expect(calc('trench', { depth: '20 ft' })['engineer']).toBe(false)
    expect(calc('trench', { depth: '20.1 ft' })['engineer']).toBe(true)
  })

  it('wants the cover or the depth, one of them', () => {
    expect(calcOrAbsent('trench', {})).toBe('give the cover, or the depth of the trench')
    expect(calcOrAbsent('trench', { cover: '6 in', depth: '1 ft' })).toBe('give the cover or the depth, not both')
    expect(calcOrAbsent('trench', { depth: '0 m' })).toBe('depth must be more than zero')
  })

  it('gives the same answer in meters as in feet', () => {
    expect(calc('trench', { depth: '1.524 m', ground: 'examined, no sign of a cave-in' })).toMatchObject({
      'protective-system': true,
      ladder: true
    })
    expect(calc('trench', { depth: '1.21 m' })['ladder']).toBe(false)
  })
})

describe('least cover', () => {
  it('of column 5 holds at 30 V and stops above it', () => {
    const at = (volt: number) => leastCoverAt('open ground', IRRIGATION_COLUMN, false, volt)
    expect(at(30)).toEqual({ inches: 6, mm: 150 })
    expect(isAbsent(at(30.1))).toBe(true)
    expect(leastCoverAt('open ground', 'direct burial', false, 120)).toEqual({ inches: 24, mm: 600 })
  })

  it('is never less for direct burial than for control wire, and never less in earth than in a raceway', () => {
    for (const location of COVER_LOCATIONS) {
      const inches = (column: (typeof COVER_COLUMNS)[number], raceway: boolean) =>
        leastCover(location, column, raceway).inches
      expect(inches('direct burial', false)).toBeGreaterThanOrEqual(inches(IRRIGATION_COLUMN, false))
      for (const column of COVER_COLUMNS) expect(inches(column, false)).toBeGreaterThanOrEqual(inches(column, true))
    }
  })
})

describe('what lies above a cable, by the words of a site file', () => {
  it.each([
    [undefined, 'open ground'],
    ['planting bed', 'open ground'],
    ['lawn', 'open ground'],
    ['mulch and shrubs', 'open ground'],
    ['road', 'street, road, driveway or parking lot'],
    ['Two lanes of the carriageway', 'street, road, driveway or parking lot'],
    ['parking lot', 'street, road, driveway or parking lot'],
    ['car park', 'street, road, driveway or parking lot'],
    ['pavement', 'street, road, driveway or parking lot'],
    ['lawn, then road', 'street, road, driveway or parking lot'],
    ['concrete road', 'street, road, driveway or parking lot'],
    ['driveway', 'street, road, driveway or parking lot'],
    ['private driveway', 'one- or two-family driveway'],
    ['concrete path', 'trench under 2 in concrete'],
    ['slab', 'under a 4 in slab without vehicles'],
    ['under a building', 'under a building'],
    ['broadleaf planting', 'open ground']
  ])('“%s” is %s', (words, location) => {
    expect(coverLocationOf(words)).toBe(location)
  })

  it('know the table’s own names', () => {
    expect(COVER_LOCATIONS.map(coverLocationOf)).toEqual(COVER_LOCATIONS)
  })
})
