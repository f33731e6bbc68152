import type { PressurePart } from '../../plan/pressure-plan.ts'
import { fromSi } from '../../units/quantity.ts'
import { roundedText } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'

/** How a message names a part of the way: "length 2 of the supply pipe (1-1/4 in class 200)", "the valve". */
export function partName({ of, part, pipe }: PressurePart): string {
  if (!pipe) return of === 'stated' && /^an? |^the /iu.test(part.name) ? part.name : `the ${part.name}`
  const { segment, index } = pipe
  const whose = of === 'supply-pipe' ? 'the supply pipe' : 'the pipe of the zone'
  return `length ${index + 1} of ${whose}${segment.size === undefined ? '' : ` (${segment.size})`}`
}

/** An inside diameter rounded up to what is shown, so that a pipe of just that one passes. */
export function insideAtLeast(insideM: number, units: UnitSystem): string {
  const [unit, places] = units === 'us' ? (['in', 3] as const) : (['mm', 1] as const)
  return roundedUp(fromSi(insideM, unit, 'length'), places, unit)
}

/** A pressure rounded up to what a gauge shows. */
export function pressureAtLeast(pa: number, units: UnitSystem): string {
  const [unit, places] = units === 'us' ? (['psi', 0] as const) : (['bar', 1] as const)
  return roundedUp(fromSi(pa, unit, 'pressure'), places, unit)
}

function roundedUp(value: number, places: number, unit: string): string {
  const step = 10 ** places
  return `${roundedText(Math.ceil(value * step - 1e-6) / step, places)}\u00a0${unit}`
}
