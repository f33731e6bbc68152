import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { showWireSize } from '../../units/wire-size.ts'
import type { WireSize } from '../../units/wire-size.ts'
import type { Worked } from '../calculation.ts'
import { atMost } from '../within.ts'
import { SOIL_C } from './make.ts'
import type { WireMake } from './make.ts'
import { resistancePerM } from './resistance.ts'
import { lengthText, ohmText, perLengthText, voltText } from './words.ts'

/**
 * What a product sheet says an output can do, in one of its three forms. A limit in ohms, or a length at a size, is stated for one
 * coil: coils side by side draw their current through the same wire, so `coils` of them leave each the n-th part of it.
 * A length without a size is a cap on length alone.
 */
export type OutputLimit =
  | { readonly form: 'voltage'; readonly pulseVolt: number; readonly lowestVolt: number; readonly coilOhm: number }
  | { readonly form: 'loop'; readonly ohm: number; readonly coils: number }
  | {
      readonly form: 'length'
      readonly lengthM: number
      readonly unit: 'm' | 'ft'
      readonly size?: WireSize
      readonly coils: number
    }

export interface Run {
  readonly lengthM: number
  /** Wires and splices. */
  readonly loopOhm: number
  /** That part of the loop which does not grow with the length: splices that were measured. */
  readonly spliceOhm?: number
}

export interface Judged {
  readonly passes: boolean
  /** The longest this run could be, its sizes kept. */
  readonly longestM: number
}

export const isCap = (limit: OutputLimit): boolean => limit.form === 'length' && limit.size === undefined

/**
 * The loop that a limit allows, in ohms. Pulse volts: coil × (pulse / lowest − 1). A length at a size: the loop of that length in wire made
 * like the run's, so both rest on the same base. A bare cap on length allows any loop: Infinity.
 */
export function allowedLoopOhm(limit: OutputLimit, make: WireMake): Maybe<Worked<number>> {
  if (limit.form === 'voltage') return allowedByVolts(limit)
  if (limit.form === 'loop') return shared(limit.ohm, limit.coils, [])
  if (limit.size === undefined) return { value: Infinity, steps: [] }
  const wire = resistancePerM(limit.size, make, SOIL_C)
  if (isAbsent(wire)) return wire
  const ohm = 2 * limit.lengthM * wire.ohmPerM
  const length = lengthText(limit.lengthM, limit.unit)
  const product = `2 × ${length} × ${perLengthText(wire.ohmPerM, limit.unit)} = ${ohmText(ohm)}`
  return shared(ohm, limit.coils, [`${showWireSize(limit.size)}: ${product} (${wire.basis})`])
}

/** Whether a run keeps to a limit, and how long it could be. Exactly at the limit passes. */
export function judge(limit: OutputLimit, run: Run, make: WireMake): Maybe<Judged> {
  if (limit.form === 'length' && limit.size === undefined)
    return { passes: atMost(run.lengthM, limit.lengthM), longestM: limit.lengthM }
  const allowed = allowedLoopOhm(limit, make)
  if (isAbsent(allowed)) return allowed
  const { lengthM, loopOhm, spliceOhm = 0 } = run
  if (!(loopOhm - spliceOhm > 0)) return absent('the loop of the run must be more than zero')
  return {
    passes: atMost(loopOhm, allowed.value),
    longestM: lengthM * (Math.max(0, allowed.value - spliceOhm) / (loopOhm - spliceOhm))
  }
}

function allowedByVolts(limit: Extract<OutputLimit, { form: 'voltage' }>): Worked<number> {
  const { pulseVolt, lowestVolt, coilOhm } = limit
  const value = coilOhm * (pulseVolt / lowestVolt - 1)
  const ratio = `${voltText(pulseVolt)} / ${voltText(lowestVolt)} − 1`
  return { value, steps: [`${ohmText(coilOhm)} × (${ratio}) = ${ohmText(value)} of loop at most`] }
}

function shared(ohm: number, coils: number, steps: readonly string[]): Worked<number> {
  if (coils === 1) return { value: ohm, steps }
  return { value: ohm / coils, steps: [...steps, `${ohmText(ohm)} / ${coils} coils = ${ohmText(ohm / coils)}`] }
}
