import type { Maybe } from '../base/absent.ts'
import type { IsoDate } from '../units/date.ts'

/** What a part of the site gets in the year of the schedules, as the programs stand. */
export interface TotalRow {
  readonly of: 'station' | 'program' | 'controller' | 'supply' | 'site'
  /** "K1/3", "K1 A", "K1", "S1"; the site's id for the whole. */
  readonly id: string
  /** Open valve, twelve months, January first. */
  readonly minutes: readonly number[]
  readonly minutesInYear: number
  /** Of the stations whose flow is stated, by month; absent where none is. */
  readonly volumeM3: Maybe<readonly number[]>
  readonly volumeInYearM3: Maybe<number>
  /** Ids of stations that water and are not in the volume. */
  readonly flowNotStated: readonly string[]
  /** Over the year and all its areas together; absent where the flow or the area of a station that waters is not stated. */
  readonly depthM: Maybe<number>
  /** Times that a valve opens in the calendar year. */
  readonly openings: number
}

/** One opening to come, by the controller's own clock. */
export interface NextRun {
  readonly program: string
  /** The day on which it opens. */
  readonly on: IsoDate
  /** Minutes after midnight. */
  readonly minute: number
  readonly minutes: number
}

/** What a sensor could keep from running in the year, as it is wired. */
export interface SensorMark {
  readonly sensor: string
  readonly kind: string
  readonly stops: boolean
  /** Nobody wrote what it does: it is taken to do what its kind does. */
  readonly byItsKind: boolean
  /** Ids of the stations that it acts on. */
  readonly stations: readonly string[]
  readonly openings: number
  /** Open valve in the year. */
  readonly minutes: number
}
