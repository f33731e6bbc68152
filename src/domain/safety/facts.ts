/** What the cautions are chosen by: plain facts of a site. A fact that nobody stated is undefined, which is not the same as "no". */
export interface SafetyFacts {
  /** ISO 3166 two-letter code. */
  readonly country?: string
  readonly place: PlaceKind
  /** True where the work is at a road. */
  readonly road?: boolean
  /** "22:00–05:00". */
  readonly laneClosure?: string
  /** Plan or permit number. */
  readonly trafficControlPlan?: string
  /** From the work to the nearest unguarded edge. */
  readonly roofEdgeM?: number
  readonly parapetM?: number
  readonly deepestPitM?: number
  /** True where somebody climbs into a meter pit or a vault. */
  readonly vault?: boolean
  readonly supplies: readonly SupplyFacts[]
  /** A controller runs from an adapter on the mains. */
  readonly adapter: boolean
  /** A controller starts a pump, or a supply is pumped. */
  readonly pump: boolean
  readonly coils: readonly CoilFacts[]
  readonly winterizedByAir: boolean
  /** Batteries as the file names them, "9 V alkaline", each once. */
  readonly batteries: readonly string[]
  readonly season: SeasonFacts
  readonly boxes: number
  /** What the boxes' own hazard lists say, each once. */
  readonly boxHazards: readonly string[]
  /** Stations with a stated wire, or with none stated: both lie in the ground until the file says otherwise. */
  readonly stations: number
}

export type PlaceKind =
  | 'roundabout'
  | 'median'
  | 'verge'
  | 'planter'
  | 'roof'
  | 'nursery'
  | 'glasshouse'
  | 'park'
  | 'slope'
  | 'temporary'
  | 'other'

export type CoilFacts = 'DC latching 2-wire' | 'DC latching 3-wire' | '24 V AC' | 'not known'

export interface SupplyFacts {
  readonly id: string
  readonly water: Water
  readonly backflow: 'fitted' | 'not fitted' | 'not stated'
  readonly metered: boolean
  /** What is dosed into the water. */
  readonly injection?: string
}

/** Water as the cautions tell it apart. */
export type Water = 'drinking water' | 'reclaimed' | 'raw'

export interface SeasonFacts {
  /** 1 to 12. */
  readonly month: number
  /** By the hemisphere; the tropics are warm all year. Undefined where no latitude is stated. */
  readonly half?: 'warm' | 'cool'
}

/** Nothing is known but that somebody works there. */
export const NOTHING_KNOWN: SafetyFacts = {
  place: 'other',
  supplies: [],
  adapter: false,
  pump: false,
  coils: [],
  winterizedByAir: false,
  batteries: [],
  season: { month: 1 },
  boxes: 0,
  boxHazards: [],
  stations: 0
}
