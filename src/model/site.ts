import type { At } from '../diagnostics/finding.ts'
import type { Interval, IsoDate, Month, MonthDay } from '../units/date.ts'
import type { ClockMinutes, Window } from '../units/clock.ts'
import type { Quantity } from '../units/quantity.ts'
import type { UnitSystem } from '../units/show.ts'
import type { WireSize } from '../units/wire-size.ts'
import type { DayRule, RunTime } from '../domain/schedule/program.ts'

/** Every record knows where it was written; `[...record.at.path, 'key']` is the place of one of its values. */
export interface Recorded {
  readonly at: At
}

export const PAPERS = ['A4', 'Letter'] as const
export type Paper = (typeof PAPERS)[number]
export const SITE_STATUSES = ['planned', 'in-service', 'out-of-service', 'closed-out', 'removed'] as const
export type SiteStatus = (typeof SITE_STATUSES)[number]
export const PLACES = [
  'roundabout',
  'median',
  'verge',
  'planter',
  'roof',
  'nursery',
  'glasshouse',
  'park',
  'slope',
  'temporary',
  'other'
] as const
export type SitePlace = (typeof PLACES)[number]

export interface Site extends Recorded {
  /** Folder name. */
  readonly id: string
  readonly title: string
  readonly units: UnitSystem
  readonly paper: Paper
  readonly status: SiteStatus
  readonly place: SitePlace
  readonly revision?: string
  readonly location?: SiteLocation
  readonly contacts: readonly Contact[]
  /** The watering season; without one the controllers run all year. */
  readonly season?: Season
  readonly climate?: Climate
  readonly supplies: readonly Supply[]
  readonly wateringRules: readonly WateringRule[]
  readonly workRules: WorkRules
  readonly winter?: Winter
  readonly boxes: readonly Box[]
  readonly controllers: readonly Controller[]
  readonly stations: readonly Station[]
  readonly sensors: readonly Sensor[]
  readonly keys: readonly SiteKey[]
  readonly warranties: readonly Warranty[]
  readonly visits: readonly Visit[]
  /** Words under `private:` keys and contact details not marked public: never in public output. */
  readonly privateWords: readonly PrivateWord[]
  readonly prose: readonly ProseSection[]
  readonly company?: Company
}

export interface SiteLocation extends Recorded {
  readonly latitude?: number
  readonly longitude?: number
  readonly elevation?: Quantity<'length'>
  /** IANA name, "Europe/London". */
  readonly timeZone?: string
  readonly address?: string
  /** ISO 3166 two-letter code; the cautions name the codes of that country where they know them. */
  readonly country?: string
}

export interface Season extends Recorded {
  readonly from: MonthDay
  readonly to: MonthDay
}

export interface Climate extends Recorded {
  readonly referenceEt?: Readonly<Partial<Record<Month, Quantity<'length'>>>>
  readonly effectiveRain?: string
  readonly name?: string
}

export interface Contact extends Recorded {
  readonly role: string
  readonly name?: string
  readonly company?: string
  readonly phone?: string
  readonly email?: string
  readonly licence?: string
  readonly public: boolean
}

export interface Supply extends Recorded {
  readonly id: string
  readonly kind: string
  readonly shutOff?: string
  readonly limit?: Quantity<'flow'>
  /** How many zones may run at once, over all controllers. */
  readonly zonesAtOnce?: number
  readonly staticPressure?: Quantity<'pressure'>
  readonly meter?: string
  readonly backflow?: Backflow
  /** What is dosed into the water, and where: "liquid feed, at the pump". Absent: nothing is said of it. */
  readonly injection?: string
  /** The signs and marks that stand where the water is not for drinking. */
  readonly signs?: string
}

export interface Backflow extends Recorded {
  readonly kind: string
  readonly serial?: string
  readonly tested?: IsoDate
  readonly tester?: string
  readonly interval?: Interval
  /** Why none is fitted, where `kind` is "not fitted". */
  readonly reason?: string
}

export interface WateringRule extends Recorded {
  readonly authority?: string
  readonly windows: readonly Window[]
  /** Hours in which watering is forbidden, where the rule says so; `windows` says when it is allowed. */
  readonly barred?: readonly Window[]
  readonly days?: DayRule
  readonly note?: string
}

export interface WorkRules extends Recorded {
  /** Absent: nothing is said of a road, which is not the same as "no". */
  readonly road?: boolean
  readonly laneClosure?: Window
  /** Number of the plan or of the permit. */
  readonly trafficControlPlan?: string
  /** From the work to the nearest edge. */
  readonly roofEdge?: Quantity<'length'>
  readonly parapet?: Quantity<'length'>
  /** Names of the anchor points: A1, A2. */
  readonly anchors?: readonly string[]
  /** What keeps a person from the edge: "guardrail all round, 1.1 m". */
  readonly edgeProtection?: string
  readonly pits?: readonly Pit[]
  /** True where somebody climbs into a meter pit or a vault. Absent: nothing is said of it. */
  readonly vault?: boolean
  /** Where the mains of an adapter or a pump is switched off and locked. */
  readonly isolation?: string
  readonly note?: string
}

/** A trench or pit that has to be dug or entered for the work. */
export interface Pit extends Recorded {
  readonly where: string
  readonly depth: Quantity<'length'>
  readonly length?: Quantity<'length'>
  /** A competent person examined the ground and saw no sign of a cave-in. */
  readonly examined?: boolean
  /** "trench box", "1:1.5 slope", "stable rock throughout". */
  readonly protection?: string
  /** Ladders, steps or ramps. */
  readonly exits?: number
}

/** How the lines are emptied before frost. */
export interface Winter extends Recorded {
  readonly method: 'none' | 'drain' | 'air'
  /** What the regulator of the compressor is set to. */
  readonly airPressure?: Quantity<'pressure'>
  /** Rating of the weakest part that the air passes. */
  readonly lowestRated?: Quantity<'pressure'>
}

export interface Box extends Recorded {
  readonly id: string
  readonly tag?: string
  readonly where?: string
  readonly ties: readonly string[]
  readonly loadRating?: string
  /** "bolted, two M10 hex bolts". */
  readonly lid?: string
  /** What locks it; the key register says which key opens it. */
  readonly lock?: string
  /** "in the ground", "on a post, 1.2 m up". */
  readonly mounting?: string
  readonly photos: readonly Photo[]
  readonly status?: string
  readonly hazards: readonly string[]
}

export interface Photo extends Recorded {
  readonly file: string
  readonly caption?: string
}

export interface Controller extends Recorded {
  readonly id: string
  readonly box?: string
  readonly where?: string
  /** Path as written, "_shared/sheets/four-station-in-box.md". */
  readonly sheetPath?: string
  readonly sheet?: ProductSheet
  readonly serial?: string
  readonly battery?: Battery
  readonly power: 'battery' | 'solar' | 'adapter'
  readonly clock?: ControllerClock
  readonly programs: readonly Program[]
  readonly delayBetweenStations?: Quantity<'duration'>
  /** What the delay is for: "slow valves", "the well recovers". */
  readonly delayFor?: string
  readonly masterValve?: Valve & { readonly wire: readonly WireSegment[] }
  readonly pumpStart?: boolean
  /** The relay that starts the pump, and where it is. */
  readonly pumpRelay?: string
  /** Where to stand with the phone, for a unit that is set by radio. */
  readonly stand?: string
  /** What locks its cabinet; the key register says which key opens it. */
  readonly lock?: string
  readonly supply?: string
  readonly outOfService?: string
}

export interface Battery extends Recorded {
  readonly kind: string
  readonly count: number
  readonly fitted?: IsoDate
  readonly interval?: Interval
  /** Use-by date printed on the cells. */
  readonly dateCode?: IsoDate
}

export interface ControllerClock extends Recorded {
  readonly daylightSaving: 'by itself' | 'moved by hand' | 'not followed'
  readonly movedBy?: string
}

export interface Program extends Recorded {
  readonly id: string
  readonly name?: string
  readonly days: DayRule
  readonly starts: readonly ClockMinutes[]
  /** In the order the controller runs them, by station number. */
  readonly stations: readonly ProgramStation[]
  /** Twelve fractions, January first; absent means 100 % all year. */
  readonly monthlyPercent?: readonly number[]
  readonly from?: IsoDate
  readonly to?: IsoDate
}

export interface ProgramStation extends Recorded {
  readonly number: number
  readonly runTime: RunTime
}

/** What the product sheet of a controller states, as submitted. */
export interface ProductSheet extends Recorded {
  readonly path: string
  readonly title: string
  readonly mounting?: string
  readonly stations?: number
  readonly programs?: number
  readonly startsPerProgram?: number
  readonly runTimeLeast?: Quantity<'duration'>
  readonly runTimeMost?: Quantity<'duration'>
  readonly runTimeStep?: Quantity<'duration'>
  readonly pulseVolts?: Quantity<'voltage'>
  readonly loopLimit?: Quantity<'resistance'>
  readonly lengthLimits: readonly LengthLimit[]
  readonly battery?: {
    readonly kind?: string
    readonly count?: number
    readonly interval?: Interval
    readonly pulses?: number
  }
  readonly ingress?: string
  readonly setBy?: SetBy
  readonly radioRange?: Quantity<'length'>
  readonly lock?: string
  /** True: its outputs work coils of three leads. */
  readonly threeLead?: boolean
  readonly sensorInputs?: number
  readonly masterOutput?: boolean
  readonly pumpOutput?: boolean
  readonly startsPerDay?: number
  readonly dayRules?: readonly SheetDayRule[]
  readonly suspension?: SheetSuspension
  /** What to do when clock and program are gone. */
  readonly afterMemoryLoss?: string
  readonly prose: string
}

/** By its own keys, or by radio from a phone. */
export const SET_BY = ['keys', 'radio'] as const
export type SetBy = (typeof SET_BY)[number]
export const SHEET_DAY_RULES = ['weekdays', 'every N days', 'odd', 'even'] as const
export type SheetDayRule = (typeof SHEET_DAY_RULES)[number]

/** Watering held back for some days, as the sheet describes it. */
export interface SheetSuspension {
  /** The most days that can be set. */
  readonly days?: number
  readonly set?: string
  /** What it shows while it holds back. */
  readonly shows?: string
}

export interface LengthLimit extends Recorded {
  /** Absent: the cap holds whatever the size. */
  readonly size?: WireSize
  readonly length: Quantity<'length'>
}

export interface Station extends Recorded {
  /** "K1/3". */
  readonly id: string
  readonly controller: string
  readonly number: number
  /** The writer's name for what it waters, "Z3"; the id where none is given. */
  readonly zone: string
  readonly waters?: string
  /** More than one where coils are wired in parallel to one output. */
  readonly valves: readonly Valve[]
  readonly wire: readonly WireSegment[]
  readonly splices: readonly Splice[]
  readonly devices?: Devices
  readonly area?: Quantity<'area'>
  /** Application efficiency, a fraction: what of the water the roots get. */
  readonly efficiency?: Quantity<'ratio'>
  readonly plants?: Plants
  readonly soil?: Soil
  readonly slope?: string
  readonly readings: readonly Reading[]
  readonly outOfService?: string
}

export const COIL_KINDS = ['DC latching 2-wire', 'DC latching 3-wire', '24 V AC', 'not known'] as const
export type CoilKind = (typeof COIL_KINDS)[number]

export interface Valve extends Recorded {
  readonly box?: string
  readonly size?: string
  readonly coil?: CoilKind
  readonly coilResistance?: Quantity<'resistance'>
  /** Of the closing winding, where a coil of three leads has two that differ; `coilResistance` is then the opening one's. */
  readonly closingResistance?: Quantity<'resistance'>
  readonly lowestVolts?: Quantity<'voltage'>
  readonly normalFlow?: Quantity<'flow'>
  readonly minimumFlow?: Quantity<'flow'>
  readonly normalPressure?: Quantity<'pressure'>
  readonly byHand?: string
  readonly retrofit?: Retrofit
}

/** A valve that was made for alternating current and now carries a latching coil. */
export interface Retrofit extends Recorded {
  /** What the valve was: "1 in, 24 V AC, 2009". */
  readonly was?: string
  /** Thread, adapter and plunger that the new coil needs; "none" where it fits as it is. */
  readonly adapter?: string
  readonly swapped?: IsoDate
  /** The day on which it was seen to open and to close under pressure. */
  readonly checked?: IsoDate
}

export interface WireSegment extends Recorded {
  readonly size: WireSize
  readonly length: Quantity<'length'>
  /** Size of the way back where a shared common of another size is used; absent means the same as `size`. */
  readonly common?: WireSize
  readonly conductor: 'solid' | 'stranded'
  readonly coating: 'plain' | 'tinned'
  readonly colour?: string
  readonly cover?: Quantity<'length'>
  readonly under?: string
}

export interface Splice extends Recorded {
  readonly box?: string
  readonly where?: string
  readonly kind?: string
  /** Of both contacts together, where it was measured. */
  readonly resistance?: Quantity<'resistance'>
}

export interface Devices extends Recorded {
  readonly kind: string
  readonly flow?: Quantity<'flow'>
  readonly each?: Quantity<'flow'>
  readonly count?: number
}

export interface Plants extends Recorded {
  readonly factor?: number
  readonly kind?: string
}

export interface Soil extends Recorded {
  readonly texture?: string
  readonly rootDepth?: Quantity<'length'>
  /** Water for the plants over the whole root depth. */
  readonly availableWater?: Quantity<'length'>
  /** Fraction of it that may be used before watering. */
  readonly allowableDepletion?: Quantity<'ratio'>
  readonly intake?: Quantity<'rate'>
  /** Water that may stand before it runs off. */
  readonly surfaceStorage?: Quantity<'length'>
}

export interface Reading extends Recorded {
  readonly on: IsoDate
  readonly coil?: Quantity<'resistance'>
  readonly loop?: Quantity<'resistance'>
  readonly temperature?: Quantity<'temperature'>
  readonly by?: string
}

export interface Sensor extends Recorded {
  readonly id: string
  readonly kind: string
  readonly controller?: string
  readonly box?: string
  readonly wired?: SensorWiring
  /** How its contact stands while it lets the controller water. */
  readonly normally?: 'closed' | 'open'
  readonly wire: readonly WireSegment[]
  /** How to leave it out for a test, and how to put it back. */
  readonly bypass?: string
  readonly note?: string
}

export const SENSOR_WIRINGS = ['in the common', 'own terminals', 'by radio'] as const
export type SensorWiring = (typeof SENSOR_WIRINGS)[number]

/** A line of the key register. Where a key hangs and what its code is stand under `private:`. */
export interface SiteKey extends Recorded {
  readonly id: string
  readonly kind?: string
  /** Names of boxes and controllers, or words: "cabinet at the gate". */
  readonly opens: readonly string[]
  readonly count?: number
  readonly heldBy: readonly string[]
}

export interface Warranty extends Recorded {
  readonly item: string
  readonly start?: IsoDate
  readonly end?: IsoDate
  readonly terms?: string
  readonly contact?: string
}

export interface Visit extends Recorded {
  readonly on: IsoDate
  readonly by?: string
  readonly reason?: string
  readonly batteries: readonly VisitBattery[]
  readonly readings: readonly VisitReading[]
  readonly found: readonly string[]
  readonly done: readonly string[]
  readonly open: readonly string[]
}

export interface VisitBattery extends Recorded {
  readonly controller: string
  readonly fitted?: IsoDate
  readonly kind?: string
  readonly count?: number
  readonly rest?: Quantity<'voltage'>
  readonly underLoad?: Quantity<'voltage'>
}

export interface VisitReading extends Recorded {
  readonly station?: string
  readonly supply?: string
  readonly coil?: Quantity<'resistance'>
  readonly loop?: Quantity<'resistance'>
  readonly temperature?: Quantity<'temperature'>
  readonly meter?: Quantity<'volume'>
  readonly flow?: Quantity<'flow'>
  readonly pressure?: Quantity<'pressure'>
}

export interface PrivateWord extends Recorded {
  /** The key it stood under: "keys". */
  readonly label: string
  readonly text: string
}

export interface ProseSection extends Recorded {
  readonly heading: string
  readonly markdown: string
}

export interface Company extends Recorded {
  readonly name: string
  /** Where dist/public is hosted, "HTTPS://EXAMPLE.ORG": what the printed codes point at. */
  readonly publicAddress?: string
  readonly phone?: string
  readonly email?: string
  readonly address?: string
  readonly licence?: string
}
