/** Resistances side by side, in ohms: two of 6 Ω are 3 Ω. Empty gives 0. */
export function parallelOhm(ohms: readonly number[]): number {
  if (ohms.length === 0) return 0
  return 1 / ohms.reduce((sum, ohm) => sum + 1 / ohm, 0)
}
