/** How a conductor is made. `stranded` is seven wires or a few more; `flexible` is many fine ones. */
export const CONDUCTORS = ['solid', 'stranded', 'flexible'] as const
export type Conductor = (typeof CONDUCTORS)[number]
export const COATINGS = ['plain', 'tinned'] as const
export type Coating = (typeof COATINGS)[number]

export interface WireMake {
  readonly conductor: Conductor
  readonly coating: Coating
}

/** Soil around a buried pair, and the base of most tables. A pulse of milliseconds does not warm the wire. */
export const SOIL_C = 20
