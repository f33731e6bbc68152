/** Hazen-Williams roughness by material, as printed with the formula (read in a copy). */
export const PIPE_ROUGHNESS = {
  plastic: 150,
  'new steel': 140,
  'old steel': 120,
  // From memory.
  copper: 140
} as const
export type PipeMaterial = keyof typeof PIPE_ROUGHNESS
export const PIPE_MATERIALS = Object.keys(PIPE_ROUGHNESS) as PipeMaterial[]

/** OSU Bulletin 912, step 8: water in a pipe should not go faster than 5 ft/s. */
export const MOST_VELOCITY_M_PER_S = 1.524

/** Texas Administrative Code, title 30, 344.62: 7 ft/s in metal pipe. From memory. */
export const MOST_METAL_VELOCITY_M_PER_S = 2.1336

export const mostVelocityMPerS = (material: PipeMaterial): number =>
  material === 'plastic' ? MOST_VELOCITY_M_PER_S : MOST_METAL_VELOCITY_M_PER_S

/** Heads less than 1 ft below the top of their pipe drain too little to be seen. Rule of the project. */
export const LEAST_DROP_M = 0.3048

/** No more than this part of what a meter may pass should be drawn for long. From memory. */
export const METER_SHARE = 0.75

/** Safe maximum flow of a meter by its nominal size in inches, gpm: AWWA C700, from memory. */
export const METER_SAFE_GPM = { '5/8 in': 20, '3/4 in': 30, '1 in': 50, '1-1/2 in': 100, '2 in': 160 } as const
