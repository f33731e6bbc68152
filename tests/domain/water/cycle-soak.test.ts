import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isPresent } from '../../../src/base/absent.ts'
import { longestCycleS, soakS, splitCycles } from '../../../src/domain/water/cycle-soak.ts'
import type { CycleSplit, LongestCycle } from '../../../src/domain/water/cycle-soak.ts'
import { slopeOf, soilIntake } from '../../../src/domain/water/soil-lookup.ts'
import { SOIL_INTAKES } from '../../../src/reference/soil.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

const IN_PER_H = 0.0254 / 3600
const inches = (value: number) => value * 0.0254

function split(totalS: number, longest: LongestCycle, soak = 1800, stepS = 60): CycleSplit {
  const value = splitCycles(totalS, longest, soak, stepS)
  if (!isPresent(value)) throw new Error(value.reason)
  return value
}

describe('the longest cycle', () => {
  it('is what the surface holds over what comes too fast', () => {
    expect(longestCycleS(0.91 * IN_PER_H, 0.35 * IN_PER_H, inches(0.12))).toBeCloseTo(12.857 * 60, 1)
  })

  it('has no limit where the soil takes as much as comes, or more: the difference is never turned positive', () => {
    expect(longestCycleS(0.5 * IN_PER_H, 0.6 * IN_PER_H, inches(0.4))).toBe('no limit')
    expect(longestCycleS(0.6 * IN_PER_H, 0.6 * IN_PER_H, inches(0.4))).toBe('no limit')
    expect(longestCycleS(0.61 * IN_PER_H, 0.6 * IN_PER_H, inches(0.4))).toBeCloseTo(40 * 3600, 3)
    expect(calc('cycle-soak', { rate: '0.5 in/h', texture: 'sand', slope: 'flat' })).toEqual({ limited: false })
  })

  it('never gets longer at a higher rate', () => {
    const rate = fc.double({ min: 0.01, max: 5, noNaN: true })
    const longest = (one: number) => {
      const value = longestCycleS(one * IN_PER_H, 0.35 * IN_PER_H, inches(0.3))
      return value === 'no limit' ? Infinity : value
    }
    fc.assert(
      fc.property(rate, rate, (one, other) => {
        expect(longest(Math.max(one, other))).toBeLessThanOrEqual(longest(Math.min(one, other)))
      })
    )
  })

  it('is nothing where the surface holds nothing', () => {
    expect(longestCycleS(1 * IN_PER_H, 0.35 * IN_PER_H, 0)).toBe(0)
    expect(splitCycles(600, 0, 1800, 60)).toMatchObject({ absent: true })
  })
})

describe('cycles', () => {
  it('never change the depth: together they are the run time, and less than a step each more', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 300 }),
        fc.integer({ min: 60, max: 7200 }),
        fc.constantFrom(1, 10, 60),
        (minutes, longest, stepS) => {
          const total = minutes * 60
          const { cycles, cycleS } = split(total, longest, 1800, stepS)
          expect(cycles * cycleS).toBeGreaterThanOrEqual(total)
          expect(cycles * cycleS).toBeLessThan(total + cycles * stepS)
          expect(cycleS).toBeLessThanOrEqual(longest)
          expect(cycleS % stepS).toBe(0)
        }
      )
    )
  })

  it('are not pushed over the limit by rounding: 25 min at 12.9 min is 3 of 9, not 2 of 13', () => {
    expect(split(25 * 60, 12.857 * 60)).toMatchObject({ cycles: 3, cycleS: 540 })
    expect(split(25 * 60, 12.857 * 60, 1800, 30)).toMatchObject({ cycles: 2, cycleS: 750 })
  })

  it('are one where the run fits, exactly at the limit too, and then nothing soaks', () => {
    expect(split(600, 600)).toEqual({ cycles: 1, cycleS: 600, soakS: 0, elapsedS: 600 })
    expect(split(601, 600)).toMatchObject({ cycles: 2 })
    expect(split(36_000, 'no limit')).toMatchObject({ cycles: 1, soakS: 0 })
  })

  it('take their soaks between them, one fewer than they are', () => {
    expect(split(900, 300)).toEqual({ cycles: 3, cycleS: 300, soakS: 1800, elapsedS: 900 + 2 * 1800 })
  })

  it('cannot be shorter than the step of the controller', () => {
    expect(splitCycles(600, 59, 1800, 60)).toMatchObject({
      absent: true,
      reason: 'the longest cycle is shorter than the step of run times'
    })
    expect(split(600, 60).cycles).toBe(10)
    expect(splitCycles(0, 600, 1800, 60)).toMatchObject({ absent: true })
  })

  it('soak as long as the soil takes for what stands on it', () => {
    expect(soakS(inches(0.12), 0.35 * IN_PER_H) / 60).toBeCloseTo(20.57, 2)
  })
})

describe('the tables of soil', () => {
  it('give a slope between two printed bands to the steeper', () => {
    const held = (slope: number) => {
      const ground = soilIntake('clay', slope)
      return isPresent(ground) ? ground.surfaceM / 0.0254 : ground.reason
    }
    expect([0, 0.03, 0.031, 0.06, 0.061, 0.12, 0.121, 0.5].map(held).map(value => Number(value).toFixed(2))).toEqual([
      '0.20',
      '0.20',
      '0.15',
      '0.15',
      '0.10',
      '0.10',
      '0.10',
      '0.10'
    ])
  })

  it('never hold more on a steeper slope, and take more in the coarser the soil', () => {
    for (const { surfaceIn } of SOIL_INTAKES) expect([...surfaceIn].sort((a, b) => b - a)).toEqual([...surfaceIn])
    const intakes = SOIL_INTAKES.map(one => one.intakeInPerH)
    expect([...intakes].sort((a, b) => a - b)).toEqual(intakes)
  })

  it('know no substrate, and say what to write', () => {
    expect(soilIntake('substrate', 0)).toMatchObject({ absent: true })
    expect(isPresent(soilIntake('Sandy-Loam', 0))).toBe(true)
  })

  it('read slopes as sites write them', () => {
    expect(['flat', 'level', '1 %', '12.5%', '4:1', '2 : 1', '1:1'].map(slopeOf)).toEqual([
      0, 0, 0.01, 0.125, 0.25, 0.5, 1
    ])
    for (const text of ['steep', '4', '0:1', ':1', '-4 %']) expect(slopeOf(text), text).toMatchObject({ absent: true })
  })
})

describe('cycle-soak, as typed', () => {
  const run = (inputs: Record<string, string>) => calcOrAbsent('cycle-soak', inputs)

  it('splits the 25 min of a clay bank that takes 12.8 min at the longest', () => {
    const bank = calc('cycle-soak', { rate: '0.914 in/h', intake: '0.35 in/h', surface: '0.12 in', time: '25 min' })
    expect(bank['longest']).toBeCloseTo(12.8, 1)
    expect(bank['cycles']).toBeGreaterThanOrEqual(2)
  })

  it('keeps to the least soak, and to the soil where that is slower', () => {
    const ground = { rate: '0.91 in/h', intake: '0.35 in/h', surface: '0.12 in', time: '25 min' }
    expect(calc('cycle-soak', { ...ground, 'least-soak': '30 min' })['soak']).toBe(30)
    expect(calc('cycle-soak', { ...ground, 'least-soak': '5 min' })['soak']).toBeCloseTo(20.57, 2)
  })

  it('says what contradicts and what is missing', () => {
    expect(run({ rate: '1 in/h' })).toBe('give intake and surface, or texture and slope')
    expect(run({ rate: '1 in/h', intake: '0.3 in/h' })).toBe('give intake and surface, or texture and slope')
    expect(run({ rate: '1 in/h', texture: 'clay' })).toBe('give intake and surface, or texture and slope')
    expect(run({ rate: '1 in/h', texture: 'clay', slope: 'steep' })).toContain('is not a slope')
    expect(run({ rate: '1 in/h', intake: '0.3 in/h', surface: '0.1 in', texture: 'clay', slope: 'flat' })).toContain(
      'not both'
    )
    expect(run({ rate: '0 in/h', texture: 'clay', slope: 'flat' })).toBe('rate must be more than zero')
    expect(run({ rate: '1 in/h', intake: '0 in/h', surface: '0.1 in' })).toBe('intake must be more than zero')
    expect(run({ rate: '1 in/h', texture: 'clay', slope: '4 %', intake: '0.35 in/h' })).toHaveProperty('limited', true)
  })
})
