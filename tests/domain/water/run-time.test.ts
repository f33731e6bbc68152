import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isPresent } from '../../../src/base/absent.ts'
import { deliveryMultiplier, deliveryOf } from '../../../src/domain/water/delivery.ts'
import type { Delivery } from '../../../src/domain/water/delivery.ts'
import { eventsInDays, netNeedM, runTime } from '../../../src/domain/water/run-time.ts'
import type { RunTimeAsked, RunTimeFacts } from '../../../src/domain/water/run-time.ts'
import { calc, calcOrAbsent } from '../../support/calc.ts'

const MM_PER_H = 1 / 3_600_000
const FACTS: RunTimeFacts = {
  needM: 0.059,
  delivery: { by: 'nothing' },
  rateMPerS: 10 * MM_PER_H,
  events: 10,
  cyclesPerEvent: 1,
  stepS: 60
}

function asked(change: Partial<RunTimeFacts> = {}): RunTimeAsked {
  const worked = runTime({ ...FACTS, ...change }, 'metric')
  if (!isPresent(worked)) throw new Error(worked.reason)
  return worked.value
}

const run = (inputs: Record<string, string>) => calcOrAbsent('run-time', inputs)
const TYPED = { need: '59 mm', rate: '10 mm/h' }

describe('a run time', () => {
  it('never falls in a hotter month, nor rises with more rain', () => {
    const depth = fc.double({ min: 0, max: 0.3, noNaN: true })
    fc.assert(
      fc.property(depth, depth, depth, fc.double({ min: 0, max: 1.5, noNaN: true }), (one, other, rain, factor) => {
        const [cool, hot] = [Math.min(one, other), Math.max(one, other)]
        const needs = [netNeedM(cool, factor, rain), netNeedM(hot, factor, rain)] as const
        expect(needs[1]).toBeGreaterThanOrEqual(needs[0])
        expect(asked({ needM: needs[1] }).cycleS).toBeGreaterThanOrEqual(asked({ needM: needs[0] }).cycleS)
        expect(netNeedM(hot, factor, rain + 0.01)).toBeLessThanOrEqual(needs[1])
      })
    )
  })

  it('puts on at least what is due, and less than a step of each cycle more', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.3, noNaN: true }),
        fc.double({ min: 1, max: 31, noNaN: true }),
        fc.integer({ min: 1, max: 6 }),
        (needM, events, cyclesPerEvent) => {
          const { appliedPerEventM, applyM } = asked({ needM, events, cyclesPerEvent })
          const due = applyM / events
          expect(appliedPerEventM).toBeGreaterThanOrEqual(due * (1 - 1e-6))
          expect(appliedPerEventM).toBeLessThan(due + cyclesPerEvent * 60 * FACTS.rateMPerS * (1 + 1e-6))
        }
      )
    )
  })

  it('keeps a whole number of minutes that it comes to, and rounds a little more up', () => {
    expect(asked({ needM: 0.04, events: 10 }).cycleS / 60).toBe(24)
    expect(asked({ needM: 0.04001, events: 10 }).cycleS / 60).toBe(25)
    expect(asked({ needM: 0.0401, events: 10, stepS: 10 }).cycleS).toBe(1450)
    expect(asked({ needM: 0 }).cycleS).toBe(0)
  })

  it('is the sum of its cycles, each rounded up', () => {
    const two = asked({ needM: 0.0465, cyclesPerEvent: 2 })
    expect([two.eventS / 60, two.cycleS / 60]).toEqual([expect.closeTo(27.9, 9), 14])
  })

  it('needs a rate, a watering, a cycle and a step', () => {
    for (const change of [{ rateMPerS: 0 }, { events: 0 }, { cyclesPerEvent: 0 }, { stepS: 0 }])
      expect(runTime({ ...FACTS, ...change }, 'metric')).toMatchObject({ absent: true })
  })

  it('does not jump in a month with five Wednesdays', () => {
    expect(eventsInDays(31, 1)).toBeCloseTo(4.43, 2)
    expect(eventsInDays(28, 3)).toBe(12)
    expect(eventsInDays(30, 7)).toBe(30)
  })
})

describe('losses', () => {
  it('are told by an efficiency or a uniformity, never by both', () => {
    expect(deliveryOf(0.7, 0.8)).toMatchObject({ absent: true })
    expect(run({ ...TYPED, efficiency: '70 %', dulq: '80 %' })).toBe(
      'give an application efficiency or a distribution uniformity, not both'
    )
    expect(run({ ...TYPED, efficiency: '100 %', dulq: '100 %' })).toContain('not both')
    expect(run({ ...TYPED, efficiency: '70 %' })).toHaveProperty('apply')
    expect(run({ ...TYPED, dulq: '80 %' })).toHaveProperty('apply')
  })

  it('divide the need by an efficiency, and multiply it by 1 / (0.4 + 0.6 DULQ)', () => {
    expect(calc('run-time', { ...TYPED, efficiency: '50 %' })['apply']).toBeCloseTo(118, 9)
    expect(calc('run-time', { ...TYPED, dulq: '50 %' })['apply']).toBeCloseTo(59 / 0.7, 9)
    expect(calc('run-time', TYPED)['apply']).toBeCloseTo(59, 9)
    expect(calc('run-time', { ...TYPED, efficiency: '100 %' })['apply']).toBeCloseTo(59, 9)
  })

  it('lie between 0 and 100 %, the ends told apart', () => {
    expect(run({ ...TYPED, efficiency: '0 %' })).toContain('more than 0 and at most 100 %')
    expect(run({ ...TYPED, efficiency: '101 %' })).toContain('more than 0 and at most 100 %')
    expect(run({ ...TYPED, dulq: '0 %' })).toContain('more than 0 and at most 100 %')
  })

  it('never make a need smaller', () => {
    const share = fc.double({ min: 0.01, max: 1, noNaN: true })
    fc.assert(
      fc.property(share, fc.constantFrom('efficiency', 'dulq'), (part, by) => {
        expect(deliveryMultiplier({ by, share: part } as Delivery)).toBeGreaterThanOrEqual(1)
      })
    )
  })
})

describe('run-time, as typed', () => {
  it('gives 66 min three nights a week for turf in a July of 6.1 in at 0.48 in/h and 70 %', () => {
    const july = {
      eto: '6.1 in',
      factor: '0.8',
      rate: '0.48 in/h',
      efficiency: '70 %',
      'events-per-week': '3',
      days: '31'
    }
    const value = calc('run-time', july)
    expect(value['cycle']).toBe(66)
    expect(((value['apply-us'] as number) / (value['events'] as number)).toFixed(3)).toBe('0.525')
  })

  it('reads US and metric alike', () => {
    const us = calc('run-time', { need: '2 in', rate: '0.5 in/h', events: '4' })
    const metric = calc('run-time', { need: '50.8 mm', rate: '12.7 mm/h', events: '4' })
    expect(us['per-event']).toBeCloseTo(metric['per-event'] as number, 9)
    expect(us['cycle']).toBe(60)
  })

  it('takes a flow on an area for the rate', () => {
    const value = calc('run-time', { need: '10.857 mm', flow: '38 L/min', area: '210 m²' })
    expect(value['total']).toBeCloseTo(60, 2)
  })

  it('says what contradicts and what is missing', () => {
    expect(run({ rate: '10 mm/h' })).toBe('give need, or eto and factor')
    expect(run({ eto: '118 mm', rate: '10 mm/h' })).toBe('give need, or eto and factor')
    expect(run({ ...TYPED, eto: '118 mm' })).toContain('need stands for eto')
    expect(run({ ...TYPED, rain: '10 mm' })).toContain('need stands for eto')
    expect(run({ need: '10 mm' })).toBe('give rate, or flow and area')
    expect(run({ ...TYPED, flow: '38 L/min', area: '210 m²' })).toContain('not both')
    expect(run({ ...TYPED, days: '31' })).toBe('events-per-week and days go together')
    expect(run({ ...TYPED, events: '4', days: '31', 'events-per-week': '3' })).toContain('not both')
    expect(run({ need: '-1 mm', rate: '10 mm/h' })).toBe('need must not be below zero')
    expect(run({ ...TYPED, events: '0' })).toBe('events must be more than zero')
  })

  it('asks for nothing where the rain is enough', () => {
    const value = calc('run-time', { eto: '50 mm', factor: '0.5', rain: '30 mm', rate: '10 mm/h' })
    expect([value['need'], value['cycle'], value['applied']]).toEqual([0, 0, 0])
  })
})
