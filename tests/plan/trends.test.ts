import { describe, expect, it } from 'vitest'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { date } from '../../src/units/date.ts'
import { baseSite } from '../support/base-site.ts'

const STATIONS = `stations:
  - id: K1/1
    zone: Z1
    valve: { box: VB1, coil: DC latching 3-wire, coil-resistance: 10 ohm, closing-resistance: 8 ohm, lowest-volts: 6 V }
    wire: [{ size: 1.5 mm², length: 50 m }]
    splices: [{ box: VB2, resistance: 0.1 ohm }]
    readings: [{ on: 2025-03-20, loop: 11.2 ohm, closing-loop: 9.2 ohm, temperature: 10 °C, by: installer }]
  - { id: K1/2, zone: Z2, valve: { box: VB2, coil: DC latching 2-wire, coil-resistance: 6 ohm }, wire: [{ size: 1.5 mm², length: 30 m }] }
`
const VISITS = [
  [
    '2026-04-10-route.md',
    'on: 2026-04-10\nby: A. Hand\nreadings: [{ station: K1/1, loop: 12.1 ohm, closing-loop: 9.9 ohm, temperature: 20 °C }]\n'
  ],
  ['2026-06-10-route.md', 'on: 2026-06-10\nreadings: [{ station: K1/1, loop: 30 ohm }]\n']
] as const

function planOf(on: string): Plan {
  const loaded = loadSite(baseSite(STATIONS, { visits: VISITS }))
  if (!loaded.site) throw new Error(JSON.stringify(loaded.faults))
  return makePlan(loaded.site, date(on))
}

describe('readings over the visits', () => {
  it('are those up to the day, oldest first, each held against the first at 20 °C', () => {
    const loop = planOf('2026-05-01').trends.get('K1/1')?.loop ?? []
    expect(loop.map(one => one.on)).toEqual(['2025-03-20', '2026-04-10'])
    expect(loop[0]).toMatchObject({ by: 'installer' })
    expect(loop[0]?.change).toBeUndefined()
    expect(loop[1]).toMatchObject({ by: 'A. Hand', at20Ohm: 12.1 })
    expect(loop[1]?.change).toBeCloseTo(12.1 / (11.2 / 0.9607) - 1, 6)
  })

  it('of the closing half are a row of their own, held against its own first', () => {
    const { closingLoop = [], closingCoil } = planOf('2026-05-01').trends.get('K1/1') ?? {}
    expect(closingLoop.map(one => one.ohm.si)).toEqual([9.2, 9.9])
    expect(closingLoop[1]?.change).toBeCloseTo(9.9 / (9.2 / 0.9607) - 1, 6)
    expect(closingCoil).toEqual([])
  })

  it('without a temperature are compared as they stand', () => {
    const last = planOf('2026-12-31').trends.get('K1/1')?.loop.at(-1)
    expect(last?.at20Ohm).toBeUndefined()
    expect(last?.change).toBeCloseTo(30 / 11.2 - 1, 9)
  })

  it('leave out a station that nobody measured', () => {
    expect(planOf('2026-05-01').trends.has('K1/2')).toBe(false)
  })

  it('show their working', () => {
    const steps = planOf('2026-05-01').workings.filter(one => one.calculation === 'reading-trend')
    expect(steps.map(one => one.subject)).toEqual(['K1/1, loop, 2026-04-10', 'K1/1, closing loop, 2026-04-10'])
  })
})

describe('three leads and splices in the plan', () => {
  const wire = planOf('2026-05-01').wires.get('K1/1')

  it('the loop holds the measured splice: 2 × 50 m × 12.1 Ω/km + 0.1 Ω', () => {
    expect(wire?.loopOhm).toBeCloseTo(1.31, 9)
  })

  it('each half has its own reading at the controller', () => {
    expect(wire?.expectedOhm).toBeCloseTo(11.31, 9)
    expect(wire?.closing?.expectedOhm).toBeCloseTo(9.31, 9)
  })

  it('the half that gets least of the pulse is judged: 9 V × 8 / 9.31', () => {
    expect(wire?.coilVolt).toBeCloseTo((9 * 8) / 9.31, 9)
    expect(wire?.limits.find(one => one.form === 'voltage')?.longestM).toBeCloseTo((8 * (9 / 6 - 1) - 0.1) / 0.0242, 6)
  })

  it('two leads have no second half', () => {
    expect(planOf('2026-05-01').wires.get('K1/2')?.closing).toBeUndefined()
  })
})
