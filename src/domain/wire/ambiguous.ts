import type { WireSize } from '../../units/wire-size.ts'
import { solidCopperOhmPerM } from './copper.ts'
import { awgAreaMm2, circleAreaMm2 } from './awg.ts'
import { iecOhmPerM } from './iec.ts'

export interface Reading {
  readonly size: WireSize
  readonly ohmPerM: number
  /** There and back, both wires alike, 20 °C. */
  readonly loopOhm: number
}

/**
 * Both things that a bare "mm" can mean, for a run of one length: 0.8 mm over 70 m is 4.80 Ω as a diameter and 3.02 Ω as an area.
 * Plain solid copper at 20 °C; an area of IEC 60228 by that table's maximum.
 */
export function bothReadings(mm: number, lengthM: number): { readonly asDiameter: Reading; readonly asArea: Reading } {
  const plain = { conductor: 'solid', coating: 'plain' } as const
  const diameterOhm = solidCopperOhmPerM(circleAreaMm2(mm))
  const areaOhm = iecOhmPerM(mm, plain)?.ohmPerM ?? solidCopperOhmPerM(mm)
  return {
    asDiameter: { size: { kind: 'diameter', mm }, ohmPerM: diameterOhm, loopOhm: 2 * lengthM * diameterOhm },
    asArea: { size: { kind: 'area', mm2: mm }, ohmPerM: areaOhm, loopOhm: 2 * lengthM * areaOhm }
  }
}

/** A gauge and an area that are not the same wire: neighboring gauges differ by 21 %, so 3 % tells rounding from a slip. */
const AGREES_WITHIN = 0.03

export type PairVerdict = 'agrees' | 'diameter given as area' | 'disagrees'

/** 12 AWG with "2.05 mm²" is a diameter given as area: 12 AWG is 2.05 mm across and 3.31 mm². */
export function judgePair(gauge: number, mm2: number): PairVerdict {
  const area = awgAreaMm2(gauge)
  if (Math.abs(mm2 / area - 1) <= AGREES_WITHIN) return 'agrees'
  const diameterMm = Math.sqrt((4 * area) / Math.PI)
  return Math.abs(mm2 / diameterMm - 1) <= AGREES_WITHIN ? 'diameter given as area' : 'disagrees'
}
