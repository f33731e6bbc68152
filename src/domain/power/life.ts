/** A year in days, as an average over leap years. */
export const YEAR_DAYS = 365.25

export interface Drain {
  readonly capacityMah: number
  /** Part of the capacity that counts, 0 to 1. */
  readonly usable: number
  /** What is drawn in a day, pulses and standing current together. */
  readonly drawnMahPerDay: number
  /** Part of the full capacity lost by itself in a year, 0 to 1. */
  readonly yearlyLoss: number
}

/**
 * Days until the usable capacity is gone, self-discharge counted as a steady current beside the drain. Below a loss of 79 % a year that is
 * shorter than the curve of `curvedLifeDays`, so it is the one that dates are set by. Infinity where nothing is drawn or lost.
 */
export function lifeDays({ capacityMah, usable, drawnMahPerDay, yearlyLoss }: Drain): number {
  return (capacityMah * usable) / (drawnMahPerDay + (capacityMah * yearlyLoss) / YEAR_DAYS)
}

/** The same with self-discharge in proportion to what is left: dQ/dt = −I − kQ, so t = ln(1 + kQ/I) / k with k = −ln(1 − yearly loss). */
export function curvedLifeDays({ capacityMah, usable, drawnMahPerDay, yearlyLoss }: Drain): number {
  const usableMah = capacityMah * usable
  const perDay = -Math.log1p(-yearlyLoss) / YEAR_DAYS
  // A loss too small to count would divide nothing by nothing.
  if (perDay * usableMah < drawnMahPerDay * 1e-12) return usableMah / drawnMahPerDay
  return Math.log1p((perDay * usableMah) / drawnMahPerDay) / perDay
}

/** Whole days that a rated number of pulses lasts: 8,000 pulses at 48 a day last 166 days. */
export function pulseLifeDays(ratedPulses: number, pulsesPerDay: number): number {
  return Math.floor(ratedPulses / pulsesPerDay + 1e-9)
}
