import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { leastInsideM, pipeHeadLossM, pipeVelocityMPerS } from '../../../src/domain/supply/pipe-loss.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

describe('a pipe', () => {
  it('loses more the faster, the longer, the narrower and the rougher', () => {
    const times = fc.double({ min: 1.01, max: 4, noNaN: true })
    fc.assert(
      fc.property(times, more => {
        const loss = pipeHeadLossM(0.001, 0.025, 30, 150)
        expect(pipeHeadLossM(0.001 * more, 0.025, 30, 150)).toBeGreaterThan(loss)
        expect(pipeHeadLossM(0.001, 0.025, 30 * more, 150)).toBeCloseTo(loss * more, 9)
        expect(pipeHeadLossM(0.001, 0.025 / more, 30, 150)).toBeGreaterThan(loss)
        expect(pipeHeadLossM(0.001, 0.025, 30, 150 / more)).toBeGreaterThan(loss)
      })
    )
  })

  it('is told to be too small over 5 ft/s, not at it', () => {
    const inside = leastInsideM(0.001, 1.524)
    expect(pipeVelocityMPerS(0.001, inside)).toBeCloseTo(1.524, 9)
    const run = (mm: number) =>
      calc('pipe-loss', { flow: '60 L/min', inside: `${mm} mm`, length: '30 m', material: 'plastic' })
    expect(run(inside * 1000)['within-limit']).toBe(true)
    expect(run(inside * 1000 - 0.01)['within-limit']).toBe(false)
    expect(run(20)['least-inside']).toBeCloseTo(inside * 1000, 6)
  })

  it('is of a material or a roughness, one of them, and of some size', () => {
    const run = (more: Record<string, string>) =>
      calcOrAbsent('pipe-loss', { flow: '10 gpm', inside: '1 in', length: '100 ft', ...more })
    expect(run({})).toBe('give material or roughness, one of them')
    expect(run({ material: 'plastic', roughness: '150' })).toBe('give material or roughness, one of them')
    expect(run({ material: 'plastic', inside: '0 in' })).toBe('inside must be more than zero')
    expect(run({ material: 'plastic' })).toEqual(run({ roughness: '150' }))
  })
})
