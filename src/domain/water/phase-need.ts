import { sum } from '../../base/collections.ts'
import type { IsoDate } from '../../units/date.ts'
import { netNeedM } from './run-time.ts'

/** What a planting goes through; "none" is before or after a planting that is only watered for a time. */
export type PhaseKind = 'establishment' | 'established' | 'temporary' | 'none'

/** A phase with its days, both inclusive, and what it does to the factor of the planting. */
export interface PhaseSpan {
  readonly name: Exclude<PhaseKind, 'none'>
  readonly from?: IsoDate
  readonly to?: IsoDate
  readonly factor?: number
  /** Of the planting's own factor, a fraction. */
  readonly percent?: number
}

/**
 * Every day is in one phase: of those that hold it the one that began last, and of two that began together the later in the list. A day in
 * none is an established day; where something is watered for a time only, it is a day without water.
 */
export function phaseOn(day: IsoDate, phases: readonly PhaseSpan[]): PhaseSpan | { readonly name: PhaseKind } {
  let found: PhaseSpan | undefined
  for (const phase of phases) {
    const holds = (phase.from === undefined || day >= phase.from) && (phase.to === undefined || day <= phase.to)
    if (holds && (found?.from ?? '') <= (phase.from ?? '')) found = phase
  }
  return found ?? { name: phases.some(one => one.name === 'temporary') ? 'none' : 'established' }
}

/** Share of reference evapotranspiration in a phase. `own` is that of the planting, which a phase with a factor of its own does without. */
export function phaseFactor(
  phase: PhaseSpan | { readonly name: PhaseKind },
  own: number | undefined
): number | undefined {
  if (phase.name === 'none') return 0
  if ('factor' in phase && phase.factor !== undefined) return phase.factor
  const percent = 'percent' in phase ? (phase.percent ?? 1) : 1
  return own === undefined ? undefined : own * percent
}

/** Days of one month that share a factor. */
export interface PhaseDays {
  readonly name: PhaseKind
  readonly factor: number
  readonly days: number
}

/** Depth in m that is used over the days of the parts, of a month of so many days with so much reference evapotranspiration. */
export function mixedUseM(etoM: number, parts: readonly PhaseDays[], monthDays: number): number {
  return sum(parts.map(({ factor, days }) => (etoM * factor * days) / monthDays))
}

/** The same less the rain that counts in the whole month, spread over its days; no part goes below nothing. */
export function mixedNeedM(etoM: number, rainM: number, parts: readonly PhaseDays[], monthDays: number): number {
  return sum(parts.map(({ factor, days }) => (netNeedM(etoM, factor, rainM) * days) / monthDays))
}
