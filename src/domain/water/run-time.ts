import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { show } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import type { Worked } from '../calculation.ts'
import { figures } from '../figures.ts'
import { deliveryMultiplier, deliveryStep } from './delivery.ts'
import type { Delivery } from './delivery.ts'
import { wholeUp } from './whole-up.ts'

/** What is asked of a zone over some period, a week or a month. */
export interface RunTimeFacts {
  /** Depth that the plants lack over the period, before any loss. */
  readonly needM: number
  readonly delivery: Delivery
  readonly rateMPerS: number
  /** Waterings in the period; need not be whole. */
  readonly events: number
  readonly cyclesPerEvent: number
  /** Step in which the controller's run times are set. */
  readonly stepS: number
}

export interface RunTimeAsked {
  readonly applyM: number
  /** Over the whole period. */
  readonly totalS: number
  /** Of one watering, before it is rounded. */
  readonly eventS: number
  /** What to set for one cycle: rounded up to the controller's step. */
  readonly cycleS: number
  /** What one watering really puts on with that. */
  readonly appliedPerEventM: number
}

/** Depth in m that plants lack: reference evapotranspiration times their factor, less the rain that counts; never below nothing. */
export function netNeedM(etoM: number, factor: number, rainM: number): number {
  return Math.max(0, etoM * factor - rainM)
}

/** Waterings in so many days at so many a week, so that a month with five Wednesdays does not jump. 31 days at 3 a week: 13.29. */
export function eventsInDays(days: number, perWeek: number): number {
  return (days * perWeek) / 7
}

/** Depth to apply, so that losses are made good. */
export const applyDepthM = (needM: number, delivery: Delivery): number => needM * deliveryMultiplier(delivery)

/** How long a zone must run. Absent where its rate, its waterings, its cycles or the step are not more than zero. */
export function runTime(facts: RunTimeFacts, system: UnitSystem): Maybe<Worked<RunTimeAsked>> {
  const { needM, delivery, rateMPerS, events, cyclesPerEvent, stepS } = facts
  if (!(rateMPerS > 0)) return absent('the application rate must be more than zero')
  if (!(events > 0)) return absent('the waterings must be more than none')
  if (!(cyclesPerEvent >= 1)) return absent('a watering has one cycle at least')
  if (!(stepS > 0)) return absent('the step of run times must be more than zero')
  const applyM = applyDepthM(needM, delivery)
  const totalS = applyM / rateMPerS
  const eventS = totalS / events
  const cycleS = wholeUp(eventS / cyclesPerEvent, stepS)
  const appliedPerEventM = cycleS * cyclesPerEvent * rateMPerS
  const depth = (m: number) => show(m, 'depth', system)
  const minutes = (s: number) => show(s, 'minutes', system)
  const losses =
    delivery.by === 'nothing'
      ? ''
      : `; ${depth(needM)} × ${figures(deliveryMultiplier(delivery), 4)} = ${depth(applyM)} to apply`
  return {
    value: { applyM, totalS, eventS, cycleS, appliedPerEventM },
    steps: [
      `${deliveryStep(delivery)}${losses}`,
      `${depth(applyM)} ÷ ${show(rateMPerS, 'rate', system)} × 60 = ${minutes(totalS)} in the period`,
      `${minutes(totalS)} ÷ ${figures(events, 4)} waterings = ${minutes(eventS)} each`,
      `in steps of ${minutes(stepS)}, up: ${cyclesPerEvent} × ${minutes(cycleS)}, which puts on ${depth(appliedPerEventM)}`
    ]
  }
}

/** "118 mm × 0.5 − 10 mm rain = 49 mm". */
export function needStep(etoM: number, factor: number, rainM: number, system: UnitSystem): string {
  const depth = (m: number) => show(m, 'depth', system)
  const rain = rainM > 0 ? ` − ${depth(rainM)} of rain that counts` : ''
  const short = etoM * factor < rainM ? ', none' : ''
  return `need: ${depth(etoM)} × ${figures(factor, 3)}${rain} = ${depth(netNeedM(etoM, factor, rainM))}${short}`
}
