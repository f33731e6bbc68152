import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAbsent, isPresent } from '../../src/base/absent.ts'
import type { Controller, Station } from '../../src/model/site.ts'
import type { WirePlan } from '../../src/plan/plan.ts'
import { bothReadingsOf, planWires } from '../../src/plan/wires.ts'
import { showWireSize } from '../../src/units/wire-size.ts'
import { bareSite } from '../support/bare-site.ts'
import { expectClose } from '../support/close.ts'
import { controller, lengthLimit, pulseSheet, sheet, size, stated, station, valve, wire } from './facts.ts'

function planned(facts: Partial<Station>, unit: Partial<Controller> = {}): WirePlan {
  const site = bareSite({ controllers: [controller(unit)], stations: [station(facts)] })
  const plan = planWires(site).wires.get('K1/1')
  if (!plan) throw new Error('no plan for the station')
  return plan
}

const number = (value: unknown): number => {
  if (typeof value !== 'number') throw new Error(`not a number: ${JSON.stringify(value)}`)
  return value
}

const sizesOf = (plan: WirePlan) => plan.longestBySize.map(row => showWireSize(row.size).replaceAll('\u00a0', ' '))

describe('a run that is too thin', () => {
  it('on the roundabout: 128 m of 0.75 mm², 8.5 V, 4.2 Ω, 5.5 V (site facts; arithmetic on paper)', () => {
    const plan = planned(
      { valves: [valve('4.2 ohm', '5.5 V')], wire: [wire('0.75 mm²', '128 m')] },
      { sheet: pulseSheet('8.5 V') }
    )
    expectClose(number(plan.loopOhm), 6.27, 0.2)
    expectClose(number(plan.coilVolt), 3.41, 0.2)
    expectClose(number(plan.expectedOhm), 10.47, 0.2)
    expectClose(number(plan.longestM), 46.75, 0.1)
    expect(plan).toMatchObject({ lowestVolt: 5.5, pulseVolt: 8.5, passingSize: { kind: 'area', mm2: 2.5 } })
    expectClose(number(plan.passingVolt), 5.86, 0.2)
    expect(sizesOf(plan)).toEqual(['0.75 mm²', '1 mm²', '1.5 mm²', '2.5 mm²'])
    expectClose(plan.longestBySize[2]!.longestM, 94.7, 0.1)
    expect(plan.governing).toMatchObject({ form: 'voltage', passes: false, stated: { value: 5.5, unit: 'V' } })
  })

  it('in the park: 410 ft of 18 AWG, 9.0 V, 8.0 Ω, 6.0 V', () => {
    const plan = planned(
      { valves: [valve('8.0 ohm', '6.0 V')], wire: [wire('18 AWG', '410 ft')] },
      { sheet: pulseSheet('9.0 V') }
    )
    expectClose(number(plan.loopOhm), 5.24, 0.2)
    expectClose(number(plan.coilVolt), 5.44, 0.2)
    expectClose(number(plan.longestM) / 0.3048, 313, 0.2)
    expect(sizesOf(plan)).toEqual(['18 AWG', '16 AWG'])
    expect(plan.passingSize).toEqual({ kind: 'awg', gauge: 16 })
    expectClose(number(plan.passingVolt), 6.38, 0.2)
  })
})

describe('a run that is long enough for its wire', () => {
  it('passes exactly at its longest length and fails a hand’s breadth beyond', () => {
    const at = (length: string) =>
      planned({ valves: [valve('4 ohm', '6 V')], wire: [wire('1.0 mm²', length)] }, { sheet: pulseSheet('9 V') })
    const longest = number(at('10 m').longestM)
    expect(at(`${longest} m`).limits.map(limit => limit.passes)).toEqual([true])
    expect(at(`${longest} m`)).toMatchObject({ passingSize: { kind: 'area', mm2: 1 } })
    expect(at(`${longest + 0.1} m`).limits.map(limit => limit.passes)).toEqual([false])
  })

  it('has only its own size in the ladder', () => {
    const plan = planned(
      { valves: [valve('6 ohm', '6 V')], wire: [wire('1.5 mm²', '3 m')] },
      { sheet: pulseSheet('9 V') }
    )
    expect(sizesOf(plan)).toEqual(['1.5 mm²'])
    expect(plan.longestBySize[0]!.longestM).toBeCloseTo(number(plan.longestM), 9)
  })
})

describe('the limits of a product sheet', () => {
  const facts = { valves: [valve('6 ohm', '6 V')], wire: [wire('14 AWG', '1380 ft')] }

  it('as a length at a gauge holds in the unit it was stated in, exactly at the limit', () => {
    const plan = planned(facts, { sheet: sheet({ lengthLimits: [lengthLimit('1380 ft', '14 AWG')] }) })
    expect(plan.limits).toMatchObject([{ form: 'length', passes: true, stated: { value: 1380, unit: 'ft' } }])
    expect(plan.limits[0]!.longestM / 0.3048).toBeCloseTo(1380, 6)
  })

  it('as a length at another gauge carries over by resistance: 2200 ft of 12 AWG is 1384 ft of 14', () => {
    const plan = planned(facts, { sheet: sheet({ lengthLimits: [lengthLimit('2200 ft', '12 AWG')] }) })
    expect(plan.limits[0]!.passes).toBe(true)
    expectClose(plan.limits[0]!.longestM / 0.3048, 1383.6, 0.05)
  })

  it('as a bare cap lets 100 ft pass “100 ft”, written in meters too, and stops 101 ft', () => {
    const cap = { sheet: sheet({ lengthLimits: [lengthLimit('100 ft')] }) }
    const at = (length: string) => planned({ ...facts, wire: [wire('18 AWG', length)] }, cap)
    expect(['100 ft', '30.48 m', '101 ft'].map(length => at(length).limits[0]!.passes)).toEqual([true, true, false])
    const plan = at('101 ft')
    expect(isAbsent(plan.passingSize) && plan.passingSize.reason).toMatch(/no size up to 8.AWG passes/u)
    expect(sizesOf(plan)).toEqual(['18 AWG', '16 AWG', '14 AWG', '12 AWG', '10 AWG', '8 AWG'])
  })

  it('as loop ohms', () => {
    const plan = planned(facts, { sheet: sheet({ loopLimit: stated('6.96 ohm', 'resistance') }) })
    expect(plan.limits).toMatchObject([{ form: 'loop', passes: false, stated: { value: 6.96, unit: 'ohm' } }])
  })

  it('given in all three forms are all judged, and the tightest governs', () => {
    const all = pulseSheet('9 V', {
      loopLimit: stated('10 ohm', 'resistance'),
      lengthLimits: [lengthLimit('2000 ft'), lengthLimit('1000 ft', '14 AWG')]
    })
    const plan = planned(facts, { sheet: all })
    expect(plan.limits.map(limit => [limit.form, limit.passes])).toEqual([
      ['voltage', false],
      ['loop', true],
      ['length', true],
      ['length', false]
    ])
    expect(plan.governing?.form).toBe('voltage')
    expect(number(plan.longestM)).toBe(Math.min(...plan.limits.map(limit => limit.longestM)))
  })

  it('none stated: the loop is still computed, the longest run is not, with the reason', () => {
    const plan = planned(facts, { sheet: sheet() })
    expect(isPresent(plan.loopOhm)).toBe(true)
    expect(plan).not.toHaveProperty('governing')
    expect(isAbsent(plan.longestM) && plan.longestM.reason).toMatch(/states no limit/u)
    expect(isAbsent(plan.passingSize)).toBe(true)
  })

  it('at a size that cannot be read is left out, and the others hold', () => {
    const plan = planned(facts, {
      sheet: sheet({ loopLimit: stated('7 ohm', 'resistance'), lengthLimits: [lengthLimit('100 m', '0.8 mm')] })
    })
    expect(plan.limits.map(limit => limit.form)).toEqual(['loop'])
  })
})

describe('two coils on one output', () => {
  const run = [wire('1.5 mm²', '60 m')]
  const two = { valves: [valve('6 ohm', '6 V'), valve('6 ohm', '6 V')], wire: run }
  const one = { valves: [valve('6 ohm', '6 V')], wire: run }

  it('read half the ohms and allow half the run, by voltage, by loop and by a length at a size', () => {
    const sheets = [
      pulseSheet('9 V'),
      sheet({ loopLimit: stated('7 ohm', 'resistance') }),
      sheet({ lengthLimits: [lengthLimit('400 m', '1.5 mm²')] })
    ]
    for (const each of sheets) {
      const [single, double] = [planned(one, { sheet: each }), planned(two, { sheet: each })]
      expect(number(double.coilOhm)).toBeCloseTo(number(single.coilOhm) / 2, 9)
      expect(number(double.longestM)).toBeCloseTo(number(single.longestM) / 2, 9)
    }
  })

  it('say on a limit in ohms that it is shared, and leave a cap on length alone', () => {
    const both = sheet({ loopLimit: stated('7 ohm', 'resistance'), lengthLimits: [lengthLimit('30 m')] })
    const [loop, cap] = planned(two, { sheet: both }).limits
    expect(loop).toMatchObject({ form: 'loop', coils: 2 })
    expect(cap).not.toHaveProperty('coils')
    expect(cap!.longestM).toBe(30)
  })

  it('must both be satisfied: the higher lowest voltage counts', () => {
    const plan = planned(
      { valves: [valve('6 ohm', '5 V'), valve('12 ohm', '6 V')], wire: run },
      { sheet: pulseSheet('9 V') }
    )
    expect(plan.lowestVolt).toBe(6)
    expect(number(plan.coilOhm)).toBeCloseTo(4, 9)
  })

  it('are not computed where one of them has no resistance', () => {
    const plan = planned(
      { valves: [valve('6 ohm', '6 V'), valve(undefined, '6 V')], wire: run },
      { sheet: pulseSheet('9 V') }
    )
    expect(isAbsent(plan.coilOhm) && plan.coilOhm.reason).toBe('the coil resistance is not stated')
    expect(isAbsent(plan.coilVolt)).toBe(true)
    expect(isAbsent(plan.expectedOhm)).toBe(true)
    expect(plan.limits).toEqual([])
  })
})

describe('a run of several stretches', () => {
  it('adds them up, a common of another size counted for the way back', () => {
    const plan = planned(
      {
        valves: [valve('6 ohm', '6 V')],
        wire: [wire('1.5 mm²', '40 m', { common: size('2.5 mm²') }), wire('0.75 mm²', '10 m')]
      },
      { sheet: pulseSheet('9 V') }
    )
    expect(plan.lengthM).toBe(50)
    expect(number(plan.loopOhm)).toBeCloseTo(0.04 * (12.1 + 7.41) + 0.02 * 24.5, 9)
  })

  it('scales as a whole for the longest run, and climbs from its thinnest wire', () => {
    const plan = planned(
      { valves: [valve('6 ohm', '6 V')], wire: [wire('1.5 mm²', '100 m'), wire('0.75 mm²', '100 m')] },
      { sheet: pulseSheet('9 V') }
    )
    expect(number(plan.longestM)).toBeCloseTo((200 * 3) / (0.2 * (12.1 + 24.5)), 6)
    expect(sizesOf(plan)[0]).toBe('0.75 mm²')
  })
})

describe('a run that cannot be computed', () => {
  it('has every figure absent with the reason where a size is a bare mm, and both readings on the side', () => {
    const facts = { valves: [valve('5.0 ohm', '5.0 V')], wire: [wire('0.8 mm', '70 m')] }
    const unit = { sheet: pulseSheet('8.5 V', { lengthLimits: [lengthLimit('60 m')] }) }
    const plan = planned(facts, unit)
    for (const figure of [plan.loopOhm, plan.coilVolt, plan.expectedOhm, plan.longestM, plan.passingSize])
      expect(isAbsent(figure) && figure.reason).toMatch(/may be a diameter or an area/u)
    expect(plan.limits).toMatchObject([{ form: 'length', passes: false, longestM: 60 }])
    const there = station(facts)
    const { asDiameter, asArea } = bothReadingsOf(
      bareSite({ controllers: [controller(unit)], stations: [there] }),
      there
    )
    expectClose(number(asDiameter.loopOhm), 4.8, 0.2)
    expectClose(number(asDiameter.coilVolt), 4.34, 0.2)
    expectClose(number(asArea.loopOhm), 3.02, 0.2)
    expectClose(number(asArea.coilVolt), 5.3, 0.2)
  })

  it('has nothing but reasons where no wire is recorded, and judges no limit', () => {
    const plan = planned(
      { valves: [valve('6 ohm', '6 V')], wire: [] },
      { sheet: pulseSheet('9 V', { lengthLimits: [lengthLimit('30 m')] }) }
    )
    expect(isAbsent(plan.loopOhm) && plan.loopOhm.reason).toBe('no wire is recorded')
    expect(plan).toMatchObject({ lengthM: 0, limits: [], longestBySize: [] })
  })

  it('works without a product sheet', () => {
    const plan = planned({ valves: [valve('6 ohm')], wire: [wire('1.5 mm²', '10 m')] })
    expect(number(plan.loopOhm)).toBeCloseTo(0.242, 9)
    expect(isAbsent(plan.coilVolt) && plan.coilVolt.reason).toBe('the product sheet states no pulse volts')
    expect(plan).not.toHaveProperty('pulseVolt')
  })
})

describe('the plan of all wires', () => {
  it('has one for every station and for a master valve with a wire of its own', () => {
    const site = bareSite({
      controllers: [
        controller({
          sheet: pulseSheet('9 V'),
          masterValve: { ...valve('6 ohm', '6 V'), wire: [wire('1.5 mm²', '5 m')] }
        })
      ],
      stations: [station({ id: 'K1/1' }), station({ id: 'K1/2', number: 2 })]
    })
    expect([...planWires(site).wires.keys()]).toEqual(['K1/1', 'K1/2', 'K1/MV'])
  })

  it('shows its arithmetic as a person would write it', () => {
    const site = bareSite({
      controllers: [controller({ sheet: pulseSheet('8.5 V') })],
      stations: [station({ valves: [valve('4.2 ohm', '5.5 V')], wire: [wire('0.75 mm²', '128 m')] })]
    })
    const steps = planWires(site).workings.flatMap(working => working.steps.map(step => step.replaceAll('\u00a0', ' ')))
    expect(steps.slice(0, 4)).toEqual([
      '2 × 128 m × 24.5 Ω/km = 6.27 Ω (IEC 60228, class 1 and 2, plain copper, at 20 °C)',
      '8.5 V × 4.2 Ω / (4.2 Ω + 6.27 Ω) = 3.41 V',
      '4.2 Ω × (8.5 V / 5.5 V − 1) = 2.29 Ω of loop at most',
      'voltage: loop 6.27 Ω is over 2.29 Ω; longest run 46.75 m'
    ])
  })

  it('writes a run in feet in feet, whatever the size is written in', () => {
    const site = bareSite({
      stations: [
        station({ wire: [wire('2.5 mm²', '100 ft')] }),
        station({ id: 'K1/2', wire: [wire('14 AWG', '30 m')] })
      ]
    })
    const steps = planWires(site).workings.map(working => working.steps[0]?.replaceAll('\u00a0', ' '))
    expect(steps[0]).toMatch(/^2 × 100 ft × 2\.259 Ω\/kft = 0\.452 Ω/u)
    expect(steps[1]).toMatch(/^2 × 30 m × 8\.286 Ω\/km = 0\.497 Ω/u)
  })

  it('never lets a longer run do with a thinner size', () => {
    const length = fc.integer({ min: 1, max: 900 })
    const mm2 = (plan: WirePlan) => {
      if (!isPresent(plan.passingSize)) return Infinity
      return plan.passingSize.kind === 'area' ? plan.passingSize.mm2 : 0
    }
    fc.assert(
      fc.property(length, length, (one, other) => {
        const at = (meters: number) =>
          planned(
            { valves: [valve('4.2 ohm', '5.5 V')], wire: [wire('0.5 mm²', `${meters} m`)] },
            { sheet: pulseSheet('8.5 V') }
          )
        expect(mm2(at(Math.max(one, other)))).toBeGreaterThanOrEqual(mm2(at(Math.min(one, other))))
      })
    )
  })
})
