import { describe, expect, it } from 'vitest'
import { loadSite } from '../../src/load/site.ts'
import type { DrawingPlan } from '../../src/plan/drawing-plan.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { date } from '../../src/units/date.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'

function planned(keys: string) {
  const { site, faults } = loadSite(baseSite(keys))
  if (!site || faults.length > 0) throw new Error(JSON.stringify(faults))
  return makePlan(site, date(BASE_ON))
}

const drawingOf = (keys: string): DrawingPlan => planned(keys).drawing

function spotOf(keys: string, of = 'VB1'): [number, number] | string {
  const { marks, unplaced } = drawingOf(keys)
  const mark = marks.find(one => one.of === of)
  return mark
    ? [Math.round(mark.eastM * 1000) / 1000, Math.round(mark.northM * 1000) / 1000]
    : (unplaced.find(one => one.of === of)?.because ?? 'lost')
}

/** VB1 is tied to two lamp posts 14 m apart, 13 m and 15 m away: 5 m along, 12 m off. */
const TIED = `boxes:
  - { id: VB1, where: bed, ties: ["13 m from lamp post 7", "6.0 m from curb", "15 m from the Lamp post 8"] }
  - { id: VB2, where: south bed, ties: ["3.0 m from bench", "5.5 m from curb"] }
`
const POSTS = 'points: [{ name: lamp post 7, at: 0 0 m }, { name: lamp post 8, at: 14 0 m }]'
const drawn = (more: string): string => `${TIED}drawing:\n  ${POSTS}\n${more}`

describe('where a box lies', () => {
  it('is not known of a site that says nothing, and every box says so', () => {
    const { marks, sheet, unplaced } = drawingOf('')
    expect([marks, sheet]).toEqual([[], undefined])
    expect(unplaced.filter(one => one.what === 'box').map(one => one.because)).toEqual(['few-ties', 'few-ties'])
  })

  it('is open where two spots fit and nothing tells which', () => {
    expect(spotOf(drawn(''))).toBe('two-spots')
  })

  it('is on the side that is written', () => {
    const on = (side: string) => spotOf(drawn(`  places: [{ what: box, of: VB1, side: ${side} }]\n`))
    expect(on('north')).toEqual([5, 12])
    expect(on('south')).toEqual([5, -12])
    expect(on('east')).toBe('two-spots')
  })

  it('is where a third tie points, before the ground of its zone', () => {
    const third = 'ties: ["17 m from the hydrant"]'
    const keys = drawn(
      `  places: [{ what: box, of: VB1, ${third} }]\n  areas: [{ zone: Z1, points: "0 20, 9 20, 9 30 m" }]\n`
    ).replace('points: [', 'points: [{ name: hydrant, at: -3 -27 m }, ')
    // From (-3, -27) it is 17 m to (5, -12): 8² + 15² = 17².
    expect(spotOf(keys)).toEqual([5, -12])
  })

  it('is else on the side of the ground that its valves water', () => {
    expect(spotOf(drawn('  areas: [{ zone: Z1, points: "0 20, 9 20, 9 30 m" }]\n'))).toEqual([5, 12])
    expect(spotOf(drawn('  areas: [{ zone: K1/1, points: "0 -20, 9 -20, 9 -30 m" }]\n'))).toEqual([5, -12])
    expect(spotOf(drawn('  areas: [{ zone: Z2, points: "0 -20, 9 -20, 9 -30 m" }]\n'))).toBe('two-spots')
  })

  it('is as measured, whatever the ties say, and the ties are drawn to it', () => {
    const keys = drawn('  places: [{ what: box, of: VB1, at: 5 11.9 m }]\n')
    expect(spotOf(keys)).toEqual([5, 11.9])
    expect(drawingOf(keys).ties.map(one => [one.amount, one.point.name])).toEqual([
      ['13 m', 'lamp post 7'],
      ['15 m', 'lamp post 8']
    ])
  })

  it('says that ties do not meet, with the figures', () => {
    const keys = drawn('  places: [{ what: box, of: VB1, side: north }]\n').replace('15 m from', '30 m from')
    const lost = drawingOf(keys).unplaced.find(one => one.of === 'VB1')
    expect(lost).toMatchObject({ because: 'no-meeting' })
    expect(lost?.reason).toContain('14 m apart')
  })

  it('is by degrees from the origin; a degree is 111 km north', () => {
    const keys = `boxes:
  - { id: VB1, where: bed, position: { latitude: 54.9701, longitude: -1.61 } }
  - { id: VB2, where: bed }
drawing:
  origin: { latitude: 54.97, longitude: -1.61 }
  points: [{ name: lamp post 7, at: 0 0 m }]
`
    const [east, north] = spotOf(keys) as [number, number]
    expect(east).toBe(0)
    expect(north).toBeCloseTo(11.13, 2)
    expect(spotOf(keys.replace(/ {2}origin.*\n/u, ''))).toBe('no-origin')
  })

  it('shows in the workings how it was found', () => {
    const { workings } = planned(drawn('  places: [{ what: box, of: VB1, side: north }]\n'))
    const [working] = workings.filter(one => one.calculation === 'tie-position')
    expect(working?.subject).toBe('VB1')
    expect(working?.steps.join(' ')).toContain('= 5 m')
    expect(working?.steps.join(' ')).toContain('= 12 m')
  })
})

describe('the sheet', () => {
  it('has a scale that holds all that is drawn, and is turned where the ground is wide', () => {
    const at = (corner: string) =>
      drawn(`  places: [{ what: box, of: VB1, side: north }]\n  lines: [{ kind: curb, points: "0 0, ${corner} m" }]\n`)
    expect(drawingOf(at('14 12')).sheet).toEqual({ ratio: 100, turned: false, legend: 'below' })
    expect(drawingOf(at('40 12')).sheet).toMatchObject({ turned: true })
    expect(drawingOf(at('110 12')).sheet).toEqual({ ratio: 500, turned: true, legend: 'below' })
    expect(drawingOf(at('12 40')).sheet).toMatchObject({ turned: false })
  })

  it('takes in a ring whole, and feet for what they are', () => {
    const { bounds } = drawingOf(
      drawn('  places: [{ what: box, of: VB1, side: north }]\n  lines: [{ kind: curb, circle: 0 0 100 ft }]\n')
    )
    expect(bounds?.north).toBeCloseTo(30.48, 6)
    expect(bounds?.west).toBeCloseTo(-30.48, 6)
  })
})

describe('a place of the drawing', () => {
  const faultsOf = (keys: string) =>
    loadSite(baseSite(keys)).faults.map(one => `${one.code} ${String(one.details['name'])}`)

  it('is of a thing that the site has, each by its kind', () => {
    expect(faultsOf('drawing:\n  places: [{ what: box, of: VB9, at: 0 0 m }]\n')).toEqual([
      'file/dangling-reference VB9'
    ])
    expect(faultsOf('drawing:\n  places: [{ what: shut-off, of: K1, at: 0 0 m }]\n')).toEqual([
      'file/dangling-reference K1'
    ])
    expect(faultsOf('drawing:\n  places: [{ what: drain, of: low end, at: 0 0 m }]\n')).toEqual([])
  })

  it('has both amounts with a unit, corners have pairs, and a ring a radius', () => {
    const code = (keys: string) => loadSite(baseSite(`drawing:\n${keys}`)).faults.map(one => one.code)
    expect(code('  places: [{ what: drain, at: 3 m }]\n')).toEqual(['file/not-understood'])
    expect(code('  places: [{ what: drain, at: 3 4 }]\n')).toEqual(['file/unit-missing'])
    expect(code('  areas: [{ zone: Z1, points: "0 0, 4 0, 4 m" }]\n')).toEqual(['file/not-understood'])
    expect(code('  areas: [{ zone: Z1, circle: 0 0 0 m }]\n')).toEqual(['file/out-of-range'])
  })
})
