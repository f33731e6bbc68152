import { absent, isAbsent } from '../../base/absent.ts'
import { show } from '../../units/show.ts'
import { negative, notPositive } from '../amounts.ts'
import type { Calculation, CalculationInputs, OutputValue } from '../calculation.ts'
import { figures } from '../figures.ts'
import { numberOf, optionalNumber, textOf } from '../inputs.ts'
import { daysPerWeek, longestGapDays } from '../schedule/spacing.ts'
import { parseDayRule, writeDayRule } from '../schedule/text.ts'
import { atMost } from '../within.ts'
import { LEAST_SOAK_S, advisedRun } from './advise.ts'
import { deliveryMultiplier, deliveryOf, deliveryStep } from './delivery.ts'
import { eventsInDays } from './run-time.ts'
import { longestIntervalDays } from './soil-reservoir.ts'
import { MM_PER_M, S_PER_MIN, UNITS_INPUT, unitsOfWorking } from './units.ts'

const length = { is: 'quantity', dimension: 'length' } as const
const duration = { is: 'quantity', dimension: 'duration' } as const
const ratio = { is: 'quantity', dimension: 'ratio' } as const

const DEFAULT_STEP_S = 60

export const adviseCard: Calculation = {
  name: 'program-advice',
  title: 'Program for a need',
  does: 'Gives what to key in for a zone, so that a month’s need is met: waterings, cycles, run time and soak, and by how much it passes the root zone or the time there is.',
  inputs: {
    need: { kind: length, does: 'depth that the plants lack over the month' },
    days: { kind: { is: 'number' }, does: 'days of the month that are watered' },
    rate: { kind: { is: 'quantity', dimension: 'rate' }, does: 'application rate' },
    rule: { kind: { is: 'text' }, does: 'watering days: Mon Wed Fri, every 2 days from 2026-04-02, even dates' },
    efficiency: { kind: ratio, does: 'application efficiency; the need is divided by it', optional: 'dulq' },
    dulq: { kind: ratio, does: 'uniformity of the lowest quarter', optional: 'no loss is counted' },
    starts: { kind: { is: 'count' }, does: 'start times on a watering day', optional: 'one' },
    holds: { kind: length, does: 'what the root zone takes up at once', optional: 'it is not looked at' },
    'longest-cycle': { kind: duration, does: 'before water runs off', optional: 'no limit' },
    soak: { kind: duration, does: 'rest between two cycles', optional: '30 min' },
    least: { kind: duration, does: 'shortest run time that can be set', optional: 'one step' },
    most: { kind: duration, does: 'longest run time that can be set', optional: 'no limit' },
    step: { kind: duration, does: 'step in which run times are set', optional: '1 min' },
    time: { kind: duration, does: 'time there is for it in a night', optional: 'it is not looked at' },
    ...UNITS_INPUT
  },
  outputs: {
    waterings: { does: 'watering days in the month', unit: '' },
    'per-start': { does: 'run time of one start, before rounding', unit: 'min' },
    cycles: { does: 'cycles of one start', unit: '' },
    cycle: { does: 'run time of each', unit: 'min' },
    soak: { does: 'soak between two', unit: 'min' },
    elapsed: { does: 'from the start to the last end', unit: 'min' },
    applied: { does: 'depth that one start puts on', unit: 'mm' },
    given: { does: 'depth given in the month', unit: 'mm' },
    'over-root-zone': { does: 'depth of one start that the root zone does not take up', unit: 'mm' },
    'over-interval': { does: 'days by which the days lie too far apart for the root zone', unit: 'days' },
    short: { does: 'time that is missing', unit: 'min' }
  },
  sources: ['wucols-guide', 'ia-scheduling', 'project-rule', 'common-practice'],
  limits:
    'One zone by itself: the advice of a binder also fits in the other stations of the controller and the controllers beside it. Waterings by the week are days of the month × days a week / 7. The soak of 30 min is common practice, no source.',
  run: inputs => {
    const rule = parseDayRule(textOf(inputs, 'rule'))
    if (!rule) return absent('the watering days are not understood: write Mon Wed Fri, or every 2 days from a date')
    const facts = factsOf(inputs)
    const fault = notPositive(facts.positive) ?? negative({ need: facts.needM, soak: facts.soakS, least: facts.leastS })
    if (fault) return fault
    const delivery = deliveryOf(optionalNumber(inputs, 'efficiency'), optionalNumber(inputs, 'dulq'))
    if (isAbsent(delivery)) return delivery
    const { needM, days, rateMPerS, starts, stepS, system } = facts
    const applyM = needM * deliveryMultiplier(delivery)
    const waterings = eventsInDays(days, daysPerWeek(rule))
    const startS = applyM / rateMPerS / waterings / starts
    const run = advisedRun(startS, { ...facts, leastCycles: 1 })
    if (isAbsent(run)) return run
    const { cycles, cycleS, soakS } = run
    const appliedM = cycles * cycleS * rateMPerS
    const elapsedS = cycles * cycleS + (cycles - 1) * soakS
    const minutes = (s: number) => show(s, 'minutes', system)
    const depth = (m: number) => show(m, 'depth', system)
    const limits = limitsOf(inputs, { appliedM, elapsedS, perDayM: needM / days, gap: longestGapDays(rule) })
    return {
      value: {
        waterings,
        'per-start': startS / S_PER_MIN,
        cycles,
        cycle: cycleS / S_PER_MIN,
        soak: soakS / S_PER_MIN,
        elapsed: elapsedS / S_PER_MIN,
        applied: appliedM * MM_PER_M,
        given: appliedM * starts * waterings * MM_PER_M,
        ...limits
      },
      steps: [
        `${deliveryStep(delivery)}; ${depth(needM)} needed, ${depth(applyM)} to apply`,
        `${writeDayRule(rule)}: ${figures(days, 4)} days × ${figures(daysPerWeek(rule), 3)} a week / 7 = ${figures(waterings, 4)} waterings`,
        `${depth(applyM)} ÷ ${show(rateMPerS, 'rate', system)} ÷ ${figures(waterings, 4)} ÷ ${starts} (starts) = ${minutes(startS)} at each start`,
        `in steps of ${minutes(stepS)}, up: ${cycles} × ${minutes(cycleS)}${cycles > 1 ? ` with ${minutes(soakS)} of soak` : ''}, ${minutes(elapsedS)} from start to end, which puts on ${depth(appliedM)}`
      ]
    }
  },
  example: {
    inputs: {
      need: '89.6 mm',
      days: '31',
      rate: '22.9 mm/h',
      rule: 'Mon Wed Fri',
      efficiency: '70 %',
      'longest-cycle': '12.9 min',
      holds: '14 mm',
      time: '60 min'
    },
    outputs: {
      waterings: 13.286,
      'per-start': 25.24,
      cycles: 3,
      cycle: 9,
      soak: 30,
      elapsed: 87,
      applied: 10.305,
      given: 136.91,
      'over-root-zone': 0,
      short: 27
    }
  }
}

function factsOf(inputs: CalculationInputs) {
  const [needM, days, rateMPerS] = [numberOf(inputs, 'need'), numberOf(inputs, 'days'), numberOf(inputs, 'rate')]
  const stepS = optionalNumber(inputs, 'step') ?? DEFAULT_STEP_S
  const starts = optionalNumber(inputs, 'starts') ?? 1
  const longest = optionalNumber(inputs, 'longest-cycle')
  const mostS = optionalNumber(inputs, 'most') ?? Infinity
  return {
    needM,
    days,
    rateMPerS,
    starts,
    stepS,
    longestCycle: longest ?? ('no limit' as const),
    soakS: optionalNumber(inputs, 'soak') ?? LEAST_SOAK_S,
    leastS: optionalNumber(inputs, 'least') ?? 0,
    mostS,
    system: unitsOfWorking(inputs),
    positive: { days, rate: rateMPerS, step: stepS, starts, 'longest-cycle': longest, most: mostS }
  }
}

interface Fitted {
  readonly appliedM: number
  readonly elapsedS: number
  readonly perDayM: number
  readonly gap: number
}

/** Only what was asked for; 0 where it fits. */
function limitsOf(
  inputs: CalculationInputs,
  { appliedM, elapsedS, perDayM, gap }: Fitted
): Record<string, OutputValue> {
  const [holdsM, timeS] = [optionalNumber(inputs, 'holds'), optionalNumber(inputs, 'time')]
  const over = (value: number, limit: number): number => (atMost(value, limit) ? 0 : value - limit)
  const lasts = holdsM === undefined ? undefined : longestIntervalDays(holdsM, perDayM)
  return {
    ...(holdsM === undefined ? {} : { 'over-root-zone': over(appliedM, holdsM) * MM_PER_M }),
    ...(lasts === undefined || isAbsent(lasts) ? {} : { 'over-interval': Math.max(0, gap - Math.max(1, lasts)) }),
    ...(timeS === undefined ? {} : { short: over(elapsedS, timeS) / S_PER_MIN })
  }
}
