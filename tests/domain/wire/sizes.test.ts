import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAbsent, isPresent } from '../../../src/base/absent.ts'
import { bothReadings, judgePair } from '../../../src/domain/wire/ambiguous.ts'
import { awgAreaMm2, awgDiameterM, gaugeOfDiameter } from '../../../src/domain/wire/awg.ts'
import { resistancePerM } from '../../../src/domain/wire/resistance.ts'
import { sectionMm2 } from '../../../src/domain/wire/section.ts'
import { nearestGauge } from '../../../src/domain/wire/wire-size.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

const anyGauge = fc.integer({ min: -3, max: 40 })

describe('gauge, diameter and area', () => {
  it('turn into one another and back for every gauge', () => {
    fc.assert(
      fc.property(anyGauge, gauge => {
        expect(gaugeOfDiameter(awgDiameterM(gauge))).toBeCloseTo(gauge, 9)
        expect(nearestGauge(awgDiameterM(gauge) * 1000)).toBe(gauge)
      })
    )
  })

  it('double the diameter in six gauges and the area in three, nearly', () => {
    fc.assert(
      fc.property(anyGauge, gauge => {
        expect(awgDiameterM(gauge - 6) / awgDiameterM(gauge)).toBeCloseTo(2.005, 3)
        expect(awgAreaMm2(gauge - 3) / awgAreaMm2(gauge)).toBeCloseTo(2.005, 3)
      })
    )
  })

  it('stay within 4/0 and 40 when a size lies outside', () => {
    expect([nearestGauge(50), nearestGauge(0.01)]).toEqual([-3, 40])
  })

  it('are told alike by the card for a gauge, an area and a diameter', () => {
    expect(calc('wire-size', { size: '4/0 AWG' })).toMatchObject({ 'nearest-gauge': '4/0 AWG' })
    expect(calc('wire-size', { size: '2.05 mm diameter' })['nearest-gauge']).toBe('12 AWG')
    expect(calc('wire-size', { size: '2.08 mm²' })['nearest-gauge']).toBe('14 AWG')
    expect(calc('wire-size', { size: '12 AWG, 3.31 mm²' })['area']).toBeCloseTo(3.3088, 4)
  })

  it('are not told for a bare mm: the card gives the reason instead', () => {
    expect(calcOrAbsent('wire-size', { size: '0.8 mm' })).toMatch(/may be a diameter or an area/u)
    expect(isAbsent(sectionMm2({ kind: 'ambiguous', mm: 0.8 }))).toBe(true)
  })
})

describe('both readings of a bare mm', () => {
  it('are those that resistance gives once the size is written clearly', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(0.5, 0.75, 0.8, 1, 1.5, 2.5, 4),
        fc.double({ min: 1, max: 500, noNaN: true }),
        (mm, lengthM) => {
          const { asDiameter, asArea } = bothReadings(mm, lengthM)
          for (const { size, ohmPerM, loopOhm } of [asDiameter, asArea]) {
            const wire = resistancePerM(size, { conductor: 'solid', coating: 'plain' }, 20)
            expect(isPresent(wire) && wire.ohmPerM).toBeCloseTo(ohmPerM, 12)
            expect(loopOhm).toBeCloseTo(2 * lengthM * ohmPerM, 9)
          }
        }
      )
    )
  })

  it('cross over: below 1.27 mm the diameter reading is the thinner wire, above it the thicker', () => {
    expect(bothReadings(0.8, 1).asDiameter.loopOhm).toBeGreaterThan(bothReadings(0.8, 1).asArea.loopOhm)
    expect(bothReadings(2.5, 1).asDiameter.loopOhm).toBeLessThan(bothReadings(2.5, 1).asArea.loopOhm)
  })
})

describe('a gauge and an area given together', () => {
  it.each([
    [14, 2.08, 'agrees'],
    [14, 2.1, 'agrees'],
    [14, 2.5, 'disagrees'],
    [12, 3.31, 'agrees'],
    [12, 2.05, 'diameter given as area'],
    [14, 1.63, 'diameter given as area'],
    [18, 1.02, 'diameter given as area'],
    [12, 2.5, 'disagrees']
  ])('%d AWG with %d mm²: %s', (gauge, mm2, verdict) => {
    expect(judgePair(gauge, mm2)).toBe(verdict)
  })
})
