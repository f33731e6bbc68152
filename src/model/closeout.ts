import type { IsoDate } from '../units/date.ts'
import type { Quantity } from '../units/quantity.ts'
import type { Recorded } from './site.ts'

/** What the contractor hands over when the work is done: dates, drawings, reports, training, things and signatures. */
export interface Closeout extends Recorded {
  readonly workStart?: IsoDate
  readonly substantialCompletion?: IsoDate
  readonly acceptance?: IsoDate
  /** Number or name of the contract. */
  readonly contract?: string
  readonly installation?: Installation
  readonly digital?: DigitalCopies
  /** What is promised for a repair, and how it is marked at the place. */
  readonly repairs?: string
  readonly maintenancePeriod?: MaintenancePeriod
  readonly recordDrawings: readonly RecordDrawing[]
  readonly charts?: ControllerCharts
  readonly tests: readonly TestReport[]
  readonly training: readonly Training[]
  readonly spares: readonly HandedOver[]
  readonly tools: readonly HandedOver[]
  readonly signOffs: readonly SignOff[]
  readonly unfinished: readonly Unfinished[]
  readonly photographs: readonly CloseoutPhoto[]
}

export interface MaintenancePeriod extends Recorded {
  readonly from?: IsoDate
  readonly to?: IsoDate
  readonly agreement?: string
}

/** What was built in beside boxes, valves and controllers, in words; "none" where there is none of it. */
export interface Installation extends Recorded {
  readonly designPressure?: Quantity<'pressure'>
  readonly mains?: string
  readonly filters?: string
  readonly pumps?: string
  readonly quickCouplers?: string
  readonly grounding?: string
  readonly conduit?: string
  readonly spareWires?: string
  readonly wireSlack?: string
  readonly samples?: string
  readonly shutOffTag?: string
  readonly boxTags?: string
  /** Instructions that are posted beside what they are for. */
  readonly posted?: string
}

/** What was handed over as files. */
export interface DigitalCopies extends Recorded {
  readonly drawings?: string
  readonly markUps?: string
  readonly geodata?: string
  readonly manual?: string
}

export interface RecordDrawing extends Recorded {
  readonly number: string
  readonly title?: string
  readonly dated?: IsoDate
  readonly revision?: string
  readonly scale?: string
  readonly signedBy?: string
  readonly surveyTolerance?: Quantity<'length'>
  readonly transmittal?: string
  /** Day on which the owner got it. */
  readonly delivered?: IsoDate
  /** What positions are measured from: a benchmark, a base line, a corner of a building. */
  readonly base?: string
  /** Pipes and wires are tied at least so often. */
  readonly tiedEvery?: Quantity<'length'>
  /** Who marked up the set, and how often; what was recorded before it was covered. */
  readonly markedUp?: string
  /** Who holds a copy, and for how long. */
  readonly copies: readonly string[]
  /** Path beside the site file. */
  readonly file?: string
}

export interface ControllerCharts extends Recorded {
  readonly copies?: number
  /** Where the one at the controller is fixed. */
  readonly fixed?: string
  readonly material?: string
  readonly approved?: IsoDate
  /** Where the schedule in force is posted. */
  readonly schedulePosted?: string
  /** What the lasting sticker at the controller says. */
  readonly sticker?: string
}

export const TEST_KINDS = [
  'pressure',
  'flush',
  'coverage',
  'start-up pressures',
  'backflow',
  'audit',
  'catch cans',
  'wire and coil',
  'inspection'
] as const
export type TestKind = (typeof TEST_KINDS)[number]

export interface TestReport extends Recorded {
  readonly kind: TestKind
  readonly on?: IsoDate
  readonly by?: string
  readonly company?: string
  readonly witness?: string
  /** True: by somebody who neither designed nor installed it. */
  readonly independent?: boolean
  /** The instrument. */
  readonly meter?: string
  readonly of?: string
  readonly pressure?: Quantity<'pressure'>
  readonly duration?: Quantity<'duration'>
  readonly result?: string
  readonly passed?: boolean
  readonly file?: string
}

export interface Training extends Recorded {
  readonly on?: IsoDate
  readonly trainer?: string
  readonly place?: string
  readonly duration?: Quantity<'duration'>
  readonly attendees: readonly string[]
  readonly topics: readonly string[]
  readonly signed?: boolean
  /** Who watched it and read the binder for the owner. */
  readonly reviewer?: string
  readonly file?: string
}

/** Spare parts, tools and the like, counted and receipted. */
export interface HandedOver extends Recorded {
  readonly item: string
  readonly count?: number
  /** How many of it are installed, where a share was agreed. */
  readonly installed?: number
  readonly source?: string
  readonly receivedBy?: string
  readonly on?: IsoDate
}

export const SIGN_OFF_KINDS = [
  'walk-through',
  'maintenance checklist',
  "installer's statement",
  'certificate of completion',
  'record drawing approval',
  'receipt of spares and keys'
] as const
export type SignOffKind = (typeof SIGN_OFF_KINDS)[number]

export interface SignOff extends Recorded {
  readonly kind: SignOffKind
  readonly by?: string
  readonly role?: string
  readonly on?: IsoDate
  /** When and why it was refused, where it was. */
  readonly refused?: string
  readonly copiesTo: readonly string[]
  /** Words that the authority asks for. */
  readonly words?: string
  readonly file?: string
}

export interface Unfinished extends Recorded {
  readonly item: string
  readonly value?: string
  readonly reason?: string
  readonly owner?: string
  readonly by?: IsoDate
}

export const PHOTO_KINDS = [
  'box open',
  'open trench',
  'splice',
  'shut-off',
  'meter',
  'zone running',
  'completion'
] as const
export type PhotoKind = (typeof PHOTO_KINDS)[number]

export interface CloseoutPhoto extends Recorded {
  readonly file: string
  readonly kind: PhotoKind
  /** The box, station or supply that it shows. */
  readonly of?: string
  readonly caption?: string
  readonly taken?: IsoDate
}
