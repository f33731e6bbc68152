import { READS_THE_SAME_WITHIN } from '../valve/readings.ts'
import { roundedText } from '../../units/show.ts'

export interface LoopFacts {
  readonly measuredOhm: number
  /** Both wires, splices with them. */
  readonly wireOhm: number
  /** The coil, or coils side by side as wired. */
  readonly coilOhm: number
  readonly coils: number
}

/** From so many times what is expected on, no current flows to speak of: an open lead. Rule of this project. */
const OPEN_FROM = 10
/** A tenth over the wires alone is the wires alone, with meter leads. Rule of this project. */
const WIRES_ALONE = 1.1

/**
 * What a loop that is off its band looks like: open, shorted, one coil more or fewer than is wired, another coil, or a bad splice. Swapped
 * leads read the same as right ones, so they are never suggested. Undefined where the figure fits nothing in particular.
 */
export function suggests(facts: LoopFacts): string | undefined {
  const { measuredOhm, wireOhm, coilOhm, coils } = facts
  const reads = (ohm: number): boolean => Math.abs(measuredOhm / ohm - 1) <= READS_THE_SAME_WITHIN / 2
  const text = (ohm: number): string => `${roundedText(ohm, 2)}\u00a0Ω`
  if (measuredOhm >= OPEN_FROM * (wireOhm + coilOhm))
    return 'So much is an open circuit: a broken wire, a lead off, or a dead coil. Measure at each splice on the way, from the controller on.'
  if (measuredOhm <= Math.max(wireOhm * WIRES_ALONE, 1))
    return `So little is the wires alone (${text(wireOhm)}): they touch before the coil, or the coil is shorted. Part the wires at the valve and measure each side.`
  const one = coilOhm * coils
  const others = [1, 2, 3].filter(count => count !== coils)
  const count = others.find(many => reads(wireOhm + one / many))
  if (count !== undefined && count > coils)
    return `${count} coils side by side would read ${text(wireOhm + one / count)}: look for a second valve on this output.`
  if (count !== undefined)
    return `${count === 1 ? 'One coil alone' : `${count} coils`} would read ${text(wireOhm + one / count)}: a lead of another coil is off.`
  return undefined
}
