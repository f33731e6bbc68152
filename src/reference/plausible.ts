import type { SourceId } from './sources.ts'

/**
 * What is likely on an irrigated site. Outside of it a value may still be true; far more often a unit has slipped. `least` and `most` are in
 * the coherent unit of the quantity, and both are themselves likely.
 */
export interface Plausible {
  readonly least: number
  readonly most: number
  /** The thing in a sentence: "a run of wire". */
  readonly what: string
  /** Why the range is drawn there. */
  readonly reason: string
  readonly source: SourceId
  /** Units that are mistaken for one another, the likelier slips first. */
  readonly units: readonly string[]
}

/** Units that meters count in, the likelier slips first: kL for ML, gallons for hundreds of cubic feet. */
export const METER_UNITS = ['m³', 'kL', 'ML', 'L', 'gal', 'HCF', 'ft³'] as const

/** Units of flow that are mistaken for one another. */
export const FLOW_UNITS = ['L/h', 'L/min', 'gph', 'gpm', 'm³/h', 'L/s'] as const

/** One to one, rise over run: steeper ground is not watered. From memory. */
export const MOST_SLOPE = 1

const BAR = 100_000
const L_PER_MIN = 1 / 60_000
const MM_PER_H = 1 / 3_600_000
const ALL_LENGTHS = ['m', 'ft', 'mm', 'in', 'cm'] as const

export const PLAUSIBLE = {
  'wire-length': {
    least: 0.1,
    most: 1500,
    what: 'a run of wire',
    reason: 'Shorter than a hand is no run; beyond a mile no size in use works a coil.',
    source: 'from-memory',
    units: ALL_LENGTHS
  },
  cover: {
    least: 0,
    most: 2,
    what: 'the cover over a wire',
    reason: 'Codes ask for up to 24 in; nobody digs a wire in deeper than a person is tall.',
    source: 'from-memory',
    units: ['mm', 'in', 'cm', 'm']
  },
  'root-depth': {
    least: 0.02,
    most: 3,
    what: 'a root depth',
    reason: 'Sedum on a roof roots in a few centimeters, trees in a meter or two.',
    source: 'from-memory',
    units: ['mm', 'in', 'cm', 'm']
  },
  area: {
    least: 0.05,
    most: 20_000,
    what: 'the area of one station',
    reason: 'From one planter to two hectares; a valve of a battery controller waters no more.',
    source: 'from-memory',
    units: ['ft²', 'm²', 'acre', 'ha']
  },
  'station-flow': {
    least: 0.02 * L_PER_MIN,
    most: 1000 * L_PER_MIN,
    what: 'the flow of one station',
    reason: 'From a single dripper to a 3 in valve.',
    source: 'from-memory',
    units: ['L/min', 'L/h', 'gpm', 'gph', 'm³/h']
  },
  'supply-flow': {
    least: 1 * L_PER_MIN,
    most: 5000 * L_PER_MIN,
    what: 'the limit of a supply',
    reason: 'From a tank with a small pump to a 6 in main.',
    source: 'from-memory',
    units: ['L/min', 'gpm', 'm³/h', 'L/s', 'L/h']
  },
  pressure: {
    least: 0.2 * BAR,
    most: 16 * BAR,
    what: 'a water pressure',
    reason: 'A tank two meters up gives 0.2 bar; pipe and valves are rated to 16 bar at most.',
    source: 'from-memory',
    units: ['bar', 'psi', 'kPa', 'MPa']
  },
  'coil-resistance': {
    least: 0.5,
    most: 300,
    what: 'the resistance of a coil',
    reason: 'Latching coils have about 2 to 40 Ω, 24 V AC coils 20 to 60 Ω.',
    source: 'from-memory',
    units: ['ohm', 'kohm']
  },
  'coil-volts': {
    least: 1,
    most: 48,
    what: 'the voltage of a pulse',
    reason: 'Pulse controllers give some 6 to 24 V.',
    source: 'from-memory',
    units: ['V', 'mV']
  },
  'cycle-time': {
    least: 5,
    most: 12 * 3600,
    what: 'the run time of a cycle',
    reason: 'A valve takes seconds to open; the longest drip cycles last half a day.',
    source: 'from-memory',
    units: ['min', 's', 'h']
  },
  'monthly-et': {
    least: 0,
    most: 0.45,
    what: 'the reference ET of a month',
    reason: 'The hottest deserts reach about 15 mm a day.',
    source: 'from-memory',
    units: ['mm', 'in', 'cm']
  },
  'drip-emitter': {
    least: (0.2 / 60) * L_PER_MIN,
    most: (60 / 60) * L_PER_MIN,
    what: 'the flow of one dripper',
    reason: 'Drippers give about 0.5 to 24 L/h.',
    source: 'from-memory',
    units: ['L/h', 'gph', 'L/min', 'gpm']
  }
} as const satisfies Record<string, Plausible>

export type PlausibleId = keyof typeof PLAUSIBLE

/** Application rates by the kind of device, in m/s; the first whose words match. Sprays about 25 to 50 mm/h, rotors 5 to 20, from memory. */
const RATES: readonly (Pick<Plausible, 'least' | 'most' | 'what'> & { readonly words: RegExp })[] = [
  { words: /drip|emitter/iu, least: MM_PER_H, most: 60 * MM_PER_H, what: 'drip' },
  { words: /bubbler|flood/iu, least: 5 * MM_PER_H, most: 600 * MM_PER_H, what: 'bubblers' },
  { words: /rotor|rotary|impact/iu, least: 2 * MM_PER_H, most: 40 * MM_PER_H, what: 'rotors' },
  { words: /micro|mist/iu, least: 2 * MM_PER_H, most: 100 * MM_PER_H, what: 'micro-sprays' },
  { words: /spray|sprinkler/iu, least: 4 * MM_PER_H, most: 100 * MM_PER_H, what: 'sprays' }
]

const ANY_RATE = { least: 2 * MM_PER_H, most: 150 * MM_PER_H, what: 'an irrigated area' }

/** The range of application rates for a kind of device. */
export function plausibleRate(kind: string): Pick<Plausible, 'least' | 'most' | 'what'> {
  return RATES.find(one => one.words.test(kind)) ?? ANY_RATE
}

/** More cells than this in one controller is a slip of the keys. From memory. */
export const MOST_CELLS = 16

export function isPlausible(value: number, { least, most }: Pick<Plausible, 'least' | 'most'>): boolean {
  // Conversions to the coherent unit leave the last digits uncertain; the ends themselves are likely.
  const slack = 1e-9
  return value >= least * (1 - slack) && value <= most * (1 + slack)
}
