import type { Check } from './check.ts'

/** Every check, sorted by code. A test sees to the order, to the header of each, and to the page of cases beside it. */
export const CHECKS: readonly Check[] = []
