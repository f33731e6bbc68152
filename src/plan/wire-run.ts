import { isPresent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import type { Worked } from '../domain/calculation.ts'
import { judge } from '../domain/wire/limit.ts'
import type { OutputLimit } from '../domain/wire/limit.ts'
import type { WireMake } from '../domain/wire/make.ts'
import type { RunSegment } from '../domain/wire/run.ts'
import type { StatedLimit, WireFacts } from './wire-facts.ts'

/** A run with what is known before any limit is looked at. */
export interface RunFacts {
  readonly facts: WireFacts
  readonly segments: readonly RunSegment[]
  readonly lengthM: number
  readonly unit: 'm' | 'ft'
  readonly make: WireMake
  /** Wires, and splices where they were measured. */
  readonly loop: Maybe<Worked<number>>
  readonly spliceOhm: number
  readonly coilOhm: Maybe<number>
  /** The winding that the wire leaves least for: of three leads the lower of two, else the coil. */
  readonly pulsedOhm: Maybe<number>
}

/** The limits that a run can be held against; one at a size that cannot be read is left out. */
export function usableLimits(stated: readonly StatedLimit[], run: RunFacts): readonly OutputLimit[] {
  const probe = { lengthM: 1, loopOhm: 1 }
  return stated.map(({ limit }) => limit).filter(limit => isPresent(judge(limit, probe, run.make)))
}
