import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { show } from '../../units/show.ts'
import { negative, notPositive } from '../amounts.ts'
import type { Calculation, CalculationInputs } from '../calculation.ts'
import { figures } from '../figures.ts'
import { optionalNumber } from '../inputs.ts'
import { applicationRate, rateStep } from './application-rate.ts'
import { deliveryOf } from './delivery.ts'
import { eventsInDays, needStep, netNeedM, runTime } from './run-time.ts'
import { IN_PER_M, MM_PER_M, UNITS_INPUT, unitsOfWorking } from './units.ts'

const length = { is: 'quantity', dimension: 'length' } as const
const ratio = { is: 'quantity', dimension: 'ratio' } as const

const DEFAULT_STEP_S = 60

interface Part {
  readonly value: number
  readonly steps: readonly string[]
}

export const runTimeCard: Calculation = {
  name: 'run-time',
  title: 'Run time for a need',
  does: 'Gives how long a zone must run for what its plants need over a week or a month, all together and at each watering.',
  inputs: {
    need: { kind: length, does: 'depth that the plants lack over the period', optional: 'eto and factor' },
    eto: { kind: length, does: 'reference evapotranspiration over the period', optional: 'need' },
    factor: { kind: { is: 'number' }, does: 'plant factor or landscape coefficient', optional: 'need' },
    rain: { kind: length, does: 'rain that counts over the period', optional: 'none' },
    rate: { kind: { is: 'quantity', dimension: 'rate' }, does: 'application rate', optional: 'flow and area' },
    flow: { kind: { is: 'quantity', dimension: 'flow' }, does: 'flow of the zone', optional: 'rate' },
    area: { kind: { is: 'quantity', dimension: 'area' }, does: 'area it waters', optional: 'rate' },
    efficiency: { kind: ratio, does: 'application efficiency; the need is divided by it', optional: 'dulq' },
    dulq: {
      kind: ratio,
      does: 'uniformity of the lowest quarter; sets a multiplier of the need',
      optional: 'no loss is counted'
    },
    events: { kind: { is: 'number' }, does: 'waterings in the period', optional: 'one' },
    'events-per-week': { kind: { is: 'number' }, does: 'waterings a week; goes with days', optional: 'events' },
    days: { kind: { is: 'number' }, does: 'days in the period', optional: 'events' },
    cycles: { kind: { is: 'count' }, does: 'cycles in a watering', optional: 'one' },
    step: {
      kind: { is: 'quantity', dimension: 'duration' },
      does: 'step in which run times are set',
      optional: '1 min'
    },
    ...UNITS_INPUT
  },
  outputs: {
    need: { does: 'depth that the plants lack', unit: 'mm' },
    apply: { does: 'depth to apply', unit: 'mm' },
    'apply-us': { does: 'the same in inches', unit: 'in' },
    total: { does: 'run time over the whole period', unit: 'min' },
    events: { does: 'waterings in the period', unit: '' },
    'per-event': { does: 'run time of a watering, before rounding', unit: 'min' },
    cycle: { does: 'run time to set for one cycle', unit: 'min' },
    applied: { does: 'depth that a watering then puts on', unit: 'mm' },
    'applied-us': { does: 'the same in inches', unit: 'in' }
  },
  sources: ['wucols-guide', 'ia-scheduling', 'volume-over-area', 'project-rule'],
  limits:
    'Each cycle is rounded up to the step. Drip takes an application efficiency. An efficiency and a uniformity each stand for the same loss, so only one may be given.',
  run: inputs => {
    const system = unitsOfWorking(inputs)
    const need = needOf(inputs)
    if (isAbsent(need)) return need
    const rate = rateOf(inputs)
    if (isAbsent(rate)) return rate
    const events = eventsOf(inputs)
    if (isAbsent(events)) return events
    const delivery = deliveryOf(optionalNumber(inputs, 'efficiency'), optionalNumber(inputs, 'dulq'))
    if (isAbsent(delivery)) return delivery
    const worked = runTime(
      {
        needM: need.value,
        delivery,
        rateMPerS: rate.value,
        events: events.value,
        cyclesPerEvent: optionalNumber(inputs, 'cycles') ?? 1,
        stepS: optionalNumber(inputs, 'step') ?? DEFAULT_STEP_S
      },
      system
    )
    if (isAbsent(worked)) return worked
    const { applyM, totalS, eventS, cycleS, appliedPerEventM } = worked.value
    return {
      value: {
        need: need.value * MM_PER_M,
        apply: applyM * MM_PER_M,
        'apply-us': applyM * IN_PER_M,
        total: totalS / 60,
        events: events.value,
        'per-event': eventS / 60,
        cycle: cycleS / 60,
        applied: appliedPerEventM * MM_PER_M,
        'applied-us': appliedPerEventM * IN_PER_M
      },
      steps: [...need.steps, ...rate.steps, ...events.steps, ...worked.steps]
    }
  },
  example: {
    inputs: { eto: '6.1 in', factor: '0.8', rate: '0.48 in/h', efficiency: '70 %', 'events-per-week': '3', days: '31' },
    outputs: { 'apply-us': 6.9714, total: 871.4, events: 13.286, 'per-event': 65.59, cycle: 66, 'applied-us': 0.528 }
  }
}

function needOf(inputs: CalculationInputs): Maybe<Part> {
  const system = unitsOfWorking(inputs)
  const [need, eto, factor] = [
    optionalNumber(inputs, 'need'),
    optionalNumber(inputs, 'eto'),
    optionalNumber(inputs, 'factor')
  ]
  const rain = optionalNumber(inputs, 'rain')
  const fault = negative({ need, eto, factor, rain })
  if (fault) return fault
  if (need !== undefined)
    return eto === undefined && factor === undefined && rain === undefined
      ? { value: need, steps: [`need: ${show(need, 'depth', system)}`] }
      : absent('need stands for eto, factor and rain: give it or them')
  if (eto === undefined || factor === undefined) return absent('give need, or eto and factor')
  return { value: netNeedM(eto, factor, rain ?? 0), steps: [needStep(eto, factor, rain ?? 0, system)] }
}

function rateOf(inputs: CalculationInputs): Maybe<Part> {
  const [rate, flow, area] = [
    optionalNumber(inputs, 'rate'),
    optionalNumber(inputs, 'flow'),
    optionalNumber(inputs, 'area')
  ]
  const fault = notPositive({ rate, flow, area })
  if (fault) return fault
  if (rate !== undefined)
    return flow === undefined && area === undefined
      ? { value: rate, steps: [] }
      : absent('give rate, or flow and area, not both')
  if (flow === undefined || area === undefined) return absent('give rate, or flow and area')
  return { value: applicationRate(flow, area), steps: [rateStep(flow, area)] }
}

function eventsOf(inputs: CalculationInputs): Maybe<Part> {
  const [events, perWeek, days] = [
    optionalNumber(inputs, 'events'),
    optionalNumber(inputs, 'events-per-week'),
    optionalNumber(inputs, 'days')
  ]
  const fault = notPositive({ events, 'events-per-week': perWeek, days })
  if (fault) return fault
  if (events !== undefined)
    return perWeek === undefined && days === undefined
      ? { value: events, steps: [] }
      : absent('give events, or events-per-week and days, not both')
  if (perWeek === undefined && days === undefined) return { value: 1, steps: [] }
  if (perWeek === undefined || days === undefined) return absent('events-per-week and days go together')
  const value = eventsInDays(days, perWeek)
  return {
    value,
    steps: [`waterings: ${figures(days, 4)} days × ${figures(perWeek, 3)} a week / 7 = ${figures(value, 4)}`]
  }
}
