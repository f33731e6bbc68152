import type { WireSize } from '../../units/wire-size.ts'
import type { WireMake } from './make.ts'

/** A stretch of a station's pair of wires. Steps are written in `unit`, the unit its length was written in. */
export interface RunSegment {
  readonly size: WireSize
  /** One way. */
  readonly lengthM: number
  readonly unit: 'm' | 'ft'
  /** The way back, where a shared common of another size is used. */
  readonly common?: WireSize
  readonly make: WireMake
}
