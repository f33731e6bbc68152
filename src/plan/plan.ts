import type { NextRun, SensorMark, TotalRow } from './totals-plan.ts'
import type { Maybe } from '../base/absent.ts'
import type { ChosenCaution } from '../domain/safety/cautions.ts'
import type { DueBecause } from '../domain/dates/due-date.ts'
import type { Interval, IsoDate } from '../units/date.ts'
import type { Quantity } from '../units/quantity.ts'
import type { YearRuns } from '../domain/schedule/year-runs.ts'
import type { LongestCycle } from '../domain/water/cycle-soak.ts'
import type { WireSize } from '../units/wire-size.ts'
import type { ChargeLife, ColdestMonth, DoAt, SolarPlan } from './power-plan.ts'
import type { AdvicePlan, GivenPlan } from './advice-plan.ts'
import type { PassPlan, StripPlan } from './strips-plan.ts'
import type { ClimatePlan } from './climate-plan.ts'
import type { NeedPlan } from './water-plan.ts'
import type { Trends } from './trends.ts'
import type { BudgetPlan } from './budget-plan.ts'
import type { DriftPlan } from './clock-drift.ts'
import type { DrawingPlan } from './drawing-plan.ts'
import type { PressurePlan } from './pressure-plan.ts'

/**
 * Every derived number of a site on a day, computed once. Checks judge these and pages print these, so the two cannot disagree.
 * Numbers are in the unit their name ends in.
 */
export interface Plan {
  readonly on: IsoDate
  readonly wires: ReadonlyMap<string, WirePlan>
  /** Meter readings over the visits, by station id; only stations that were measured. */
  readonly trends: ReadonlyMap<string, Trends>
  readonly batteries: ReadonlyMap<string, BatteryPlan>
  readonly schedules: ReadonlyMap<string, SchedulePlan>
  /** Worst first, each with the fact that called for it. */
  readonly cautions: readonly ChosenCaution[]
  readonly covers: readonly CoverPlan[]
  readonly backflows: ReadonlyMap<string, DuePlan>
  /** By supply id. */
  readonly peaks: ReadonlyMap<string, PeakPlan>
  /** By supply id: only where clocks that drift bring together what the programs keep apart. */
  readonly drifts: ReadonlyMap<string, DriftPlan>
  /** By station id: those on whose way from the supply a pipe is written. */
  readonly pressures: ReadonlyMap<string, Maybe<PressurePlan>>
  /** Twelve months of reference evapotranspiration and rain. */
  readonly climate: ClimatePlan
  /** By station id; every station of the site has one. */
  readonly water: ReadonlyMap<string, WaterPlan>
  /** What the plants need of the hours allowed, by supply or controller and then by month; only where a rule limits the hours. */
  readonly nights: readonly NightPlan[]
  /** By controller id: what would meet the need of its zones; none for one without programs. */
  readonly advice: ReadonlyMap<string, AdvicePlan>
  /** By station id: what is needed and what is given month by month; none where the rate is not known. */
  readonly given: ReadonlyMap<string, GivenPlan>
  /** The watering day and week of each supply that several controllers share, and of each other controller. */
  readonly strips: readonly StripPlan[]
  /** By controller id: how long each program takes. */
  readonly passes: ReadonlyMap<string, readonly PassPlan[]>
  /** By station, program, controller, supply and site; only of what waters at all. */
  readonly totals: readonly TotalRow[]
  /** The next three openings of each station, by its id. */
  readonly next: ReadonlyMap<string, readonly NextRun[]>
  /** Where things lie, for the record drawing. */
  readonly drawing: DrawingPlan
  readonly sensorMarks: readonly SensorMark[]
  /** Allowance, estimate, programs and meter side by side. */
  readonly budget: BudgetPlan
  /** Each calculation that was used, with its working, for the appendix. */
  readonly workings: readonly Working[]
}

export interface Working {
  readonly calculation: string
  readonly subject: string
  readonly steps: readonly string[]
}

/** One station's pair of wires. */
export interface WirePlan {
  readonly station: string
  readonly lengthM: number
  readonly loopOhm: Maybe<number>
  /** Coil, or coils in parallel. */
  readonly coilOhm: Maybe<number>
  /** Only for a coil of three leads, whose opening winding is `coilOhm`: the closing one alone, and with the wires. */
  readonly closing?: { readonly coilOhm: Maybe<number>; readonly expectedOhm: Maybe<number> }
  /** Of three leads, of the winding that the wire leaves least for. */
  readonly coilVolt: Maybe<number>
  readonly lowestVolt?: number
  readonly pulseVolt?: number
  /** The limits that the product sheet states, each with how far the run is from it. */
  readonly limits: readonly WireLimit[]
  /** The tightest, by the longest run it would allow at this size. */
  readonly governing?: WireLimit
  readonly longestM: Maybe<number>
  /** The first size of the ladder that passes every limit. */
  readonly passingSize: Maybe<WireSize>
  readonly passingVolt?: number
  readonly longestBySize: readonly { readonly size: WireSize; readonly longestM: number }[]
  /** Expected at the controller's terminals: loop and coil together. */
  readonly expectedOhm: Maybe<number>
}

export interface WireLimit {
  readonly form: 'length' | 'loop' | 'voltage'
  readonly passes: boolean
  readonly longestM: number
  /** As stated, in the unit it was stated in. */
  readonly stated: Quantity
  readonly size?: WireSize
  /** Coils side by side that share the stated figure, which holds for one: each gets the n-th part. Left out for a single coil. */
  readonly coils?: number
}

export type BatteryState = 'ok' | 'due-soon' | 'overdue' | 'no-date' | 'none'

export interface BatteryPlan {
  readonly controller: string
  readonly fitted?: IsoDate
  readonly kind: string
  readonly count: number
  readonly dueOn: Maybe<IsoDate>
  /** What set the date: the interval, the computed life, the date code. */
  readonly because: string
  /** The same for a page in another language; absent where there is no date. */
  readonly dueBy?: { readonly because: DueBecause; readonly interval: Interval; readonly isStated: boolean }
  readonly state: BatteryState
  /** Positive when overdue. */
  readonly daysOverdue?: number
  /** By the interval alone, whatever set the date. */
  readonly intervalDueOn?: IsoDate
  /** Where the product sheet states how many pulses a set gives and a program says how many are sent. */
  readonly pulses?: { readonly rated: number; readonly perDay: number; readonly lifeDays: number }
  /** Where the product sheet states what is drawn. */
  readonly charge?: ChargeLife
  /** Where the temperature of every month is known and valves are worked. */
  readonly coldest?: ColdestMonth
  /** Use-by date of the cells that are in it. */
  readonly dateCode?: IsoDate
  /** Of the simulated year, January first. */
  readonly pulsesByMonth?: readonly number[]
  /** Left out where nothing is to be changed. */
  readonly doAt?: DoAt
  /** Where it runs from a solar panel. */
  readonly solar?: SolarPlan
}

export interface DuePlan {
  readonly dueOn: Maybe<IsoDate>
  readonly daysOverdue?: number
}

export interface SchedulePlan {
  readonly controller: string
  readonly year: number
  /** The whole year of `year` by the controller's clock. `runsOf` gives each opening with its date. */
  readonly days: YearRuns
  /** The same by the legal clock. */
  readonly legal: LegalDays
  readonly months: readonly StationMonths[]
}

/** When the water runs by the legal clock of the place, by which rules go. */
export interface LegalDays {
  readonly days: YearRuns
  /** How far the controller's clock is behind it, and in which months of those with water, 1 to 12; left out where it is right. */
  readonly behind?: { readonly minutes: number; readonly months: readonly number[] }
}

/** What one station gets from one program, month by month: twelve entries each, January first. */
export interface StationMonths {
  readonly station: number
  readonly program: string
  /** Fraction. */
  readonly percent: readonly number[]
  /** Watering days in the month, by days in month × days a week / 7 where the rule goes by the week. */
  readonly days: readonly number[]
  /** Minutes of open valve on a watering day. */
  readonly minutesPerDay: readonly number[]
  readonly minutes: readonly number[]
  /** Absent where no flow is stated. */
  readonly volumeM3?: readonly number[]
}

export interface CoverPlan {
  readonly station: string
  readonly segment: number
  readonly coverM: Maybe<number>
  readonly leastM: number
  readonly location: string
}

/** The most that is drawn from a supply at once, as programmed, in the year of the schedules; times by the legal clock. */
export interface PeakPlan {
  readonly supply: string
  readonly flowM3s: number
  /** The first day on which so much is drawn. */
  readonly on: IsoDate
  /** Minutes after midnight of that day; the end may pass 1,440. */
  readonly fromMinute: number
  readonly toMinute: number
  /** Ids of the stations that are open then, in the order in which they opened. */
  readonly stations: readonly string[]
  /** Days on which more is drawn than the supply's limit, and the first of them; 0 where it states none. */
  readonly daysOver: number
  readonly firstOver?: IsoDate
  /** Ids of stations that water and whose flow is not stated: what they draw is not in the figure. */
  readonly flowNotStated: readonly string[]
}

/** What a station's water does on its ground, and what its plants need of it, in the year of the schedules. */
export interface WaterPlan {
  readonly station: string
  /** What cans caught, else flow over the whole area, m/s. */
  readonly rateMPerS: Maybe<number>
  readonly rateBy: 'flow' | 'catch-cans'
  readonly intake: Maybe<IntakePlan>
  readonly reservoir: Maybe<ReservoirPlan>
  /** The longest that the programs set; left out where it never waters. */
  readonly longestSet?: {
    /** One cycle. */
    readonly cycle: SetRun
    /** All cycles of one start. */
    readonly watering: SetRun
  }
  /** Depth that `longestSet.watering` puts on. */
  readonly appliedM: Maybe<number>
  /** What the plants want of it: factor, losses, phases, use and rain, month by month. */
  readonly need: NeedPlan
  /** Twelve, January first. */
  readonly months: readonly WaterMonth[]
}

export interface SetRun {
  readonly program: string
  /** 1 to 12: the first month in which it is so long. */
  readonly month: number
  readonly seconds: number
  readonly cycles: number
}

/** How fast the ground takes water in. Only for devices that wet an area. */
export interface IntakePlan {
  readonly intakeMPerS: number
  /** Depth that may stand before it runs off. */
  readonly surfaceM: number
  /** By the record of the site, or at least in part by a table of textures. */
  readonly by: 'record' | 'texture'
  /** Longest cycle before water runs off. */
  readonly longestS: Maybe<LongestCycle>
}

/** What the root zone or the substrate takes up at once. */
export interface ReservoirPlan {
  readonly holdsM: number
  /** At the high end of what the texture may hold; the same as `holdsM` where the record states it. */
  readonly atMostM: number
  readonly by: 'record' | 'texture'
  /** Longest run that `holdsM` takes up. */
  readonly longestS: Maybe<number>
}

export interface WaterMonth {
  /** What the plants lack, before losses, over the days in season and within the dates of its programs. */
  readonly needM: Maybe<number>
  /** Watering days; by the week they need not be whole. 0 where nothing runs. */
  readonly events: number
  /** Set for a watering day, all starts together; the mean where programs differ. */
  readonly setS: number
  /** Needed on a watering day, each cycle rounded up to the controller's step. */
  readonly needS: Maybe<number>
}

/** The night of a month that asks for most: what the plants need on it, against the hours that the rules allow in one day. */
export interface NightPlan {
  readonly of: 'supply' | 'controller'
  readonly id: string
  /** 1 to 12. */
  readonly month: number
  readonly needS: number
  readonly allowedS: number
  /** Zones that may run at once. */
  readonly zonesAtOnce: number
  /** Nights of the month on which anything runs. */
  readonly nights: number
  /** Ids of the stations of that night whose need is in the figure, and of those whose need is not known. */
  readonly stations: readonly string[]
  readonly notKnown: readonly string[]
}
