import { describe, expect, it } from 'vitest'
import { isAbsent } from '../../src/base/absent.ts'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { PressurePlan } from '../../src/plan/pressure-plan.ts'
import { date } from '../../src/units/date.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'

function planned(keys: string) {
  const { site, faults } = loadSite(baseSite(keys))
  if (!site) throw new Error(JSON.stringify(faults))
  return makePlan(site, date(BASE_ON))
}

function pressureOf(keys: string, id = 'K1/2'): PressurePlan {
  const pressure = planned(keys).pressures.get(id)
  if (pressure === undefined || isAbsent(pressure)) throw new Error(pressure?.reason ?? 'no pipe')
  return pressure
}

const SUPPLY = `supplies:
  - id: S1
    kind: potable
    static-pressure: 4.1 bar
    losses: [{ of: meter, loss: 0.25 bar }, { of: backflow assembly, loss: 0.5 bar }]
    pipe: [{ inside: 40.8 mm, material: plastic, length: 34 m, rise: -1 m }]
`
const STATIONS = `stations:
  - { id: K1/1, zone: Z1, valve: { normal-flow: 12 L/min } }
  - id: K1/2
    zone: Z2
    valve: { normal-flow: 28 L/min, loss: 0.2 bar }
    regulator: 2.5 bar
    pipe: [{ inside: 26 mm, material: plastic, length: 20 m }, { inside: 20 mm, material: copper, length: 5 m, rise: 2 m }]
    devices: { kind: spray, pressure: 2.1 bar }
`

describe('the pressure of a zone', () => {
  it('goes through fittings, main, valve, regulator and lateral, in that order, and every part is in it', () => {
    const { parts, start, leftPa, marginPa, neededPa } = pressureOf(SUPPLY + STATIONS)
    expect(parts.map(({ of }) => of)).toEqual([
      ...['stated', 'stated', 'supply-pipe', 'valve', 'regulator', 'station-pipe', 'station-pipe']
    ])
    const taken = parts.reduce((sum, { lossPa, liftPa }) => sum + lossPa + liftPa, 0)
    expect(start.pressurePa - taken).toBeCloseTo(leftPa, 6)
    expect(parts[4]?.leftPa).toBe(250_000)
    expect(parts[2]?.liftPa).toBeCloseTo(-9806.65, 6)
    expect((leftPa - (neededPa as number)) / (marginPa as number)).toBeCloseTo(1, 9)
  })

  it('names the part that takes most, and the velocity that each material bears', () => {
    const { parts, governing } = pressureOf(SUPPLY + STATIONS)
    expect(parts[governing ?? -1]?.part.name).toBe('regulator')
    expect(parts.flatMap(({ pipe }) => (pipe ? [pipe.mostMPerS] : []))).toEqual([1.524, 1.524, 2.1336])
  })

  it('takes the flow of the zone in its own pipe, and what runs beside it in the main', () => {
    const keys = `${SUPPLY}controllers:
  - { id: K1, box: VB1, programs: [{ id: A, days: every day, starts: ["22:00"], stations: { 1: 50 min } }] }
  - { id: K2, box: VB2, programs: [{ id: A, days: every day, starts: ["22:30"], stations: { 1: 10 min } }] }
stations:
  - { id: K1/1, zone: Z1, valve: { normal-flow: 12 L/min }, pipe: [{ inside: 26 mm, material: plastic, length: 20 m }] }
  - { id: K2/1, zone: Z2, valve: { normal-flow: 28 L/min } }
`
    const { parts, beside, mainFlowM3s, flowM3s } = pressureOf(keys, 'K1/1')
    expect(beside).toEqual(['K2/1'])
    expect([flowM3s, mainFlowM3s].map(one => one * 60_000)).toEqual([expect.closeTo(12, 6), expect.closeTo(40, 6)])
    const flows = parts.flatMap(({ part }) => (part.kind === 'pipe' ? [part.flowM3s * 60_000] : []))
    expect(flows).toEqual([expect.closeTo(40, 6), expect.closeTo(12, 6)])
  })

  it('is there only where a pipe is written, and says why where it cannot be worked out', () => {
    expect(planned('revision: "2"\n').pressures.size).toBe(0)
    const lacking = `supplies: [{ id: S1, kind: pond, pipe: [{ inside: 40 mm, material: plastic, length: 3 m }] }]\n`
    expect(planned(lacking).pressures.get('K1/1')).toMatchObject({ reason: 'no pressure of the supply is stated' })
    const flowless = `${SUPPLY}stations: [{ id: K1/1, zone: Z1 }, { id: K1/2, zone: Z2 }]\n`
    expect(planned(flowless).pressures.get('K1/1')).toMatchObject({ reason: 'no flow is stated' })
  })

  it('shows its arithmetic among the workings, by the cards of its calculations', () => {
    const { workings } = planned(SUPPLY + STATIONS)
    const steps = workings.find(one => one.calculation === 'pressure-left' && one.subject === 'K1/2')?.steps ?? []
    expect(steps[0]).toBe('at the point of connection: 4.1\u00a0bar')
    expect(steps.at(-1)).toContain('over')
    expect(workings.some(one => one.calculation === 'pipe-loss' && one.subject.startsWith('K1/2'))).toBe(true)
  })
})
