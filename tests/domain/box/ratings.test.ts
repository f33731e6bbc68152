import { describe, expect, it } from 'vitest'
import { isAbsent } from '../../../src/base/absent.ts'
import { boxLocationOf } from '../../../src/domain/box/box-location.ts'
import { ratingIsEnough } from '../../../src/domain/box/box-load.ts'
import { ingressCovers } from '../../../src/domain/box/ingress.ts'
import { parseLoadRating } from '../../../src/domain/box/load-rating.ts'
import { BOX_LOCATIONS, EN_124_CLASSES, SCTE_TIERS } from '../../../src/reference/box-loads.ts'
import { calcOrAbsent } from '../../support/calc.ts'

describe('a load rating as written', () => {
  it.each([
    ['B125', 'B125'],
    ['en 124 d400', 'D400'],
    ['class C 250', 'C250'],
    ['Tier 15', 'Tier 15'],
    ['ANSI/SCTE 77 tier 8', 'Tier 8'],
    ['light duty', 'light duty'],
    ['H-20', 'H-20'],
    ['HS20', 'H-20'],
    ['H 25', 'H-25']
  ])('%s is %s', (text, name) => {
    expect(parseLoadRating(text)?.name).toBe(name)
  })

  it.each(['', 'strong', 'Tier 7', 'A155', 'B12', '125'])('“%s” is no rating known here', text => {
    expect(parseLoadRating(text)).toBeUndefined()
  })
})

describe('whether a rating is enough', () => {
  const all = [...SCTE_TIERS.map(one => one.tier), ...EN_124_CLASSES.map(one => one.name), 'H-20']

  it('never fails in a lighter place once it holds in a heavier one', () => {
    for (const rating of all) {
      const verdicts = BOX_LOCATIONS.map(location => ratingIsEnough(rating, location))
      expect(verdicts, rating).toEqual([...verdicts].sort((a, b) => Number(b) - Number(a)))
    }
  })

  it('refuses every tier in a carriageway, the highest too, and takes D400 exactly at the limit', () => {
    expect(SCTE_TIERS.map(one => ratingIsEnough(one.tier, 'carriageway'))).toEqual([false, false, false, false, false])
    expect(['C250', 'D400', 'E600'].map(name => ratingIsEnough(name, 'carriageway'))).toEqual([false, true, true])
  })

  it('is not told for words that are no rating', () => {
    expect(isAbsent(ratingIsEnough('strong', 'sidewalk'))).toBe(true)
    expect(calcOrAbsent('box-load', { location: 'sidewalk', rating: 'strong' })).toBe(
      '“strong” is not a rating known here; write “Tier 15”, “B125” or “H-20”'
    )
  })
})

describe('what a box lies in', () => {
  it.each([
    ['roundabout', 'centre island, NE', 'median or verge that vehicles can reach'],
    ['roundabout', 'truck apron, north', 'carriageway'],
    ['median', 'in the left turn lane', 'median or verge that vehicles can reach'],
    ['median', 'in the lane', 'carriageway'],
    ['park', '2 m from the road', 'lawn or planting'],
    ['park', 'in the parking lot', 'parking or driveway'],
    ['planter', 'in the sidewalk by number 12', 'sidewalk'],
    ['roof', undefined, 'lawn or planting']
  ])('%s, “%s”: %s', (place, where, location) => {
    expect(boxLocationOf(place, where)).toBe(location)
  })
})

describe('ingress codes', () => {
  it('cover rain whichever way they cover more', () => {
    expect(['IP44', 'IP55', 'IP67', 'IPX8', 'NEMA 3R'].map(code => ingressCovers(code, 'rain'))).toEqual([
      true,
      true,
      true,
      true,
      true
    ])
    expect(ingressCovers('IP20', 'rain')).toBe(false)
  })

  it('are read in the ways they are printed, and not out of other figures', () => {
    expect(ingressCovers('IP 66 / IP 68', 'jets')).toBe(true)
    expect(ingressCovers('IP65/67', 'temporary immersion')).toBe(true)
    expect(ingressCovers('IP67, 15 m deep', 'jets')).toBe(false)
    expect(ingressCovers('Type 6P', 'jets')).toBe(false)
  })

  it.each(['', 'waterproof', 'IP', 'NEMA 12'])('“%s” is no code known here', code => {
    expect(isAbsent(ingressCovers(code, 'rain'))).toBe(true)
  })
})
