import type { SeasonFacts } from './facts.ts'

/** Degrees of latitude; the sun passes overhead between the two tropics. */
const TROPIC_DEG = 23.4

/** April to September is the warm half north of the tropics, October to March south of them. */
export function seasonFacts(month: number, latitude: number | undefined): SeasonFacts {
  if (latitude === undefined) return { month }
  if (Math.abs(latitude) <= TROPIC_DEG) return { month, half: 'warm' }
  const northernSummer = month >= 4 && month <= 9
  return { month, half: latitude > 0 === northernSummer ? 'warm' : 'cool' }
}
