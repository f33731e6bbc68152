import type { UnitSystem } from '../../units/show.ts'
import { atMost } from '../within.ts'

export interface Frame {
  readonly widthMm: number
  readonly heightMm: number
}

/** Metric scales as on a surveyor's rule, and whole feet to an inch as on an engineer's. Common practice, no source. */
const SCALES: Readonly<Record<UnitSystem, readonly number[]>> = {
  metric: [50, 100, 200, 250, 300, 400, 500, 1000, 2000, 5000, 10_000],
  us: [60, 120, 240, 360, 480, 600, 720, 1200, 2400, 6000, 12_000]
}

export interface ChosenScale {
  /** 100 stands for 1:100. */
  readonly ratio: number
  /** Place of the frame in the list. */
  readonly frame: number
}

/** The largest scale at which so much ground fits into one of the frames; the earlier frame where several do. Beyond all scales: the last. */
export function chooseScale(widthM: number, heightM: number, frames: readonly Frame[], units: UnitSystem): ChosenScale {
  const fits = (ratio: number, { widthMm, heightMm }: Frame) =>
    atMost((widthM * 1000) / ratio, widthMm) && atMost((heightM * 1000) / ratio, heightMm)
  for (const ratio of SCALES[units]) {
    const frame = frames.findIndex(one => fits(ratio, one))
    if (frame >= 0) return { ratio, frame }
  }
  return { ratio: SCALES[units].at(-1) ?? 1, frame: 0 }
}
