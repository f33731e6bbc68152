import { describe, expect, test } from 'vitest'
import { planCautions, safetyFacts } from '../../src/plan/cautions.ts'
import { date } from '../../src/units/date.ts'
import { quantity } from '../../src/units/quantity.ts'
import { bareBox, bareController, bareRules, bareSite, bareStation, bareSupply } from '../support/bare-site.ts'

const AT = { file: 'sites/bare/site.md', path: [] }
const ON = date('2026-05-01')
const ids = (site: Parameters<typeof planCautions>[0], on = ON) => planCautions(site, on).map(({ id }) => id)

describe('the facts of a site', () => {
  test('what a site does not state stays undefined', () => {
    const facts = safetyFacts(bareSite(), ON)
    expect(facts).toMatchObject({ place: 'other', boxes: 0, stations: 0, adapter: false, pump: false, coils: [] })
    for (const key of ['country', 'road', 'deepestPitM', 'vault', 'roofEdgeM', 'parapetM'] as const)
      expect(facts[key], key).toBeUndefined()
  })

  test('the deepest of the pits counts', () => {
    const pit = (depth: number, unit: string) => ({
      at: AT,
      where: 'valve pit',
      depth: quantity(depth, unit, 'length')
    })
    const workRules = bareRules({ pits: [pit(2, 'ft'), pit(1.6, 'm'), pit(900, 'mm')] })
    expect(safetyFacts(bareSite({ workRules }), ON).deepestPitM).toBeCloseTo(1.6, 9)
  })

  test('a coil without a kind counts as not known, beside those that have one', () => {
    const stations = [
      bareStation({ coil: 'DC latching 2-wire' }),
      bareStation(),
      bareStation({ coil: 'DC latching 2-wire' })
    ]
    expect(safetyFacts(bareSite({ stations }), ON).coils).toEqual(['DC latching 2-wire', 'not known'])
  })

  test('a pump is seen in the start relay of a controller and in the kind of a supply', () => {
    expect(safetyFacts(bareSite({ controllers: [bareController({ pumpStart: true })] }), ON).pump).toBe(true)
    expect(safetyFacts(bareSite({ supplies: [bareSupply({ kind: 'pond pump' })] }), ON).pump).toBe(true)
    expect(safetyFacts(bareSite({ supplies: [bareSupply({ kind: 'potable' })] }), ON).pump).toBe(false)
  })

  test('"not fitted" is not a backflow assembly', () => {
    const supplies = [
      bareSupply({ id: 'S1', backflow: { at: AT, kind: 'not fitted', reason: 'pond, no join' } }),
      bareSupply({ id: 'S2', backflow: { at: AT, kind: 'RP' } }),
      bareSupply({ id: 'S3' })
    ]
    const kinds = safetyFacts(bareSite({ supplies }), ON).supplies.map(supply => supply.backflow)
    expect(kinds).toEqual(['not fitted', 'fitted', 'not stated'])
  })

  test('a battery controller whose battery is not stated still has batteries; an adapter has none', () => {
    expect(safetyFacts(bareSite({ controllers: [bareController({})] }), ON).batteries).toEqual([
      'batteries of a kind not stated'
    ])
    expect(safetyFacts(bareSite({ controllers: [bareController({ power: 'adapter' })] }), ON).batteries).toEqual([])
  })

  test('the same day is warm in the south and cool in the north', () => {
    const at = (latitude: number) => bareSite({ location: { at: AT, latitude } })
    expect(safetyFacts(at(-33.9), date('2026-01-15')).season).toEqual({ month: 1, half: 'warm' })
    expect(safetyFacts(at(51.5), date('2026-01-15')).season).toEqual({ month: 1, half: 'cool' })
  })
})

describe('the cautions of a site', () => {
  test('a site that says nothing of road or depth gets traffic and trench, each with that as its reason', () => {
    const chosen = planCautions(bareSite(), ON)
    expect(chosen.find(({ id }) => id === 'traffic')?.reason).toBe('The site file does not say whether a road is near.')
    expect(chosen.find(({ id }) => id === 'trench')?.reason).toBe('The depth of trenches and pits is not stated.')
  })

  test('the reason for traffic names the plan and the closure hours that are stated', () => {
    const laneClosure = { from: 22 * 60, to: 5 * 60 }
    const reason = (workRules: Parameters<typeof bareRules>[0]) =>
      planCautions(bareSite({ place: 'verge', workRules: bareRules(workRules) }), ON)[0]?.reason
    expect(reason({ laneClosure })).toBe(
      'The place is a verge, inside the road with closure hours 22:00–05:00, and no traffic-control plan is stated.'
    )
    expect(reason({ road: true, trafficControlPlan: 'TC-14' })).toBe(
      'The work is at a road, under plan or permit TC-14.'
    )
  })

  test('a roof with an adapter on reclaimed water has mains, edge and reclaimed water', () => {
    const site = bareSite({
      place: 'roof',
      controllers: [bareController({ power: 'adapter' })],
      supplies: [bareSupply({ kind: 'reclaimed' })],
      boxes: [bareBox('R1')]
    })
    expect(ids(site).slice(0, 2)).toEqual(['mains', 'fall-edge'])
    expect(ids(site)).toContain('reclaimed-water')
  })

  test('dosing on a supply brings its caution, with what is dosed', () => {
    const site = bareSite({ place: 'nursery', supplies: [bareSupply({ injection: 'liquid feed' })] })
    expect(planCautions(site, ON).find(({ id }) => id === 'chemical-injection')?.reason).toBe(
      'Supply S1 is dosed: liquid feed.'
    )
  })

  test('air for winter brings the blow-out caution; draining does not', () => {
    expect(ids(bareSite({ winter: { at: AT, method: 'air' } }))).toContain('blow-out')
    expect(ids(bareSite({ winter: { at: AT, method: 'drain' } }))).not.toContain('blow-out')
  })

  test('the same site and day give the same list', () => {
    expect(planCautions(bareSite(), ON)).toEqual(planCautions(bareSite(), ON))
  })
})
