import type { DayRule, RunTime } from '../domain/schedule/program.ts'
import type { IsoDate, MonthDay } from '../units/date.ts'
import type { ClockMinutes } from '../units/clock.ts'
import type { UnitSystem } from '../units/show.ts'
import type { VisitAsks } from './visit-asks.ts'
import type { Block, CautionBlock, QrSpec, State, TableBlock, Value } from './blocks.ts'

/** The page behind a scanned code. The order of the fields is the order on the page. */
export interface BoxPage {
  readonly kind: 'live'
  readonly tag: string
  readonly language: string
  readonly site: { readonly id: string; readonly title: string }
  readonly box: string
  /** One line of hazard that stands first on roads, roofs and reclaimed water; absent elsewhere. */
  readonly hazardLine?: string
  readonly rightBox: {
    readonly serves: string
    readonly where: Value
    readonly ties: readonly string[]
    readonly photo?: { readonly file: string; readonly alt: string }
  }
  readonly stopTheWater: readonly { readonly title: string; readonly steps: readonly string[] }[]
  /** At most three, worst first, one sentence each. */
  readonly hazards: readonly { readonly signal: string; readonly text: string; readonly instead: string }[]
  /** Master valves in this box or wired to its controllers. */
  readonly masters: readonly StationRow[]
  readonly wiredHere: readonly StationRow[]
  readonly batteries: readonly BatteryRow[]
  readonly today: readonly ControllerToday[]
  readonly known: {
    readonly lastVisit: string
    readonly items: readonly string[]
    /** What the checks found here, in their own words. */
    readonly found: readonly string[]
    readonly readings: readonly string[]
  }
  readonly tell: readonly {
    readonly role: string
    readonly name: string
    readonly phone?: string
    readonly quote: string
  }[]
  readonly trust: {
    readonly dataDate: string
    readonly revision: string
    readonly printed: string
    readonly tag: string
  }
  readonly programs: readonly Extract<Block, { kind: 'program-card' }>[]
  /** Fault finding in its order, with the numbers of this box; empty where nothing is wired here. */
  readonly faults: readonly { readonly title: string; readonly steps: readonly string[] }[]
  /** In full: what can hurt at an open box. */
  readonly cautions: readonly CautionBlock[]
  /** What else the site has, by name: it stands in full in the binder. */
  readonly otherCautions: readonly string[]
  /** What holds for all of the cautions, once instead of in each. */
  readonly cautionsFoot?: string
  /** Handed to the page's script as JSON; the page reads well without it. */
  readonly script: BoxPageScript
  /** Supplies whose meter is read on a visit. */
  readonly supplies: readonly string[]
  readonly visit: VisitAsks
  /** The pages that a phone keeps for where there is no signal; set by the build, which knows them all. */
  readonly offline?: { readonly version: string; readonly tags: readonly string[] }
  /** The languages of the site, each with its page beside this one; empty where there is only one. */
  readonly languages: readonly { readonly code: string; readonly name: string; readonly href: string }[]
}

export interface StationRow {
  readonly station: string
  readonly zone: string
  readonly waters: string
  readonly wire: string
  readonly wireColour: Value
  readonly valveSize: Value
  readonly valveBox: string
  readonly normalFlow: Value
  readonly coil: Value
  /** What a meter should read across the pair at the controller and across the coil at the valve. */
  readonly loopReading: Value
  readonly coilReading: Value
  readonly baseline: Value
}

export interface BatteryRow {
  readonly controller: string
  readonly kind: string
  readonly fitted: Value
  readonly due: Value
  readonly state: State
  readonly word: string
}

export interface ControllerToday {
  readonly controller: string
  /** What holds on the day the page was made; the script puts the day it is read in its place. */
  readonly asOf: string
  readonly lines: readonly string[]
  readonly months: readonly { readonly label: string; readonly percent: string; readonly minutes: string }[]
  readonly rules: readonly string[]
}

/** Data for the script only: plain numbers and words it cannot know. */
export interface BoxPageScript {
  readonly units: UnitSystem
  readonly batteries: readonly { readonly controller: string; readonly due?: string }[]
  readonly words: Readonly<Record<string, string>>
  readonly controllers: readonly ScriptController[]
}

/**
 * What the script needs to say what a controller does on the day the page is read. Fields carry the names of the model, so that
 * a program can be copied field by field; nothing else of it (places in files) goes into a public page.
 */
export interface ScriptController {
  readonly controller: string
  /** 24-hour times with metric units, 12-hour with US units. */
  readonly units: UnitSystem
  readonly season?: { readonly from: MonthDay; readonly to: MonthDay }
  readonly delayBetweenStationsS: number
  /** Step of run times at a monthly percent. */
  readonly stepS: number
  readonly outOfService?: string
  readonly programs: readonly {
    readonly id: string
    readonly days: DayRule
    readonly starts: readonly ClockMinutes[]
    readonly stations: readonly { readonly number: number; readonly waters: string; readonly runTime: RunTime }[]
    /** Twelve fractions, January first; absent means 100 % all year. */
    readonly monthlyPercent?: readonly number[]
    readonly from?: IsoDate
    readonly to?: IsoDate
    /** Days on which it is held back, those of its controller among them; past ones are left out. */
    readonly suspensions?: readonly { readonly from: IsoDate; readonly to: IsoDate }[]
  }[]
}

/** A tag that no longer stands for a box still answers. */
export interface GonePage {
  readonly kind: 'gone'
  readonly tag: string
  readonly language: string
  readonly title: string
  readonly text: string
  readonly now?: { readonly tag: string; readonly href: string }
}

/** One lid label. */
export interface Label {
  readonly tag: string
  readonly site: string
  readonly box: string
  readonly hazardLine?: string
  readonly shutOff: string
  readonly stations: readonly { readonly station: string; readonly waters: string }[]
  readonly battery: string
  readonly coil: string
  readonly url: string
  readonly qr: QrSpec
  /** The code twice more, smaller, for where both large ones have lost a finder mark. */
  readonly spare?: QrSpec
  /** The zone plan as plain text, for a phone without a network, and the same lines in print. */
  readonly plan?: { readonly title: string; readonly code: QrSpec; readonly lines: readonly string[] }
  readonly foot: string
}

export interface LabelSheet {
  readonly site: string
  readonly language: string
  readonly paper: 'A4' | 'Letter'
  readonly title: string
  readonly lead: readonly string[]
  /** Where other labels were asked for than the plain ones; `single` gives each a sheet of its own, `planMm` is what the plan code has of the height. */
  readonly cut?: {
    readonly widthMm: number
    readonly heightMm: number
    readonly single: boolean
    readonly planMm?: number
  }
  readonly labels: readonly Label[]
}

export interface SitePage {
  readonly site: string
  readonly language: string
  readonly title: string
  readonly facts: readonly { readonly label: string; readonly value: Value }[]
  readonly links: readonly { readonly label: string; readonly href: string; readonly note: string }[]
  readonly boxes: readonly {
    readonly box: string
    readonly tag: string
    readonly href?: string
    readonly where: string
    readonly serves: string
  }[]
  readonly batteries: readonly BatteryRow[]
  /** The fullest night and its week, of each controller or of all on a supply: figures, each with its table. */
  readonly watering: { readonly title: string; readonly blocks: readonly Block[] }
  /** What the zones need beside what they are given, a figure each for those that differ; the figures themselves in the table. */
  readonly needGiven: {
    readonly title: string
    readonly lead: string
    readonly figures: readonly Extract<Block, { kind: 'figure' }>[]
    readonly tables: readonly TableBlock[]
  }
  /** The newest visits with their photographs; empty where there was none. */
  readonly visits: { readonly title: string; readonly blocks: readonly Block[] }
  readonly findings: readonly Extract<Block, { kind: 'finding' }>[]
  readonly counts: { readonly error: number; readonly warning: number; readonly note: number }
  readonly foot: string
}

/** Every finding of the fleet, by site; those that are alike are told once. */
export interface FindingsPage {
  readonly language: string
  readonly title: string
  readonly asOf: string
  readonly lookedAt: string
  readonly fleet: { readonly label: string; readonly href: string }
  /** Every kind that was found, the most frequent first. */
  readonly kinds: readonly {
    readonly code: string
    readonly severity: string
    readonly count: number
    readonly sites: number
  }[]
  readonly sites: readonly {
    readonly id: string
    readonly title: string
    /** Absent for a site whose pages could not be made. */
    readonly href?: string
    readonly counts: { readonly error: number; readonly warning: number; readonly note: number }
    readonly groups: readonly { readonly first: Extract<Block, { kind: 'finding' }>; readonly alike?: string }[]
  }[]
  readonly empty: string
  readonly foot: string
}

export interface FleetPage {
  readonly language: string
  readonly title: string
  readonly asOf: string
  readonly findings: { readonly label: string; readonly href: string }
  readonly route?: { readonly label: string; readonly href: string }
  readonly map?: { readonly label: string; readonly href: string }
  readonly water?: { readonly label: string; readonly href: string }
  /** Choices that narrow the list; each a key of the rows' `marks`. */
  readonly filters: readonly {
    readonly key: string
    readonly label: string
    readonly choices: readonly { readonly value: string; readonly label: string }[]
  }[]
  readonly totals: readonly { readonly label: string; readonly value: string }[]
  readonly sites: readonly {
    readonly id: string
    readonly title: string
    readonly href: string
    readonly place: string
    readonly boxes: number
    readonly stations: number
    readonly nextDue: Value
    readonly counts: { readonly error: number; readonly warning: number; readonly note: number }
    readonly problem?: string
    readonly marks: Readonly<Record<string, string>>
  }[]
  readonly due: readonly {
    readonly date: Value
    readonly site: string
    readonly subject: string
    readonly what: string
    readonly href: string
  }[]
  readonly foot: string
}

/** Where a tag is typed by hand. */
export interface TagEntryPage {
  readonly language: string
  readonly title: string
  readonly lead: string
  readonly label: string
  readonly button: string
  readonly help: string
  readonly tags: readonly string[]
}
