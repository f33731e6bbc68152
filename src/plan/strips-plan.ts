import type { IsoDate } from '../units/date.ts'

/** When water runs on the fullest day of the year and in its week, for a controller, or for all that share a supply; by the legal clock. */
export interface StripPlan {
  readonly of: 'controller' | 'supply'
  readonly id: string
  /** Ids of those that water. */
  readonly controllers: readonly string[]
  /** The day with most open valve. */
  readonly day: StripDay
  /** Seven, Monday first, `day` among them. */
  readonly week: readonly StripDay[]
  /** What may be drawn from the supply at once. */
  readonly limitM3s?: number
  /** Ids of stations that run on it and whose flow is not stated: what they draw is not in the load. */
  readonly flowNotStated: readonly string[]
}

/** From noon of a date to noon of the next, so that a night stays whole. Minutes count from midnight of the date: 720 to 2,160. */
export interface StripDay {
  readonly on: IsoDate
  /** In order of opening. A run that goes on past noon is cut there. */
  readonly runs: readonly StripRun[]
  /** What is drawn over time; nothing where no flow is stated. */
  readonly load: readonly StripLoad[]
  /** The hours that the rules allow; none where no rule limits them, and none where they bar the whole day. */
  readonly allowed: readonly { readonly fromMinute: number; readonly toMinute: number }[]
}

export interface StripRun {
  readonly station: string
  readonly controller: string
  readonly program: string
  readonly cycle: number
  readonly fromMinute: number
  readonly toMinute: number
}

export interface StripLoad {
  readonly fromMinute: number
  readonly toMinute: number
  readonly flowM3s: number
}

/** One start of a program at 100 %, from its start time to the last closing. */
export interface PassPlan {
  readonly program: string
  readonly lengthMinutes: number
}
