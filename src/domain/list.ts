import type { Calculation } from './calculation.ts'

/** All calculation cards, sorted by name. `calc`, `explain` and the appendix find a calculation here and nowhere else. */
export const CALCULATIONS: readonly Calculation[] = []
