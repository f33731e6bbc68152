/** Water at 4 to 20 °C, 1000 kg/m³ and 9.80665 m/s²: 1 psi is 2.307 ft of it. */
export const PA_PER_M_OF_WATER = 9806.65

const FT_PER_M = 1 / 0.3048
const IN_PER_M = 1 / 0.0254
/** Gallons a minute in one m³/s: a gallon is 231 in³. */
const GPM_PER_M3_PER_S = (IN_PER_M ** 3 / 231) * 60

/**
 * Head lost in a pipe in m: Hazen-Williams in US form, 0.2083 (100 / C)^1.852 Q^1.852 / d^4.8655 ft in 100 ft, Q in gpm, d in inches. The exponent of the
 * diameter is 4.8655; the metric form of network models has 4.871 and gives some 1 % less in a 3 in pipe. For full pipes of cold water. Arguments
 * must be more than zero.
 */
export function pipeHeadLossM(flowM3PerS: number, insideM: number, lengthM: number, roughness: number): number {
  const flowGpm = flowM3PerS * GPM_PER_M3_PER_S
  const insideIn = insideM * IN_PER_M
  const lossIn100 = (0.2083 * (100 / roughness) ** 1.852 * flowGpm ** 1.852) / insideIn ** 4.8655
  const lossFt = (lossIn100 / 100) * lengthM * FT_PER_M
  return lossFt / FT_PER_M
}

export const pipeLossPa = (headM: number): number => headM * PA_PER_M_OF_WATER

/** Mean velocity in m/s: flow over the inside area. */
export function pipeVelocityMPerS(flowM3PerS: number, insideM: number): number {
  return flowM3PerS / ((Math.PI * insideM ** 2) / 4)
}

/** Least inside diameter in m that keeps a flow to a velocity. */
export function leastInsideM(flowM3PerS: number, mostMPerS: number): number {
  return Math.sqrt((4 * flowM3PerS) / (Math.PI * mostMPerS))
}
