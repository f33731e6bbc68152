/** Hazen-Williams roughness by material, as printed with the formula (read in a copy). */
export const PIPE_ROUGHNESS = {
  plastic: 150,
  'new steel': 140,
  'old steel': 120
} as const
export type PipeMaterial = keyof typeof PIPE_ROUGHNESS

/** OSU Bulletin 912, step 8: water in a pipe should not go faster than 5 ft/s. */
export const MOST_VELOCITY_M_PER_S = 1.524
