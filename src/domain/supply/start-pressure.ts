import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { atMost } from '../within.ts'

export interface StartFacts {
  readonly flowM3s: number
  /** With nothing running. */
  readonly staticPa?: number
  /** Measured at the same place with so much water running. */
  readonly measured?: { readonly pressurePa: number; readonly flowM3s: number }
}

export interface StartPressure {
  readonly pressurePa: number
  /** Measured at that flow or more; worked out from both; or that of no flow, since nothing else is stated. */
  readonly by: 'measured' | 'both' | 'static'
}

/**
 * Pressure at the point of connection with so much water running. A pressure that was measured at a greater flow is taken as it is. Above the
 * flow that was measured the main before it loses by flow to the power of 1.852 (from memory, as in tests of hydrants).
 */
export function startPressure({ flowM3s, staticPa, measured }: StartFacts): Maybe<StartPressure> {
  if (!measured) {
    return staticPa === undefined
      ? absent('no pressure of the supply is stated')
      : { pressurePa: staticPa, by: 'static' }
  }
  const { pressurePa } = measured
  if (atMost(flowM3s, measured.flowM3s)) return { pressurePa, by: 'measured' }
  if (staticPa === undefined || staticPa <= pressurePa)
    return absent('the pressure was measured with less water running, and no static pressure above it is stated')
  return { pressurePa: staticPa - (staticPa - pressurePa) * (flowM3s / measured.flowM3s) ** 1.852, by: 'both' }
}
