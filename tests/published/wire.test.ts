import { describe, expect, it } from 'vitest'
import { isPresent } from '../../src/base/absent.ts'
import { judgePair } from '../../src/domain/wire/ambiguous.ts'
import { awgAreaMm2, awgDiameterM } from '../../src/domain/wire/awg.ts'
import { coilVolt } from '../../src/domain/wire/coil-voltage.ts'
import { judge } from '../../src/domain/wire/limit.ts'
import type { OutputLimit } from '../../src/domain/wire/limit.ts'
import { parallelOhm } from '../../src/domain/wire/parallel.ts'
import { loopOhm } from '../../src/domain/wire/wire-loop.ts'
import { dropVolt } from '../../src/domain/wire/voltage-drop.ts'
import { quantity } from '../../src/units/quantity.ts'
import type { WireSize } from '../../src/units/wire-size.ts'
import { calc } from '../support/calc.ts'
import { expectClose } from '../support/close.ts'

const SOLID = { conductor: 'solid', coating: 'plain' } as const
const awg = (gauge: number): WireSize => ({ kind: 'awg', gauge })
const feet = (value: number) => quantity(value, 'ft', 'length').si
const perKft = (value: number) => quantity(value, 'ohm/kft', 'resistance-per-length').si

function loop(size: WireSize, lengthM: number): number {
  const worked = loopOhm([{ size, lengthM, unit: 'm', make: SOLID }], 20)
  if (!isPresent(worked)) throw new Error(worked.reason)
  return worked.value
}

describe('geometry and resistance of gauges (P1 to P4; 9 values)', () => {
  it('P1: 12 AWG is 2.0525 mm and 3.3088 mm², 14 AWG 1.6277 mm and 2.0809 mm² (ASTM B258 formula; GNU units), within 0.01 %', () => {
    expectClose(awgDiameterM(12) * 1000, 2.0525, 0.01)
    expectClose(awgAreaMm2(12), 3.3088, 0.01)
    expectClose(awgDiameterM(14) * 1000, 1.6277, 0.01)
    expectClose(awgAreaMm2(14), 2.0809, 0.01)
  })

  it('P2: 12 AWG solid at 20 °C is 1.588 Ω per 1000 ft, 5.211 Ω/km (NBS tables, in a cable tester’s copy), within 0.1 %', () => {
    const wire = calc('resistance-at', { size: '12 AWG', length: '1000 ft' })
    expectClose(wire['resistance'] as number, 1.588, 0.1)
    expectClose(wire['per-km'] as number, 5.211, 0.1)
  })

  it('P3: 12 AWG taken from 20 to 75 °C is 1.93 Ω per 1000 ft (NEC chapter 9, table 8), within 0.3 %', () => {
    expectClose(calc('resistance-at', { size: '12 AWG', temperature: '75 °C' })['per-kft'] as number, 1.93, 0.3)
  })

  it('P4: a run of 100 m of 2.5 mm² is a loop of 1.482 Ω (IEC 60228), within 0.1 %', () => {
    expectClose(calc('wire-loop', { size: '2.5 mm²', length: '100 m' })['loop'] as number, 1.482, 0.1)
  })

  it('the mean of 12 AWG in mils is 80.8 (a cable tester’s table), within its three figures', () => {
    expectClose(awgDiameterM(12) / 0.0000254, 80.808, 0.001)
  })
})

describe('worked voltage drops (P5, P6, W1 to W12; 10 values)', () => {
  it('P5, W1: 100 ft at 4.99 Ω per 1000 ft and 4 A loses 3.99 V, 16.6 % of 24 V (electrician’s training page: 4.0 V, 16.7 %), within 0.5 %', () => {
    const drop = calc('voltage-drop', { length: '100 ft', current: '4 A', resistance: '4.99 ohm/kft', supply: '24 V' })
    expectClose(drop['drop'] as number, 4.0, 0.5)
    expectClose(drop['drop-share'] as number, 16.7, 0.5)
  })

  it('P6, W2: 1000 ft, 6.78 out and 2.68 Ω per 1000 ft back at 0.5 A: 9.46 Ω, 4.73 V lost, 19.27 V left of 24 (New Mexico State University, Soils 456, chapter 11, question 2), within 0.3 %', () => {
    const drop = calc('voltage-drop', {
      length: '1000 ft',
      current: '0.5 A',
      resistance: '6.78 ohm/kft',
      'return-resistance': '2.68 ohm/kft',
      supply: '24 V'
    })
    expectClose(drop['loop'] as number, 9.46, 0.3)
    expectClose(drop['drop'] as number, 4.72, 0.3)
    expectClose(drop['left'] as number, 19.27, 0.3)
  })

  it('W6: K of 12.9, 20 A, 100 ft: 7.9 V in 12 AWG of 6530 cmil and 3.1 V in 8 AWG of 16510 (electrician’s exam course), within 1 %', () => {
    const byK = (cmil: number) => dropVolt(feet(100), perKft(12_900 / cmil), perKft(12_900 / cmil), 20)
    expectClose(byK(6530), 7.9, 1)
    expectClose(byK(16510), 3.1, 1)
  })

  it('W8: where 1000 ft is 10.4 Ω, 1500 ft is 15.6 Ω (US Navy NEETS module 4, answer 9), exactly', () => {
    expect(perKft(10.4) * feet(1500)).toBeCloseTo(15.6, 9)
  })

  it('W11: 2.5 mm² at 0.0225 Ω·mm²/m drops 18 mV for an ampere and a meter (BS 7671 voltage-drop table, in a copy), exactly', () => {
    expect(dropVolt(1, 0.0225 / 2.5, 0.0225 / 2.5, 1) * 1000).toBeCloseTo(18, 9)
  })

  it('W12: four cores of 0.85 mm² at 0.017 Ω·mm²/m side by side over 1 km are 5 Ω (a school problem of a cable), exactly', () => {
    const core = (0.017 / 0.85) * 1000
    expect(parallelOhm([core, core, core, core])).toBeCloseTo(5, 9)
  })
})

describe('limits of an output (P7 to P10, trade limits: common practice, no source; 14 values)', () => {
  it('P7: 2200 ft of 12 AWG and 1380 ft of 14 AWG are 6.99 and 6.97 Ω, and agree within 0.5 %', () => {
    const [twelve, fourteen] = [loop(awg(12), feet(2200)), loop(awg(14), feet(1380))]
    expectClose(twelve, 6.99, 0.2)
    expectClose(fourteen, 6.97, 0.2)
    expectClose(twelve, fourteen, 0.5)
  })

  it.each([
    ['18 AWG', 'ft', 547],
    ['8 AWG', 'ft', 5556],
    ['10 AWG', 'ft', 3494],
    ['20 AWG', 'ft', 344],
    ['1.0 mm²', 'm', 193],
    ['2.5 mm²', 'm', 471],
    ['4 mm²', 'm', 757],
    ['6 mm²', 'm', 1133]
  ])('P8: a loop limit of 6.98 Ω carries over to %s as %s %d, within 0.5 %', (size, unit, published) => {
    const value = calc('wire-limit', { size, length: '50 m', 'limit-loop': '6.98 ohm' })
    expectClose((value['longest'] as number) / quantity(1, unit, 'length').si, published, 0.5)
  })

  it('P9: “12 AWG, 2.05 mm²” is a diameter given as an area; 14 AWG with 2.08 mm² agrees', () => {
    expect(judgePair(12, 2.05)).toBe('diameter given as area')
    expect(judgePair(14, 2.08)).toBe('agrees')
    expect(judgePair(12, 2.5)).toBe('disagrees')
  })

  it('P10: a run of 100 ft passes a limit of “100 ft (30 m)”, and 101 ft does not', () => {
    const limit = { size: '18 AWG', 'limit-length': '100 ft (30 m)' }
    expect(calc('wire-limit', { ...limit, length: '100 ft' })['passes']).toBe(true)
    expect(calc('wire-limit', { ...limit, length: '30.48 m' })['passes']).toBe(true)
    expect(calc('wire-limit', { ...limit, length: '101 ft' })['passes']).toBe(false)
  })

  it('a limit at 20 °C must not be applied with the 75 °C table: 7 Ω there would be 1813 ft of 12 AWG, not 2200', () => {
    expectClose(7 / (2 * perKft(1.93)) / feet(1), 1813, 0.1)
    const limit: OutputLimit = { form: 'loop', ohm: 7, coils: 1 }
    const judged = judge(limit, { lengthM: feet(2200), loopOhm: loop(awg(12), feet(2200)) }, SOLID)
    expect(isPresent(judged) && judged.passes).toBe(true)
  })
})

describe('runs of the invented sites, by arithmetic on paper (14 values)', () => {
  const site = (pulseVolt: number, coilOhm: number, loopOhm: number) =>
    coilVolt({ pulseVolt, coilOhm, loopOhm, sourceOhm: 0 })
  const mm2 = (value: number): WireSize => ({ kind: 'area', mm2: value })

  // Figures on paper are rounded to three: 0.2 %.
  it('roundabout: 128 m of 0.75 mm² is 6.27 Ω and leaves 3.41 of 8.5 V; 1.5 mm² leaves 4.89, 2.5 mm² 5.86', () => {
    expectClose(loop(mm2(0.75), 128), 6.27, 0.2)
    expectClose(site(8.5, 4.2, loop(mm2(0.75), 128)), 3.41, 0.2)
    expectClose(site(8.5, 4.2, loop(mm2(1.5), 128)), 4.89, 0.2)
    expectClose(site(8.5, 4.2, loop(mm2(2.5), 128)), 5.86, 0.2)
    const value = calc('wire-limit', {
      size: '1.5 mm²',
      length: '128 m',
      'pulse-volts': '8.5 V',
      'lowest-volts': '5.5 V',
      coil: '4.2 ohm'
    })
    expectClose(value['longest'] as number, 94.7, 0.2)
  })

  it('park: 410 ft of 18 AWG is 5.24 Ω and leaves 5.44 of 9 V, 313 ft would do; 16 AWG leaves 6.38 V', () => {
    expectClose(loop(awg(18), feet(410)), 5.24, 0.2)
    expectClose(site(9, 8, loop(awg(18), feet(410))), 5.44, 0.2)
    expectClose(site(9, 8, loop(awg(16), feet(410))), 6.38, 0.2)
    const limits = { 'pulse-volts': '9 V', 'lowest-volts': '6 V', coil: '8 ohm' }
    expectClose(
      (calc('wire-limit', { size: '18 AWG', length: '410 ft', ...limits })['longest'] as number) / feet(1),
      313,
      0.2
    )
    expect(calc('wire-choose', { ladder: 'AWG', length: '410 ft', ...limits })['size']).toBe('16 AWG')
  })

  it('roof: 70 m of “0.8 mm” is 4.80 Ω and 4.34 V as a diameter, 3.02 Ω and 5.30 V as an area', () => {
    const [diameter, area] = [loop({ kind: 'diameter', mm: 0.8 }, 70), loop(mm2(0.8), 70)]
    expectClose(diameter, 4.8, 0.2)
    expectClose(site(8.5, 5, diameter), 4.34, 0.2)
    expectClose(area, 3.02, 0.2)
    expectClose(site(8.5, 5, area), 5.3, 0.2)
  })
})
