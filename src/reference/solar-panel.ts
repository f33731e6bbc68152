/** What shade takes of the light of a day, by the word for it. Rule of this project, for want of a published one. */
export const SHADES = [
  { name: 'open', lost: 0 },
  { name: 'half', lost: 0.5 },
  { name: 'deep', lost: 0.9 }
] as const

/** Part of a panel's output that reaches the cell: dirt, heat, the regulator and the cell's own loss. Rule of this project. */
export const PANEL_DERATING = 0.5

/** FAO paper 56 (1998), eq. 35: of the radiation above the air, what arrives under a closed cover of cloud, and what sunshine adds. */
export const CLOUDY_SHARE = 0.25
export const SUNSHINE_SHARE = 0.5

/** What bare ground and grass throw back of the light (common practice, no source). */
export const GROUND_SHARE = 0.2

/** Light in which the watts of a panel are stated, W/m² (common practice, no source). */
export const FULL_SUN_W_PER_M2 = 1000

/** A month counts as in doubt below this multiple of what is drawn. Rule of this project. */
export const SOLAR_MARGIN = 2
