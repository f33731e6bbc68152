import type { At } from '../diagnostics/finding.ts'
import type { Closeout } from './closeout.ts'
import type { Drawing } from './drawing.ts'
import type { Interval, IsoDate, Month, MonthDay } from '../units/date.ts'
import type { ClockMinutes, Window } from '../units/clock.ts'
import type { Dimension } from '../units/dimension.ts'
import type { Quantity } from '../units/quantity.ts'
import type { UnitSystem } from '../units/show.ts'
import type { WireSize } from '../units/wire-size.ts'
import type { AddressDays, HouseNumber } from '../domain/schedule/address-days.ts'
import type { DayRule, RunTime } from '../domain/schedule/program.ts'
import type { LandUse } from '../reference/water-budget.ts'
import type { PipeMaterial } from '../reference/pipe.ts'
import type { Panel, SheetPower } from './power.ts'
import type { MaintenanceTask, Position } from './maintenance.ts'
import type { VisitPart, VisitProgram, VisitTest } from './visit-facts.ts'

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
  /** Languages of the outputs; the first is that of the binder and the labels, all of them are on the box pages. */
  readonly languages?: readonly string[]
  readonly paper: Paper
  readonly status: SiteStatus
  readonly place: SitePlace
  readonly revision?: string
  /** Day on which that revision was issued. */
  readonly issued?: IsoDate
  readonly location?: SiteLocation
  readonly contacts: readonly Contact[]
  /** The watering season; without one the controllers run all year. */
  readonly season?: Season
  readonly climate?: Climate
  /** Phases of every planting that names none of its own. */
  readonly phases?: readonly Phase[]
  readonly supplies: readonly Supply[]
  readonly wateringRules: readonly WateringRule[]
  readonly workRules: WorkRules
  readonly winter?: Winter
  readonly boxes: readonly Box[]
  readonly controllers: readonly Controller[]
  readonly stations: readonly Station[]
  readonly sensors: readonly Sensor[]
  readonly keys: readonly SiteKey[]
  readonly closeout?: Closeout
  readonly drawing?: Drawing
  readonly warranties: readonly Warranty[]
  readonly maintenance?: readonly MaintenanceTask[]
  readonly budget?: WaterBudget
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
  /** By which rules of the place tell the days. */
  readonly houseNumber?: HouseNumber
  /** ISO 3166 two-letter code; the cautions name the codes of that country where they know them. */
  readonly country?: string
}

export interface Season extends Recorded {
  readonly from: MonthDay
  readonly to: MonthDay
}

/** Month by month; a month may be left out. */
export type Monthly<D extends Dimension> = Readonly<Partial<Record<Month, Quantity<D>>>>

/** What is known of the climate. Means are of the days of a month, and so are hours of sun and radiation; rain is of the whole month. */
export interface Climate extends Recorded {
  readonly name?: string
  /** Of the whole month. Goes before anything computed. */
  readonly referenceEt?: Monthly<'length'>
  /** California's zone of reference evapotranspiration, 1 to 18. */
  readonly etoZone?: number
  readonly meanHigh?: Monthly<'temperature'>
  readonly meanLow?: Monthly<'temperature'>
  readonly dewPoint?: Monthly<'temperature'>
  readonly humidity?: Monthly<'ratio'>
  readonly wind?: Monthly<'speed'>
  /** Height that the wind was measured at, of the daily record too; 2 m where nothing is said. */
  readonly windHeight?: Quantity<'length'>
  readonly sunshine?: Monthly<'duration'>
  readonly solarRadiation?: Monthly<'radiation'>
  readonly rain?: Monthly<'length'>
  readonly effectiveRain?: string
  /** As written, "_shared/climates/little-tarn-days.csv". */
  readonly dailyWeatherPath?: string
  readonly dailyWeather?: DailyWeather
}

/** A record of weather, day by day, in the order of the file. `at.path` is the line of its head. */
export interface DailyWeather extends Recorded {
  readonly days: readonly WeatherDay[]
}

/** One day; what was not recorded is left out. */
export interface WeatherDay {
  readonly on: IsoDate
  readonly highC?: number
  readonly lowC?: number
  readonly dewPointC?: number
  /** Relative humidities, fractions. */
  readonly humidity?: number
  readonly humidityHigh?: number
  readonly humidityLow?: number
  readonly windMPerS?: number
  readonly sunshineS?: number
  readonly solarWPerM2?: number
  readonly rainM?: number
}

export const PHASE_NAMES = ['establishment', 'established', 'temporary'] as const
export type PhaseName = (typeof PHASE_NAMES)[number]

/** A time in the life of a planting in which it wants another share of reference ET; both days inclusive. */
export interface Phase extends Recorded {
  readonly name: PhaseName
  readonly from?: IsoDate
  readonly to?: IsoDate
  /** Share of reference ET, in place of the planting's own. */
  readonly factor?: number
  /** Of the planting's own factor. */
  readonly percent?: Quantity<'ratio'>
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
  /** The most that the purveyor lets through the meter for long. */
  readonly meterSafeFlow?: Quantity<'flow'>
  /** How many zones may run at once, over all controllers. */
  readonly zonesAtOnce?: number
  readonly staticPressure?: Quantity<'pressure'>
  /** Measured where the static pressure is, with so much water running. */
  readonly pressureAtFlow?: PressureAtFlow
  /** What the meter, the backflow assembly, filters take, as their sheets state it. */
  readonly losses?: readonly StatedLoss[]
  /** From the point of connection to where the valves branch off, in the order of the water. */
  readonly pipe?: readonly PipeSegment[]
  readonly meter?: string
  readonly backflow?: Backflow
  /** What is dosed into the water, and where: "liquid feed, at the pump". Absent: nothing is said of it. */
  readonly injection?: string
  /** The signs and marks that stand where the water is not for drinking. */
  readonly signs?: string
}

export interface PressureAtFlow extends Recorded {
  readonly pressure: Quantity<'pressure'>
  readonly flow: Quantity<'flow'>
}

export interface StatedLoss extends Recorded {
  /** "meter", "backflow assembly". */
  readonly of: string
  readonly loss: Quantity<'pressure'>
}

/** A length of one pipe. */
export interface PipeSegment extends Recorded {
  /** As it is marked: "1-1/4 in class 200". No figure is made from it. */
  readonly size?: string
  readonly inside: Quantity<'length'>
  readonly material: PipeMaterial
  readonly length: Quantity<'length'>
  /** How much higher its end lies than its start; below zero where it falls. */
  readonly rise?: Quantity<'length'>
}

export interface Backflow extends Recorded {
  readonly kind: string
  readonly size?: string
  readonly model?: string
  readonly where?: string
  readonly installed?: IsoDate
  readonly testerLicence?: string
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
  /** Where the days go by the house number. */
  readonly daysByAddress?: AddressDays
  /** Days of the year on which it holds; without them it holds all year. */
  readonly dates?: { readonly from: MonthDay; readonly to: MonthDay }
  readonly when?: 'daylight-saving' | 'standard'
  /** For each station and day. */
  readonly atMost?: Quantity<'duration'> | Quantity<'length'>
  /** Kinds of devices that it leaves free, "drip". */
  readonly except?: readonly string[]
  /** No watering for so long after rain: printed, not judged. */
  readonly afterRain?: Quantity<'duration'>
  readonly note?: string
}

/** Days on which a controller or a program is held back, both inclusive. */
export interface Suspension extends Recorded {
  readonly from: IsoDate
  readonly to: IsoDate
  readonly why?: string
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
  readonly position?: Position
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
  /** How its solar panel stands. */
  readonly panel?: Panel
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
  readonly suspensions?: readonly Suspension[]
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
  /** How far it may go off in a month. */
  readonly drift?: Quantity<'duration'>
  /** How often it is set right. */
  readonly set?: Interval
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
  readonly suspensions?: readonly Suspension[]
}

export interface ProgramStation extends Recorded {
  readonly number: number
  readonly runTime: RunTime
}

/** What the product sheet of a controller states, as submitted. */
export interface ProductSheet extends Recorded, SheetPower {
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
  /** False: it has no percent for run times by month. */
  readonly monthlyPercent?: boolean
  /** False: it cannot split a run into cycles with a soak between. */
  readonly cycleSoak?: boolean
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
  /** From the branch to the devices that are hardest to reach, in the order of the water. */
  readonly pipe?: readonly PipeSegment[]
  /** What the pressure regulator at the valve lets through at most. */
  readonly regulator?: Quantity<'pressure'>
  readonly devices?: Devices
  readonly area?: Quantity<'area'>
  /** Application efficiency, a fraction: what of the water the roots get. */
  readonly efficiency?: Quantity<'ratio'>
  /** Distribution uniformity of the lowest quarter, a fraction. */
  readonly uniformity?: Quantity<'ratio'>
  readonly catchCans?: CatchCans
  readonly plants?: Plants
  readonly phases?: readonly Phase[]
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
  /** Maker, product and catalog number of what is there. */
  readonly model?: string
  readonly coil?: CoilKind
  readonly coilResistance?: Quantity<'resistance'>
  /** Of the closing winding, where a coil of three leads has two that differ; `coilResistance` is then the opening one's. */
  readonly closingResistance?: Quantity<'resistance'>
  readonly lowestVolts?: Quantity<'voltage'>
  readonly normalFlow?: Quantity<'flow'>
  readonly minimumFlow?: Quantity<'flow'>
  readonly normalPressure?: Quantity<'pressure'>
  /** What it takes of the pressure at the flow of its zone, as its sheet states. */
  readonly loss?: Quantity<'pressure'>
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
  readonly model?: string
  readonly nozzle?: string
  readonly spacing?: Quantity<'length'>
  readonly flow?: Quantity<'flow'>
  readonly each?: Quantity<'flow'>
  readonly count?: number
  /** The least on which they work. */
  readonly pressure?: Quantity<'pressure'>
  /** How far the lowest of them lies below the highest part of their pipe. */
  readonly drop?: Quantity<'length'>
  /** True where each holds the water back when the valve is shut. Absent: nothing is said of it. */
  readonly checkValves?: boolean
}

/** A test with cans set out over the zone. */
export interface CatchCans extends Recorded {
  readonly on?: IsoDate
  /** All of them depths, or all volumes. */
  readonly catches: readonly Quantity<'length' | 'volume'>[]
  readonly time?: Quantity<'duration'>
  /** Opening of one can. */
  readonly throat?: Quantity<'area'>
}

export interface Plants extends Recorded {
  readonly factor?: number
  readonly speciesFactor?: number
  readonly density?: number
  readonly microclimate?: number
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
  /** Common to close, of a coil of three leads; `coil` and `loop` are then common to open. */
  readonly closingCoil?: Quantity<'resistance'>
  readonly closingLoop?: Quantity<'resistance'>
  readonly temperature?: Quantity<'temperature'>
  readonly answers?: ValveAnswer
  readonly by?: string
}

/** What the valve did when the controller told it to open and to close. */
export const VALVE_ANSWERS = ['as told', 'inverted', 'opens only', 'closes only', 'not at all'] as const
export type ValveAnswer = (typeof VALVE_ANSWERS)[number]

export interface Sensor extends Recorded {
  readonly id: string
  readonly kind: string
  readonly controller?: string
  readonly box?: string
  /** Ids of the stations that it acts on; left out: all of its controller. */
  readonly stations?: readonly string[]
  /** What it does as it is wired; left out where nobody says. */
  readonly acts?: SensorActs
  readonly wired?: SensorWiring
  /** How its contact stands while it lets the controller water. */
  readonly normally?: 'closed' | 'open'
  readonly wire: readonly WireSegment[]
  /** How to leave it out for a test, and how to put it back. */
  readonly bypass?: string
  readonly note?: string
}

export const SENSOR_ACTS = ['stops all', 'stops its stations', 'only reports'] as const
export type SensorActs = (typeof SENSOR_ACTS)[number]
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
  readonly model?: string
  readonly serial?: string
  readonly where?: string
  /** Maker or supplier, with how to reach them. */
  readonly maker?: string
  readonly spareParts?: string
  readonly certificate?: string
  /** What has to be done to keep it in force. */
  readonly upkeep?: string
  /** Where the operating instructions are. */
  readonly manual?: string
  readonly response?: string
  /** How the thing is marked at its place. */
  readonly tagged?: string
  readonly start?: IsoDate
  readonly end?: IsoDate
  /** So long after the start the work is looked at under the warranty. */
  readonly inspections?: readonly Interval[]
  readonly terms?: string
  readonly contact?: string
}

export const BUDGET_FORMS = ['ordinance 2015', 'annual volume'] as const
export type BudgetForm = (typeof BUDGET_FORMS)[number]

/** The water that the site may use in a year. */
export interface WaterBudget extends Recorded {
  readonly form: BudgetForm
  readonly authority?: string
  /** Volume of a year, where it is given as one. */
  readonly annual?: Quantity<'volume'>
  readonly kind?: LandUse
  /** Evapotranspiration adjustment of the local rule, where it has its own. */
  readonly adjustment?: number
  /** The whole landscape; that of all zones together where nothing is written. */
  readonly area?: Quantity<'area'>
  /** Ground that counts in full and hangs on no station. */
  readonly specialArea?: Quantity<'area'>
  /** Ids of the stations whose ground counts in full: food plants, play, public assembly, recycled water. */
  readonly specialStations: readonly string[]
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
  /** Boxes that were opened. */
  readonly boxes?: readonly string[]
  readonly arrived?: ClockMinutes
  readonly left?: ClockMinutes
  /** Time on the site. */
  readonly minutes?: Quantity<'duration'>
  readonly programs?: readonly VisitProgram[]
  readonly tests?: readonly VisitTest[]
  /** Names of maintenance tasks that were done. */
  readonly tasks?: readonly string[]
  /** Who sees to what is left open. */
  readonly owner?: string
  /** What earlier visits left open and is done now, in the words of those visits. */
  readonly repaired?: readonly string[]
  readonly parts?: readonly VisitPart[]
  /** Shown in the binder and to the office; never on a public page. */
  readonly photos?: readonly Photo[]
  /** True: the record drawing has to be changed. */
  readonly drawingChange?: boolean
}

export interface VisitBattery extends Recorded {
  readonly controller: string
  readonly fitted?: IsoDate
  readonly kind?: string
  readonly count?: number
  readonly rest?: Quantity<'voltage'>
  readonly underLoad?: Quantity<'voltage'>
}

/** The resistances that a reading may hold: at the coil, and at the controller with both wires. */
export const OHM_READINGS = ['loop', 'coil', 'closingLoop', 'closingCoil'] as const
export type OhmOf = (typeof OHM_READINGS)[number]

export interface VisitReading extends Recorded {
  readonly station?: string
  readonly supply?: string
  readonly coil?: Quantity<'resistance'>
  readonly loop?: Quantity<'resistance'>
  /** Common to close, of a coil of three leads; `coil` and `loop` are then common to open. */
  readonly closingCoil?: Quantity<'resistance'>
  readonly closingLoop?: Quantity<'resistance'>
  readonly temperature?: Quantity<'temperature'>
  readonly answers?: ValveAnswer
  readonly meter?: Quantity<'volume'>
  readonly flow?: Quantity<'flow'>
  readonly pressure?: Quantity<'pressure'>
  /** It was seen to open, and to close fully. */
  readonly opened?: boolean
  readonly closed?: boolean
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
  /** Time on sites that a week holds, of all who go out together. */
  readonly hoursAWeek?: Quantity<'duration'>
}
