import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isPresent } from '../../../src/base/absent.ts'
import { adjustedCycleS } from '../../../src/domain/schedule/adjust.ts'
import { advisedPercent, advisedRun } from '../../../src/domain/water/advise.ts'
import type { CycleLimits } from '../../../src/domain/water/advise.ts'

const limits = (facts: Partial<CycleLimits> = {}): CycleLimits => ({
  longestCycle: 'no limit',
  soakS: 1800,
  leastS: 60,
  mostS: Infinity,
  stepS: 60,
  leastCycles: 1,
  ...facts
})

const min = (minutes: number) => minutes * 60

describe('one watering as it is keyed in', () => {
  it('is one cycle without a soak where nothing limits it, rounded up to the step', () => {
    expect(advisedRun(min(25) - 1, limits())).toEqual({ cycles: 1, cycleS: min(25), soakS: 0 })
    expect(advisedRun(min(25), limits())).toEqual({ cycles: 1, cycleS: min(25), soakS: 0 })
    expect(advisedRun(min(25) + 1, limits())).toEqual({ cycles: 1, cycleS: min(26), soakS: 0 })
  })

  it('is split evenly where water would run off, the soak up to the minute', () => {
    const run = advisedRun(min(25), limits({ longestCycle: min(12.857), soakS: 1234 }))
    expect(run).toEqual({ cycles: 3, cycleS: min(9), soakS: min(21) })
  })

  it('exactly at the longest cycle is one cycle', () => {
    expect(advisedRun(min(12), limits({ longestCycle: min(12) }))).toMatchObject({ cycles: 1, cycleS: min(12) })
  })

  it('is split where the controller cannot be set that long', () => {
    expect(advisedRun(min(300), limits({ mostS: min(240) }))).toMatchObject({ cycles: 2, cycleS: min(150) })
  })

  it('keeps cycles that somebody chose, unless each would be shorter than can be set', () => {
    expect(advisedRun(min(16), limits({ leastCycles: 2 }))).toMatchObject({ cycles: 2, cycleS: min(8) })
    expect(advisedRun(min(3), limits({ leastCycles: 2, leastS: min(2) }))).toMatchObject({ cycles: 1, cycleS: min(3) })
  })

  it('is never shorter than can be set', () => {
    expect(advisedRun(10, limits({ leastS: min(2) }))).toMatchObject({ cycles: 1, cycleS: min(2) })
  })

  it('is absent where water runs off before the shortest cycle is over', () => {
    const why = 'the longest cycle before water runs off is shorter than the controller can be set to'
    expect(advisedRun(min(5), limits({ longestCycle: 59 }))).toEqual({ absent: true, reason: why })
    expect(advisedRun(min(5), limits({ longestCycle: min(1.5), leastS: min(2) }))).toEqual({
      absent: true,
      reason: why
    })
  })

  it('puts on at least what is asked, in cycles that are never too long, and less than a step too much each', () => {
    const facts = fc.record({
      event: fc.integer({ min: 1, max: 40_000 }),
      longest: fc.option(fc.integer({ min: 60, max: 9000 }), { nil: undefined }),
      step: fc.constantFrom(1, 60, 300),
      cycles: fc.integer({ min: 1, max: 4 })
    })
    fc.assert(
      fc.property(facts, ({ event, longest, step, cycles }) => {
        const run = advisedRun(
          event,
          limits({ longestCycle: longest ?? 'no limit', stepS: step, leastS: step, leastCycles: cycles })
        )
        if (!isPresent(run)) return longest !== undefined && longest < step
        const total = run.cycles * run.cycleS
        const fits = longest === undefined || run.cycleS <= longest
        return fits && total >= event - 1e-6 && total < event + run.cycles * step + 1e-6 && run.cycleS % step === 0
      })
    )
  })
})

describe('the percent of a month', () => {
  it('is the smallest that is enough, taken up to 5, 10 or 100 where that changes no minute', () => {
    expect(advisedPercent([{ cycleS: min(20), neededS: min(11) }], 60)).toBe(0.55)
    expect(advisedPercent([{ cycleS: min(66), neededS: min(43) }], 60)).toBe(0.65)
    expect(advisedPercent([{ cycleS: min(14), neededS: min(14) }], 60)).toBe(1)
  })

  it('is 0 where nothing is needed, and 100 where all is', () => {
    expect(advisedPercent([], 60)).toBe(0)
    expect(advisedPercent([{ cycleS: min(20), neededS: 0 }], 60)).toBe(0)
    expect(advisedPercent([{ cycleS: min(20), neededS: min(20) }], 60)).toBe(1)
  })

  it('leaves no station of the program short, and no percent less would do', () => {
    const cycle = fc
      .record({ cycle: fc.integer({ min: 1, max: 240 }), share: fc.integer({ min: 0, max: 100 }) })
      .map(({ cycle: steps, share }) => ({ cycleS: steps * 60, neededS: Math.ceil((steps * share) / 100) * 60 }))
    fc.assert(
      fc.property(fc.array(cycle, { minLength: 1, maxLength: 6 }), cycles => {
        const percent = advisedPercent(cycles, 60)
        const enough = (at: number) => cycles.every(one => adjustedCycleS(one.cycleS, at, 60) >= one.neededS)
        const same = (at: number) =>
          cycles.every(
            one => one.neededS === 0 || adjustedCycleS(one.cycleS, at, 60) === adjustedCycleS(one.cycleS, percent, 60)
          )
        expect(enough(percent)).toBe(true)
        for (let at = 0; at < Math.round(percent * 100); at += 1)
          if (enough(at / 100)) expect(same(at / 100), `${at} % would give less and be enough`).toBe(true)
      })
    )
  })
})
