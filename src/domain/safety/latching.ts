import type { SafetyFacts } from './facts.ts'

/** The reason to expect a latching coil; undefined where every coil is known not to latch. */
export function latchingOrUnknown({ coils }: SafetyFacts): string | undefined {
  if (coils.some(coil => coil.startsWith('DC latching'))) return 'DC latching coils are fitted here.'
  return coils.length === 0 || coils.includes('not known') ? 'The kind of some coils is not stated.' : undefined
}
