import type { Maybe } from '../base/absent.ts'
import type { RainMethod } from '../reference/effective-rain.ts'
import type { IsoDate } from '../units/date.ts'

/** How a month's reference evapotranspiration came about, in the order in which one goes before another. */
export const ET_WAYS = [
  'by-hand',
  'daily-weather',
  'daily-temperatures',
  'weather',
  'zone-table',
  'temperatures'
] as const
export type EtWay = (typeof ET_WAYS)[number]

/** What weather wants besides temperatures, and the facts of the place. */
export type WeatherLack = 'humidity' | 'wind' | 'sunshine' | 'elevation'

/** The climate of a site, month by month. */
export interface ClimatePlan {
  /** Twelve, January first. */
  readonly months: readonly ClimateMonth[]
  /** Ways for which the site file gives facts, the one that goes first first. More than one: the later ones are used where it has nothing. */
  readonly ways: readonly EtWay[]
  /** Why temperatures alone were used although more of the weather is given. */
  readonly lacks: readonly WeatherLack[]
  readonly zone?: number
  /** The daily record that was read. */
  readonly record?: { readonly days: number; readonly first: IsoDate; readonly last: IsoDate }
  readonly rainMethod: Maybe<RainMethod>
  /** No rain counts there, whatever falls. */
  readonly underGlass: boolean
}

export interface ClimateMonth {
  /** Reference evapotranspiration of the whole month. */
  readonly etM: Maybe<number>
  readonly way?: EtWay
  /** Share by which an estimate may be off; left out where none is stated. */
  readonly off?: number
  /** Days of the month on record that it was made from. */
  readonly days?: number
  readonly rainM: Maybe<number>
  /** Rain that counts, by the method. Absent for a method that asks each zone for its plants and its soil. */
  readonly effectiveRainM: Maybe<number>
}
