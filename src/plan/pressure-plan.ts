import type { Maybe } from '../base/absent.ts'
import type { PassedPart } from '../domain/supply/along-the-way.ts'
import type { StartPressure } from '../domain/supply/start-pressure.ts'
import type { PipeSegment } from '../model/site.ts'

/** The pressure of one station from the point of connection to its devices, with all that runs beside it as programmed. */
export interface PressurePlan {
  readonly station: string
  readonly supply: string
  /** Of the zone alone. */
  readonly flowM3s: number
  /** Through the pipe of the supply, when most runs beside it. */
  readonly mainFlowM3s: number
  /** Ids of the other stations that run then. */
  readonly beside: readonly string[]
  readonly start: StartPressure
  readonly parts: readonly PressurePart[]
  readonly leftPa: number
  readonly neededPa: Maybe<number>
  /** Left less needed; below zero where it is short. */
  readonly marginPa: Maybe<number>
  /** The part that takes most, by its place in `parts`; left out where none takes any. */
  readonly governing?: number
  /** Where it is short. */
  readonly passing?: {
    readonly startPa?: number
    readonly wider?: { readonly index: number; readonly insideM: number }
  }
}

export interface PressurePart extends PassedPart {
  readonly of: 'stated' | 'supply-pipe' | 'valve' | 'regulator' | 'station-pipe'
  /** A pipe as it is written, with the velocity that its material bears. */
  readonly pipe?: { readonly segment: PipeSegment; readonly index: number; readonly mostMPerS: number }
}

/** Taken by a part, by friction and height together. */
export const takenPa = ({ lossPa, liftPa }: PassedPart): number => lossPa + liftPa
