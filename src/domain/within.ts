/** Room for the last bits of a conversion: 100 ft handed over in meters still counts as 100 ft. Far below any reading. */
const ROUNDING = 1e-9

export const atMost = (value: number, limit: number): boolean => value <= limit + Math.abs(limit) * ROUNDING
export const atLeast = (value: number, limit: number): boolean => value >= limit - Math.abs(limit) * ROUNDING
