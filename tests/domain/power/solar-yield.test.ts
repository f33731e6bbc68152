import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { panelLight, panelMah, solarVerdict } from '../../../src/domain/power/solar-month.ts'
import { beamRatio, diffuseShare } from '../../../src/domain/power/tilted-radiation.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

const latitude = fc.double({ min: -80, max: 80, noNaN: true })
const day = fc.integer({ min: 1, max: 366 })
const share = fc.double({ min: 0, max: 1, noNaN: true })
const flat = { tiltDeg: 0, facesSun: true, shadeLost: 0 }

describe('light on a panel', () => {
  it('is never below zero, and never grows with shade', () => {
    fc.assert(
      fc.property(
        latitude,
        day,
        fc.double({ min: 0, max: 90, noNaN: true }),
        share,
        share,
        (latitudeDeg, dayOfYear, tiltDeg, one, other) => {
          const at = (shadeLost: number) =>
            panelLight({ latitudeDeg, dayOfYear }, { by: 'overcast' }, { tiltDeg, facesSun: true, shadeLost }).panelMj
          expect(at(Math.max(one, other))).toBeGreaterThanOrEqual(0)
          expect(at(Math.max(one, other))).toBeLessThanOrEqual(at(Math.min(one, other)))
        }
      )
    )
  })

  it('grows with sunshine on a panel that lies flat', () => {
    fc.assert(
      fc.property(
        latitude,
        day,
        fc.double({ min: 0, max: 24, noNaN: true }),
        fc.double({ min: 0, max: 24, noNaN: true }),
        (latitudeDeg, dayOfYear, one, other) => {
          const at = (hours: number) => panelLight({ latitudeDeg, dayOfYear }, { by: 'sunshine', hours }, flat).panelMj
          expect(at(Math.max(one, other))).toBeGreaterThanOrEqual(at(Math.min(one, other)) - 1e-9)
        }
      )
    )
  })

  it('is none in the polar night, and the same north and south half a year apart, within what the distance of the sun makes', () => {
    expect(panelLight({ latitudeDeg: 80, dayOfYear: 355 }, { by: 'overcast' }, flat)).toEqual({
      aboveMj: 0,
      levelMj: 0,
      panelMj: 0,
      fullSunH: 0
    })
    expect(beamRatio({ latitudeDeg: 80, dayOfYear: 355, tiltDeg: 60, groundShare: 0.2 })).toBe(0)
    const tilted = { tiltDeg: 60, facesSun: true, shadeLost: 0 }
    const north = panelLight({ latitudeDeg: 45, dayOfYear: 172 }, { by: 'sunshine', hours: 8 }, tilted).panelMj
    const south = panelLight({ latitudeDeg: -45, dayOfYear: 355 }, { by: 'sunshine', hours: 8 }, tilted).panelMj
    expect(Math.abs(south / north - 1)).toBeLessThan(0.08)
  })

  it('tilted to the noon sun is more than flat in winter, and less where it faces another way', () => {
    const december = { latitudeDeg: 55, dayOfYear: 349 }
    const sun = { by: 'sunshine', hours: 3 } as const
    const at = (tiltDeg: number, facesSun: boolean) =>
      panelLight(december, sun, { tiltDeg, facesSun, shadeLost: 0 }).panelMj
    expect(at(60, true)).toBeGreaterThan(1.5 * at(0, true))
    expect(at(60, false)).toBeLessThan(at(0, true))
    expect(at(0, false)).toBe(at(0, true))
  })

  it('under a cloudier sky than the correlation covers comes from the sky as it does under its cloudiest', () => {
    expect(diffuseShare(0.1, 1)).toBe(diffuseShare(0.3, 1))
    expect(diffuseShare(0.9, 1.5)).toBe(diffuseShare(0.8, 1.5))
  })
})

describe('what a panel gives against what is drawn', () => {
  it('is enough at exactly twice, in doubt at exactly as much, too little below', () => {
    expect(solarVerdict(10, 5)).toBe('enough')
    expect(solarVerdict(9.999, 5)).toBe('in doubt')
    expect(solarVerdict(5, 5)).toBe('in doubt')
    expect(solarVerdict(4.999, 5)).toBe('too little')
    expect(solarVerdict(0, 0)).toBe('enough')
  })

  it('goes by the current into the cell where that is stated, and is not known without volts', () => {
    expect(panelMah(2, { peakA: 0.1, derating: 0.5 })).toBeCloseTo(100, 9)
    expect(panelMah(2, { watt: 0.36, cellVolt: 3.6, derating: 0.5 })).toBeCloseTo(100, 9)
    expect(panelMah(2, { watt: 0.36, derating: 0.5 })).toBeUndefined()
  })

  it.each([
    ['a tilt beyond upright', { tilt: '91 °' }, /tilt cannot be more than 90/u],
    ['more shade than light', { shade: '101 %' }, /shade cannot be more than 100 %/u],
    ['no day', {}, /give one of month/u]
  ])('says why there is no figure: %s', (what, inputs, said) => {
    const when: Record<string, string> = what === 'no day' ? {} : { month: 'Mar' }
    expect(calcOrAbsent('solar-yield', { latitude: '40', ...when, ...(inputs as Record<string, string>) })).toMatch(
      said
    )
  })

  it('leaves charge and verdict out where the panel is not given', () => {
    expect(Object.keys(calc('solar-yield', { latitude: '40', month: 'Mar' }))).toEqual([
      'above',
      'level',
      'on-panel',
      'full-sun'
    ])
  })
})
