/** 29 CFR 1910.29(b)(1), 2016: the top rail stands 42 in high, 3 in less at the least; the rule prints 107 cm and 8 cm. */
export const GUARD_LEAST_M = 0.99
/** 29 CFR 1910.28(b)(13), 2016: distances from the edge of a low-slope roof, in feet as the rule states them. */
export const ROOF_EDGE = { arrestFt: 6, designatedFt: 15 } as const
