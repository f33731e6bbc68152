import { sortedBy } from '../../base/collections.ts'
import { atLeast } from '../within.ts'
import { alongTheWay, leftAtEndPa } from './along-the-way.ts'
import type { WayPart, WayPipe } from './along-the-way.ts'

/** Exponent of the diameter in the formula of Hazen and Williams, US form. */
const DIAMETER_EXPONENT = 4.8655

export interface WhatPasses {
  /** Least pressure at the start; left out where a regulator holds back more than the devices need. */
  readonly startPa?: number
  /** The pipe that need not be so narrow, by its place among the parts, and the inside diameter that would do. */
  readonly wider?: { readonly index: number; readonly insideM: number }
}

/** What would leave `neededPa` at the end: more pressure at the start, or one pipe wider, the one with most friction first. */
export function whatPasses(startPa: number, parts: readonly WayPart[], neededPa: number): WhatPasses {
  const shortPa = neededPa - leftAtEndPa(startPa, parts)
  const raised = atLeast(leftAtEndPa(startPa + shortPa, parts), neededPa)
  const wider = widerPipe(startPa, parts, neededPa, shortPa)
  return { ...(raised ? { startPa: startPa + shortPa } : {}), ...(wider ? { wider } : {}) }
}

function widerPipe(startPa: number, parts: readonly WayPart[], neededPa: number, shortPa: number): WhatPasses['wider'] {
  const pipes = alongTheWay(startPa, parts).flatMap(({ part, lossPa }, index) =>
    part.kind === 'pipe' && lossPa > shortPa ? [{ index, lossPa, part }] : []
  )
  for (const { index, lossPa, part } of sortedBy(pipes, one => -one.lossPa)) {
    const insideM = part.insideM * (lossPa / (lossPa - shortPa)) ** (1 / DIAMETER_EXPONENT)
    const changed: WayPipe = { ...part, insideM }
    if (atLeast(leftAtEndPa(startPa, parts.with(index, changed)), neededPa)) return { index, insideM }
  }
  return undefined
}
