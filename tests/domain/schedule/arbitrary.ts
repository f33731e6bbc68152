import fc from 'fast-check'
import type { ScheduledController, ScheduledProgram, StationEntry } from '../../../src/domain/schedule/controller.ts'
import type { DayRule, RunTime } from '../../../src/domain/schedule/program.ts'
import { fromEpochDay } from '../../../src/units/date.ts'

/** Whole seconds up to two hours. */
const secondsUpTo = (max: number) => fc.integer({ min: 1, max })

export const isoDates = fc.integer({ min: 19_000, max: 22_000 }).map(fromEpochDay)

export const dayRules: fc.Arbitrary<DayRule> = fc.oneof(
  fc.constant<DayRule>({ kind: 'every-day' }),
  fc.constant<DayRule>({ kind: 'even-dates' }),
  fc.boolean().map((withTurnover): DayRule => ({ kind: 'odd-dates', withTurnover })),
  fc.subarray([1, 2, 3, 4, 5, 6, 7], { minLength: 1 }).map((days): DayRule => ({ kind: 'weekdays', days })),
  fc
    .record({ every: fc.integer({ min: 1, max: 30 }), from: isoDates })
    .map((rule): DayRule => ({ kind: 'every-n-days', ...rule }))
)

export const runTimes: fc.Arbitrary<RunTime> = fc
  .record({
    cycles: fc.integer({ min: 1, max: 6 }),
    cycleS: secondsUpTo(7200),
    soakS: fc.integer({ min: 0, max: 7200 })
  })
  .map(runTime => (runTime.cycles === 1 ? { ...runTime, soakS: 0 } : runTime))

export const stationLists: fc.Arbitrary<StationEntry[]> = fc
  .array(runTimes, { maxLength: 8 })
  .map(times => times.map((runTime, index) => ({ number: index + 1, runTime })))

export const percents = fc.integer({ min: 0, max: 200 }).map(percent => percent / 100)

const programs: fc.Arbitrary<ScheduledProgram> = fc.record(
  {
    id: fc.constantFrom('A', 'B', 'C'),
    days: dayRules,
    starts: fc.uniqueArray(fc.integer({ min: 0, max: 1439 }), { maxLength: 3 }),
    stations: stationLists,
    monthlyPercent: fc.array(percents, { minLength: 12, maxLength: 12 }),
    from: isoDates,
    to: isoDates
  },
  { requiredKeys: ['id', 'days', 'starts', 'stations'] }
)

export const controllers: fc.Arbitrary<ScheduledController> = fc.record({
  programs: fc.uniqueArray(programs, { maxLength: 3, selector: ({ id }) => id }),
  delayS: fc.integer({ min: 0, max: 60 }),
  stepS: fc.constantFrom(1, 10, 30, 60, 300)
})
