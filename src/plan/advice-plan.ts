import type { ScheduledProgram } from '../domain/schedule/controller.ts'
import type { IsoDate } from '../units/date.ts'
import type { Maybe } from '../base/absent.ts'

/** What would meet the need of a controller's zones within the rules and its own settings, or what stands in the way. */
export interface AdvicePlan {
  readonly controller: string
  /**
   * `as-set`: what is set meets the need. `change`: `programs` would. `cannot`: nothing that it can be set to would, see `unmet`.
   * `not-known`: the need of none of its zones is known.
   */
  readonly verdict: 'as-set' | 'change' | 'cannot' | 'not-known'
  /** All programs of the controller as they should be; as they are where nothing is to be changed. */
  readonly programs: readonly AdvisedProgram[]
  readonly unmet: readonly UnmetPlan[]
  /** Zones whose run times are left as set, by station id, and why. */
  readonly notJudged: readonly { readonly station: string; readonly reason: string }[]
}

export interface AdvisedProgram extends ScheduledProgram {
  readonly name?: string
  /** Where the controller has no monthly percent: for each station, in their order, a cycle in s month by month, January first. */
  readonly byMonthS?: readonly (readonly number[])[]
  /** For each start, the minute after the midnight before it at which the last valve shuts; may pass 1,440. */
  readonly ends: readonly number[]
  /** False where it is the program as it is set. */
  readonly isChanged: boolean
}

/** A limit that cannot be kept to, and by how much. `needed` and `allowed` are in s, m or a count, as the kind says. */
export type UnmetPlan =
  /** Seconds on the fullest night against the hours of a day, or `onEnd` against the longest stretch of them. */
  | (UnmetOf<'hours'> & { readonly onEnd: boolean })
  /** The same where the hours would do, but not beside the others on the supply. */
  | UnmetOf<'supply'>
  /** Meters of water in one watering against what the root zone takes up. */
  | UnmetOf<'reservoir'>
  /** Days between waterings: the least that can be set on the days allowed, against the longest that the root zone lasts. */
  | UnmetOf<'interval'>
  /** Seconds: the shortest cycle that can be set, against the longest before water runs off. */
  | UnmetOf<'intake'>
  /** Seconds of open valve in a day, against the most that a rule allows. */
  | UnmetOf<'daily-cap'>
  /** Starts in a day that are wanted in place of cycles, against how many the controller takes. */
  | UnmetOf<'cycle-starts'>
  /** Starts in a day at the least, one for each program, against how many the controller makes. */
  | UnmetOf<'starts-a-day'>
  /** How many are wanted, against how many the controller holds. */
  | UnmetOf<'programs'>
  /** No day rule that it can be set to keeps to the days allowed; `first` is the day on which the best one leaves them. */
  | { readonly kind: 'days'; readonly subject: string; readonly rule: string; readonly first?: IsoDate }

interface UnmetOf<K extends string> {
  readonly kind: K
  /** Controller or station. */
  readonly subject: string
  /** 1 to 12, where it is of one month. */
  readonly month?: number
  readonly needed: number
  readonly allowed: number
}

/** Depths of a station month by month, January first, twelve each. */
export interface GivenPlan {
  readonly station: string
  /** What the plants need, with losses made good. Absent with the reason where it is not known in any month. */
  readonly needM: Maybe<readonly number[]>
  /** What the programs as set put on. */
  readonly setM: readonly number[]
  /** What the advised programs would put on; left out where nothing is to be changed. */
  readonly advisedM?: readonly number[]
}
