import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { adjustedCycleS } from '../../../src/domain/schedule/adjust.ts'
import type { StationEntry } from '../../../src/domain/schedule/controller.ts'
import { sequenceEndS, sequenceProgram } from '../../../src/domain/schedule/sequence.ts'
import type { TimedCycle } from '../../../src/domain/schedule/sequence.ts'
import { percents, stationLists } from './arbitrary.ts'

const AS_WRITTEN = { percent: 1, stepS: 60, delayS: 0 }
const entry = (number: number, minutes: number, cycles = 1, soakMinutes = 0): StationEntry => ({
  number,
  runTime: { cycles, cycleS: minutes * 60, soakS: soakMinutes * 60 }
})
/** "station.cycle from-to" in minutes from the start. */
const said = (sequence: readonly TimedCycle[]) =>
  sequence.map(
    ({ station, cycle, startS, durationS }) => `${station}.${cycle} ${startS / 60}-${(startS + durationS) / 60}`
  )

describe('a program', () => {
  it('runs its stations one after another in the order written', () => {
    const sequence = sequenceProgram([entry(3, 10), entry(1, 25), entry(2, 5)], AS_WRITTEN)
    expect(said(sequence)).toEqual(['3.1 0-10', '1.1 10-35', '2.1 35-40'])
  })

  it('waits out the soak where no other station is ready', () => {
    expect(said(sequenceProgram([entry(1, 6, 2, 30)], AS_WRITTEN))).toEqual(['1.1 0-6', '1.2 36-42'])
    expect(said(sequenceProgram([entry(1, 25), entry(3, 6, 2, 30)], AS_WRITTEN))).toEqual([
      '1.1 0-25',
      '3.1 25-31',
      '3.2 61-67'
    ])
  })

  it('fills a soak with the other stations and goes back to the first one that has rested', () => {
    const sequence = sequenceProgram([entry(1, 5, 3, 10), entry(2, 10), entry(3, 10, 2, 20)], AS_WRITTEN)
    expect(said(sequence)).toEqual(['1.1 0-5', '2.1 5-15', '1.2 15-20', '3.1 20-30', '1.3 30-35', '3.2 50-60'])
  })

  it('takes a station back at the very end of its soak', () => {
    expect(said(sequenceProgram([entry(1, 5, 2, 10), entry(2, 10), entry(3, 10)], AS_WRITTEN))[2]).toBe('1.2 15-20')
    expect(said(sequenceProgram([entry(1, 5, 2, 11), entry(2, 10), entry(3, 10)], AS_WRITTEN))[2]).toBe('3.1 15-25')
  })

  it('runs cycles without a soak one after another', () => {
    expect(said(sequenceProgram([entry(1, 6, 2), entry(2, 3)], AS_WRITTEN))).toEqual([
      '1.1 0-6',
      '1.2 6-12',
      '2.1 12-15'
    ])
  })

  it('puts the delay between any two openings and none after the last', () => {
    const sequence = sequenceProgram([entry(1, 10), entry(2, 10), entry(3, 10)], { ...AS_WRITTEN, delayS: 5 })
    expect(sequence.map(({ startS }) => startS)).toEqual([0, 605, 1210])
    expect(sequenceEndS(sequence)).toBe(1810)
  })

  it('lets a delay that is longer than the soak rule', () => {
    const sequence = sequenceProgram([entry(1, 1, 2, 1)], { ...AS_WRITTEN, delayS: 120 })
    expect(sequence.map(({ startS }) => startS)).toEqual([0, 180])
  })

  it('runs sixty stations, one and none', () => {
    const sixty = Array.from({ length: 60 }, (_, index) => entry(index + 1, 12))
    expect(sequenceEndS(sequenceProgram(sixty, AS_WRITTEN))).toBe(60 * 12 * 60)
    expect(said(sequenceProgram([entry(1, 12)], AS_WRITTEN))).toEqual(['1.1 0-12'])
    expect(sequenceProgram([], AS_WRITTEN)).toEqual([])
    expect(sequenceEndS([])).toBe(0)
  })

  it('leaves out a station set to nothing, and every station at 0 %', () => {
    expect(said(sequenceProgram([entry(1, 0), entry(2, 10)], { ...AS_WRITTEN, delayS: 60 }))).toEqual(['2.1 0-10'])
    expect(sequenceProgram([entry(1, 25), entry(2, 6, 2, 30)], { ...AS_WRITTEN, percent: 0 })).toEqual([])
  })

  it('changes the cycles by the percent and never the soak', () => {
    const sequence = sequenceProgram([entry(1, 6, 2, 30)], { ...AS_WRITTEN, percent: 0.5 })
    expect(said(sequence)).toEqual(['1.1 0-3', '1.2 33-36'])
  })
})

describe('a cycle at a percent', () => {
  it('is rounded to the step, half a step up', () => {
    expect(adjustedCycleS(25 * 60, 0.51, 60)).toBe(13 * 60)
    expect(adjustedCycleS(25 * 60, 0.5, 60)).toBe(13 * 60)
    expect(adjustedCycleS(24 * 60, 0.51, 60)).toBe(12 * 60)
    expect(adjustedCycleS(30 * 60, 0.35, 60)).toBe(11 * 60)
    expect(adjustedCycleS(10 * 60, 0.145, 1)).toBe(87)
  })

  it('does not fall under the half in binary: 10 min at 5, 15 … 95 % and 100 min at 0.5, 1.5 … 99.5 %', () => {
    for (let tenths = 5; tenths < 1000; tenths += 10)
      expect(adjustedCycleS(6000, tenths / 1000, 60)).toBe(Math.floor((tenths + 5) / 10) * 60)
    for (let percent = 5; percent < 100; percent += 10)
      expect(adjustedCycleS(600, percent / 100, 60)).toBe(Math.floor((percent + 5) / 10) * 60)
  })

  it('is nothing where it rounds to nothing, and one step at half a step', () => {
    expect(adjustedCycleS(120, 0.24, 60)).toBe(0)
    expect(adjustedCycleS(120, 0.25, 60)).toBe(60)
  })

  it('stands as written at 100 %, whatever the step', () => {
    expect(adjustedCycleS(90, 1, 60)).toBe(90)
  })

  it('may be longer than written', () => {
    expect(adjustedCycleS(600, 1.2, 60)).toBe(720)
  })

  it('never is negative', () => {
    expect(adjustedCycleS(600, -0.2, 60)).toBe(0)
  })
})

describe('for any program', () => {
  const settings = fc.record({
    percent: percents,
    stepS: fc.constantFrom(1, 30, 60),
    delayS: fc.integer({ min: 0, max: 90 })
  })
  const openByStation = (sequence: readonly TimedCycle[]) => {
    const open = new Map<number, number>()
    for (const { station, durationS } of sequence) open.set(station, (open.get(station) ?? 0) + durationS)
    return new Map([...open].sort())
  }

  it('one valve is open at a time, with the delay between', () => {
    fc.assert(
      fc.property(stationLists, settings, (stations, each) => {
        const sequence = sequenceProgram(stations, each)
        sequence.slice(1).forEach((next, index) => {
          const before = sequence[index]
          expect(next.startS).toBeGreaterThanOrEqual((before?.startS ?? 0) + (before?.durationS ?? 0) + each.delayS)
        })
        expect(sequence[0]?.startS ?? 0).toBe(0)
      })
    )
  })

  it('every cycle written is run once, in order, after its soak', () => {
    fc.assert(
      fc.property(stationLists, settings, (stations, each) => {
        const sequence = sequenceProgram(stations, each)
        for (const { number, runTime } of stations) {
          const cycles = sequence.filter(({ station }) => station === number)
          const cycleS = adjustedCycleS(runTime.cycleS, each.percent, each.stepS)
          const expected = Array.from({ length: cycleS > 0 ? runTime.cycles : 0 }, (_, index) => index + 1)
          expect(cycles.map(({ cycle }) => cycle)).toEqual(expected)
          expect(cycles.every(({ durationS }) => durationS === cycleS)).toBe(true)
          cycles.slice(1).forEach((next, index) => {
            expect(next.startS).toBeGreaterThanOrEqual((cycles[index]?.startS ?? 0) + cycleS + runTime.soakS)
          })
        }
      })
    )
  })

  it('the controller never waits while a station is ready', () => {
    fc.assert(
      fc.property(stationLists, stations => {
        const sequence = sequenceProgram(stations, AS_WRITTEN)
        sequence.slice(1).forEach((next, index) => {
          const before = sequence[index]
          const freeS = (before?.startS ?? 0) + (before?.durationS ?? 0)
          if (next.startS === freeS) return
          for (const { number, runTime } of stations) {
            const done = sequence.slice(0, index + 1).filter(({ station }) => station === number)
            if (done.length === runTime.cycles) continue
            const last = done.at(-1)
            expect(last).toBeDefined()
            expect((last?.startS ?? 0) + runTime.cycleS + runTime.soakS).toBeGreaterThanOrEqual(next.startS)
          }
        })
      })
    )
  })

  it('splitting a run into cycles does not change the minutes', () => {
    fc.assert(
      fc.property(stationLists, stations => {
        const whole = stations.map(({ number, runTime }) => ({
          number,
          runTime: { cycles: 1, cycleS: runTime.cycles * runTime.cycleS, soakS: 0 }
        }))
        const split = openByStation(sequenceProgram(stations, AS_WRITTEN))
        expect(split).toEqual(openByStation(sequenceProgram(whole, AS_WRITTEN)))
      })
    )
  })

  it('the order of the stations does not change what each one gets', () => {
    const shuffled = stationLists.chain(stations =>
      fc.tuple(fc.constant(stations), fc.shuffledSubarray(stations, { minLength: stations.length }))
    )
    fc.assert(
      fc.property(shuffled, settings, ([stations, others], each) => {
        expect(openByStation(sequenceProgram(others, each))).toEqual(openByStation(sequenceProgram(stations, each)))
      })
    )
  })
})
